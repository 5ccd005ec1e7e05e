import type { Group } from '../knowledge/evidence.ts'

/**
 * Two methods that measure one thing: a mineral seen by diffraction and by its scattered light is one mineral, and must not
 * count twice. Where an explanation is true, each of the two shows its states as often as its own words say; but as far as
 * they can they show the same one together, and only what is left over falls apart by chance (a maximal coupling). So each
 * alone tells what it always told, and the second adds little more than what the first left open.
 */
export interface Twin {
  /** Number of the other group in the matter. */
  readonly at: number
  /** Numbers of the states that tell the same, this group's first; `rest` with `rest`. */
  readonly matches: readonly (readonly [own: number, other: number])[]
}

/** The twin of a group among the groups of its matter; null where it measures a thing of its own. */
export function twinOf(group: Group, groups: readonly Group[]): Twin | null {
  const at = groups.findIndex(({ id, sameCauseAs }) => id === group.sameCauseAs || sameCauseAs === group.id)
  const other = groups[at]
  if (!other) return null
  const matches = group.states.flatMap(({ id }, own) => {
    const same = other.states.findIndex((state) => state.id === id)
    return same === -1 ? [] : [[own, same] as const]
  })
  return { at, matches: [...matches, [group.states.length, other.states.length]] }
}
