/** Seeded chance (mulberry32), so that the invented assemblage is the same on every machine. */
export interface Chance {
  readonly next: () => number
  readonly whole: (from: number, to: number) => number
  readonly pick: <Item>(items: readonly Item[]) => Item
  readonly weighted: <Item>(items: readonly (readonly [number, Item])[]) => Item
  readonly happens: (probability: number) => boolean
}

export function chance(seed: number): Chance {
  let state = seed >>> 0
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
  const whole = (from: number, to: number) => from + Math.floor(next() * (to - from + 1))
  const pick = <Item>(items: readonly Item[]): Item => items[whole(0, items.length - 1)]!
  const weighted = <Item>(items: readonly (readonly [number, Item])[]): Item => {
    let left = next() * items.reduce((sum, [weight]) => sum + weight, 0)
    for (const [weight, item] of items) {
      left -= weight
      if (left < 0) return item
    }
    return items.at(-1)![1]
  }
  return { next, whole, pick, weighted, happens: (probability) => next() < probability }
}
