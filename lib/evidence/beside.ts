import { likelihood, observed, type GroupSeen } from './group-seen.ts'

/**
 * How often two methods that measure one thing did not measure the same of it: another spot, another grain. A house rule;
 * without it two results that disagree would be impossible, and they are not.
 */
const elsewhere = 0.2

/** How likely each state of a group is by itself, failures and all, state by state. */
const apart = (seen: GroupSeen, size: number, wide: number): readonly Float64Array[] =>
  seen.table.states.map((_, state) => likelihood(seen, [state], wide, new Float64Array(size)))

/**
 * How likely it is, by mapping and rival, that one of these states shows, given what its twin leaves possible; a group
 * without a twin, or whose twin nobody looked at, is likely by itself.
 */
export function likelihoodBeside(
  groups: readonly GroupSeen[],
  group: number,
  states: readonly number[],
  wide: number,
  into: Float64Array,
): Float64Array {
  const seen = groups[group]!
  const { twin } = seen.table
  const other = twin && groups[twin.at]!
  if (!twin || !other || !observed(other)) return likelihood(seen, states, wide, into)
  const own = apart(seen, into.length, wide)
  const others = apart(other, into.length, wide)
  for (let at = 0; at < into.length; at++) {
    let together = 0
    let shared = 0
    let alone = 0
    let beside = 0
    for (const state of states) alone += own[state]![at]!
    for (const state of other.possible) beside += others[state]![at]!
    let ownLeft = alone
    let otherLeft = beside
    for (const [one, same] of twin.matches) {
      const both = Math.min(own[one]![at]!, others[same]![at]!)
      together += both
      if (states.includes(one)) ownLeft -= both
      if (other.possible.includes(same)) otherLeft -= both
      if (states.includes(one) && other.possible.includes(same)) shared += both
    }
    const byChance = together < 1 ? (ownLeft * otherLeft) / (1 - together) : 0
    const coupled = (shared + Math.max(0, byChance)) / beside
    into[at] = elsewhere * alone + (1 - elsewhere) * coupled
  }
  return into
}
