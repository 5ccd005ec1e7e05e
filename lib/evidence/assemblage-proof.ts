import { worthOf, type Choice, type OptionTable } from './assemblage-problem.ts'
import type { Prices } from './assemblage-prices.ts'

/**
 * Whether anything better is left. At given prices every choice falls short of the bound by exactly what its options lose
 * against the best option of each find, and by the price of the slots it leaves. So whoever is better than a known choice
 * loses less than the gap: only finds that could lose so little are open at all, and all their ways are gone through, or
 * as many as there is patience for.
 */
export interface Searched {
  readonly choice: Choice
  /** All ways were gone through: nothing is worth more. */
  readonly proved: boolean
}

const little = 1e-9

/** With more finds open than this, going through their ways would not come to an end. */
const mostOpen = 1_000

interface Way {
  readonly option: number
  readonly loss: number
  readonly uses: readonly number[]
}

/** The options of one find by what they lose at the prices, the least first. */
function waysOf({ from, worth, uses, methods }: OptionTable, find: number, prices: Float64Array): Way[] {
  const ways: Way[] = []
  for (let at = from[find]!; at < from[find + 1]!; at++) {
    let paid = worth[at]!
    const takes = Array.from(uses.subarray(at * methods, (at + 1) * methods))
    takes.forEach((slots, method) => (paid -= prices[method]! * slots))
    ways.push({ option: at - from[find]!, loss: -paid, uses: takes })
  }
  ways.sort((a, b) => a.loss - b.loss)
  const least = ways[0]!.loss
  return ways.map((way) => ({ ...way, loss: way.loss - least }))
}

export function searchRest(
  table: OptionTable,
  slots: readonly number[],
  prices: Prices,
  known: Choice,
  patience: number,
): Searched {
  const reached = worthOf(table, known)
  let gap = prices.bound - reached
  if (gap <= little) return { choice: known, proved: true }
  const { methods } = table
  const choice = known.slice()
  const fixed = known.slice()
  const left = Array.from(slots)
  const open: { find: number; ways: readonly Way[] }[] = []
  for (let find = 0; find < known.length; find++) {
    const ways = waysOf(table, find, prices.each).filter(({ loss }) => loss < gap)
    if (ways.length > 1) open.push({ find, ways })
    else {
      fixed[find] = ways[0]!.option
      ways[0]!.uses.forEach((taken, method) => (left[method]! -= taken))
    }
  }
  if (open.length > mostOpen) return { choice: known, proved: false }
  // Who loses most by leaving the best option comes first: their ways are closed soonest.
  open.sort((a, b) => b.ways[1]!.loss - a.ways[1]!.loss || a.find - b.find)
  const none = slots.map(() => 0)
  const most = open.map(() => [...none])
  const least = open.map(() => [...none])
  for (let at = open.length - 1; at >= 0; at--) {
    for (let method = 0; method < methods; method++) {
      const takes = open[at]!.ways.map(({ uses }) => uses[method]!)
      most[at]![method] = Math.max(...takes) + (most[at + 1]?.[method] ?? 0)
      least[at]![method] = Math.min(...takes) + (least[at + 1]?.[method] ?? 0)
    }
  }
  let nodes = 0
  let better = false
  const walk = (at: number, loss: number): boolean => {
    if (++nodes > patience) return false
    let sure = loss
    for (let method = 0; method < methods; method++) {
      if (left[method]! < (least[at] ?? none)[method]!) return true
      sure += prices.each[method]! * Math.max(0, left[method]! - (most[at] ?? none)[method]!)
    }
    if (sure >= gap - little) return true
    if (at === open.length) {
      gap = sure
      better = true
      choice.set(fixed)
      return true
    }
    const { find, ways } = open[at]!
    for (const { option, loss: more, uses } of ways) {
      if (loss + more >= gap - little) break
      for (let method = 0; method < methods; method++) left[method]! -= uses[method]!
      fixed[find] = option
      const went = walk(at + 1, loss + more)
      for (let method = 0; method < methods; method++) left[method]! += uses[method]!
      if (!went) return false
    }
    return true
  }
  const proved = walk(0, 0)
  return { choice: better ? choice : known, proved }
}
