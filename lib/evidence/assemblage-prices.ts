import type { OptionTable } from './assemblage-problem.ts'

/**
 * What a slot of each method is worth, and a bound. If slots could be bought at a price, each find would take the option
 * worth most after paying; what all that comes to, with the slots there are sold at those prices, is never less than what
 * the best choice is worth (Lagrangian duality). The prices that make it least are looked for: one method at a time, which
 * is exact along that line, and between by steps against the slots left over (subgradients), where lines alone get stuck.
 */
export interface Prices {
  readonly each: Float64Array
  /** No choice is worth more. */
  readonly bound: number
}

const rounds = 8
const steps = 160

/** What the finds would come to at these prices, and the slots they would take. */
function boundAt(
  table: OptionTable,
  slots: readonly number[],
  prices: Float64Array,
  used: Int32Array,
): number {
  const { from, worth, uses, methods } = table
  used.fill(0)
  let sum = 0
  for (let find = 0; find + 1 < from.length; find++) {
    let best = -Infinity
    let option = 0
    for (let at = from[find]!; at < from[find + 1]!; at++) {
      let left = worth[at]!
      for (let method = 0; method < methods; method++) left -= prices[method]! * uses[at * methods + method]!
      if (left > best) {
        best = left
        option = at
      }
    }
    sum += best
    for (let method = 0; method < methods; method++) used[method]! += uses[option * methods + method]!
  }
  for (let method = 0; method < methods; method++) sum += prices[method]! * slots[method]!
  return sum
}

/** The best price of one method, the others kept: the most at which no more slots are wanted than there are. */
function bestAlong(table: OptionTable, slots: number, prices: Float64Array, method: number): number {
  const { from, worth, uses, methods } = table
  const asked: number[] = []
  for (let find = 0; find + 1 < from.length; find++) {
    const best: number[] = []
    for (let at = from[find]!; at < from[find + 1]!; at++) {
      let left = worth[at]!
      for (let other = 0; other < methods; other++)
        if (other !== method) left -= prices[other]! * uses[at * methods + other]!
      const takes = uses[at * methods + method]!
      if (left > (best[takes] ?? -Infinity)) best[takes] = left
    }
    // From none to many along the upper hull: each further slot is wanted up to a price no higher than the one before.
    let takes = 0
    for (;;) {
      let next = 0
      let price = 0
      for (let more = takes + 1; more < best.length; more++) {
        if (best[more] === undefined) continue
        const at = (best[more]! - best[takes]!) / (more - takes)
        if (at > price) {
          price = at
          next = more
        }
      }
      if (next === 0) break
      for (let slot = takes; slot < next; slot++) asked.push(price)
      takes = next
    }
  }
  if (asked.length <= slots) return 0
  asked.sort((a, b) => b - a)
  return asked[slots]!
}

/** `reached`: what some choice is known to be worth, for the length of steps; null for rough prices, without steps. */
export function pricesOf(table: OptionTable, slots: readonly number[], reached: number | null): Prices {
  const { methods } = table
  const used = new Int32Array(methods)
  const prices = new Float64Array(methods)
  let best = { each: prices.slice(), bound: boundAt(table, slots, prices, used) }
  const note = (bound: number) => {
    if (bound < best.bound) best = { each: prices.slice(), bound }
  }
  const alongEach = () => {
    for (let round = 0; round < rounds; round++) {
      const before = best.bound
      for (let method = 0; method < methods; method++)
        prices[method] = bestAlong(table, slots[method]!, prices, method)
      note(boundAt(table, slots, prices, used))
      if (before - best.bound < 1e-12 * (1 + before)) return
    }
  }
  alongEach()
  if (reached === null) return best
  let length = 1
  let since = 0
  for (let step = 0; step < steps && methods > 1 && best.bound - reached > 1e-9; step++) {
    const bound = boundAt(table, slots, prices, used)
    since = bound < best.bound - 1e-12 ? 0 : since + 1
    note(bound)
    if (since > 8) {
      length /= 2
      since = 0
      prices.set(best.each)
      boundAt(table, slots, prices, used)
    }
    let norm = 0
    for (let method = 0; method < methods; method++) norm += (slots[method]! - used[method]!) ** 2
    if (norm === 0) break
    const far = (length * (bound - reached)) / norm
    for (let method = 0; method < methods; method++)
      prices[method] = Math.max(0, prices[method]! - far * (slots[method]! - used[method]!))
  }
  prices.set(best.each)
  alongEach()
  return best
}
