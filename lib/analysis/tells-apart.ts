import type { Group, Matter } from '../knowledge/evidence.ts'
import type { Finding } from '../knowledge/flaw.ts'
import type { Base } from './base.ts'
import { eachMatter } from './evidence-parts.ts'

/** How a group grades one rival, state by state. */
const gradesOf = (group: Group, rival: string): string =>
  [...group.states.map(({ fits }) => fits[rival]), group.rest.fits[rival]].join()

const gradesOfAll = ({ groups }: Matter, rival: string): string =>
  groups.map((group) => gradesOf(group, rival)).join('|')

/** A group tells at least two rivals apart, and no two rivals look alike in all that can ever be looked at. */
export function tellsApart({ knowledge }: Base): Finding[] {
  return eachMatter(knowledge).flatMap((matter) => {
    const { id, rivals, groups } = matter
    const idle = groups
      .filter((group) => new Set(rivals.map((rival) => gradesOf(group, rival.id))).size === 1)
      .map((group): Finding => ({
        code: 'group-tells-nothing',
        severity: 'error',
        at: `group ${id}/${group.id}`,
        about: { group: `${id}/${group.id}` },
      }))
    const alike = rivals.flatMap((rival, place) => {
      const grades = gradesOfAll(matter, rival.id)
      const twin = rivals.slice(0, place).find((other) => gradesOfAll(matter, other.id) === grades)
      if (twin === undefined) return []
      const about = { matter: id, rivals: [twin.id, rival.id] as const }
      const finding: Finding = {
        code: 'rivals-alike',
        severity: 'error',
        at: `rival ${id}/${rival.id}`,
        about,
      }
      return [finding]
    })
    return [...idle, ...alike]
  })
}
