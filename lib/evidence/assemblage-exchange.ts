import { usedBy, type Choice, type OptionTable } from './assemblage-problem.ts'

/**
 * A choice made better by exchange. Slots are alike, so a change of one find is told by what it gains and by the slots it
 * takes and frees; of the changes that take and free the same, only those that gain most can matter. One change, or two
 * together, that gain and fit are made, until there are none. Finds are gone through anew only when the changes noted are
 * used up.
 */
interface Change {
  readonly find: number
  readonly option: number
  readonly gain: number
}

interface Kind {
  readonly takes: readonly number[]
  /** The best few, of different finds. */
  best: Change[]
}

const noted = 6

const little = 1e-9

function kindsOf({ from, worth, uses, methods }: OptionTable, choice: Choice): readonly Kind[] {
  const kinds = new Map<number, Kind>()
  let widest = 1
  for (const used of uses) if (used > widest) widest = used
  const base = 2 * widest + 1
  for (let find = 0; find < choice.length; find++) {
    const now = from[find]! + choice[find]!
    for (let at = from[find]!; at < from[find + 1]!; at++) {
      if (at === now) continue
      let key = 0
      for (let method = 0; method < methods; method++)
        key = key * base + uses[at * methods + method]! - uses[now * methods + method]! + widest
      let kind = kinds.get(key)
      if (kind === undefined) {
        const takes = Array.from(
          { length: methods },
          (_, method) => uses[at * methods + method]! - uses[now * methods + method]!,
        )
        kind = { takes, best: [] }
        kinds.set(key, kind)
      }
      note(kind.best, find, at - from[find]!, worth[at]! - worth[now]!)
    }
  }
  return [...kinds.values()]
}

function note(best: Change[], find: number, option: number, gain: number): void {
  if (best.length === noted && gain <= best[noted - 1]!.gain) return
  const same = best.findIndex((one) => one.find === find)
  if (same !== -1) {
    if (gain <= best[same]!.gain) return
    best.splice(same, 1)
  }
  const at = best.findIndex((one) => gain > one.gain)
  best.splice(at === -1 ? best.length : at, 0, { find, option, gain })
  if (best.length > noted) best.pop()
}

function bestTogether(kinds: readonly Kind[], left: readonly number[]): readonly Change[] {
  let gain = little
  let found: readonly Change[] = []
  const few = kinds.filter(({ best }) => best.length > 0)
  few.forEach((one, at) => {
    const first = one.best[0]!
    if (first.gain > gain && left.every((slots, method) => one.takes[method]! <= slots)) {
      gain = first.gain
      found = [first]
    }
    for (let next = at; next < few.length; next++) {
      const other = few[next]!
      if (first.gain + other.best[0]!.gain <= gain) continue
      if (left.some((slots, method) => one.takes[method]! + other.takes[method]! > slots)) continue
      const pair = apart(one, other)
      if (pair === null || pair[0].gain + pair[1].gain <= gain) continue
      gain = pair[0].gain + pair[1].gain
      found = pair
    }
  })
  return found
}

/** The best of each, of two different finds. */
function apart(one: Kind, other: Kind): readonly [Change, Change] | null {
  let best: readonly [Change, Change] | null = null
  for (const a of one.best)
    for (const b of other.best)
      if (a.find !== b.find && (best === null || a.gain + b.gain > best[0].gain + best[1].gain)) best = [a, b]
  return best
}

export function exchange(table: OptionTable, slots: readonly number[], from: Choice): Choice {
  const choice = from.slice()
  for (;;) {
    const kinds = kindsOf(table, choice)
    let changed = false
    for (;;) {
      const used = usedBy(table, choice)
      const left = slots.map((one, method) => one - used[method]!)
      const changes = bestTogether(kinds, left)
      if (changes.length === 0) break
      changed = true
      for (const { find, option } of changes) {
        choice[find] = option
        for (const kind of kinds) kind.best = kind.best.filter((one) => one.find !== find)
      }
    }
    if (!changed) return choice
  }
}
