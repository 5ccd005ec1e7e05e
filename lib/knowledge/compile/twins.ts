import type { Group } from '../evidence.ts'
import type { WrittenGroup } from './groups.ts'
import { unknownId, type Shelf } from './shelf.ts'

/**
 * Groups that measure the same thing another way, each naming a group before it. A pair and no more: the other is found by
 * another method, is nobody's twin itself, and both have states of one id, since those are what would count twice.
 */
export function linkTwins(
  written: readonly WrittenGroup[],
  groups: readonly Group[],
  { report }: Shelf,
): Group[] {
  const taken = new Set<string>()
  return groups.map((group, at) => {
    const { sameCauseAs: name } = group
    if (name === null) return group
    const place = written[at]!.place('same-cause-as')
    const twin = groups.slice(0, at).find(({ id }) => id === name)
    if (!twin) {
      unknownId(
        'group',
        name,
        groups.slice(0, at).map(({ id }) => id),
        place,
        report,
      )
      return { ...group, sameCauseAs: null }
    }
    const shared = twin.states.filter(({ id }) => group.states.some((state) => state.id === id))
    const wrong =
      twin.sameCauseAs !== null || taken.has(name)
        ? 'paired'
        : twin.by === group.by
          ? 'one-method'
          : shared.length === 0
            ? 'nothing-shared'
            : null
    taken.add(name)
    if (wrong !== null) report.add('same-cause', place, { group: group.id, as: name, wrong })
    return group
  })
}
