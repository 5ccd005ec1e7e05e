import { mistaken, type Mistaken } from './failures.ts'
import type { GroupTable } from './mappings.ts'
import type { Lookup } from './read-cells.ts'

/** One group as the record leaves it. */
export interface GroupSeen {
  readonly table: GroupTable
  /** Numbers of the states that the record leaves possible. */
  readonly possible: readonly number[]
  /** How the method may go wrong here; reckoned when first asked for, since most groups of a find are not looked at. */
  readonly mistaken: () => Mistaken | null
}

export function groupSeen(
  table: GroupTable,
  possible: readonly number[],
  rivals: readonly string[],
  lookup: Lookup,
): GroupSeen {
  let known: Mistaken | null | undefined
  return {
    table,
    possible,
    mistaken: () => (known === undefined ? (known = mistaken(table, rivals, lookup)) : known),
  }
}

/** The same group as if nobody had looked at it. */
export const unseen = (seen: GroupSeen): GroupSeen => ({
  ...seen,
  possible: seen.table.states.map((_, at) => at),
})

export const observed = ({ table, possible }: GroupSeen): boolean => possible.length < table.states.length

/** How likely it is, by mapping and rival, that one of these states shows. */
export function likelihood(
  seen: GroupSeen,
  states: readonly number[],
  wide: number,
  into: Float64Array,
): Float64Array {
  const { shares, states: all } = seen.table
  const step = all.length * wide
  const count = shares.length / step
  into.fill(0)
  for (const state of states) {
    let at = 0
    for (let k = 0; k < count; k++) {
      const from = k * step + state * wide
      for (let rival = 0; rival < wide; rival++) into[at++]! += shares[from + rival]!
    }
  }
  const wrong = seen.mistaken()
  if (wrong === null) return into
  const added = new Float64Array(wide)
  for (const state of states)
    for (let rival = 0; rival < wide; rival++) added[rival]! += wrong.added[state * wide + rival]!
  for (let at = 0; at < into.length;) {
    for (let rival = 0; rival < wide; rival++, at++) into[at] = into[at]! * wrong.left[rival]! + added[rival]!
  }
  return into
}

/** Whether any of what is known came from an analysis, not from eyes and the record alone. */
export const measuredIn = (groups: readonly GroupSeen[]): boolean =>
  groups.some((seen) => observed(seen) && measures(seen))

export const measures = ({ table: { group } }: Pick<GroupSeen, 'table'>): boolean =>
  group.by !== 'eye' && group.by !== 'record'
