import { recordDomains } from '../knowledge/domains.ts'
import type { Matter } from '../knowledge/evidence.ts'
import type { Finding } from '../knowledge/flaw.ts'
import type { Cell } from '../knowledge/knowledge.ts'
import type { Base } from './base.ts'
import { eachMatter } from './evidence-parts.ts'

/** The odds of a matter, or one of its groups, and the cells it reads. */
interface Reader {
  readonly name: string
  readonly at: string
  readonly cells: readonly Cell[]
}

function readersOf({ id, rivals, groups }: Matter): Reader[] {
  const priors = rivals.flatMap((rival) => rival.priors.flatMap(({ when }) => when))
  return [
    { name: 'the odds', at: `matter ${id}`, cells: priors },
    ...groups.map((group) => ({
      name: group.id,
      at: `group ${id}/${group.id}`,
      cells: group.states.flatMap(({ when }) => when),
    })),
  ]
}

const valuesOf = (cells: readonly Cell[]): readonly string[] =>
  cells.flatMap((cell) => ('any' in cell ? cell.any : 'none' in cell ? cell.none : []))

/** Whether what the two read of a fact is one and the same thing. Of a list they may each read other entries. */
function shared(fact: string, one: Reader, other: Reader): boolean {
  const [first, second] = [one, other].map(({ cells }) => cells.filter((cell) => cell.fact === fact))
  if (first!.length === 0 || second!.length === 0) return false
  const domain = recordDomains[fact]
  if (domain?.kind !== 'values' || !domain.many) return true
  const values = new Set(valuesOf(first!))
  return valuesOf(second!).some((value) => values.has(value))
}

/** What a record states of one thing weighs once: in the odds or in one group, never in two places. */
export function countedTwice({ knowledge }: Base): Finding[] {
  return eachMatter(knowledge).flatMap((matter) => {
    const readers = readersOf(matter)
    return readers.flatMap((later, place) =>
      [...new Set(later.cells.map(({ fact }) => fact))].flatMap((fact): Finding[] => {
        const earlier = readers.slice(0, place).find((reader) => shared(fact, reader, later))
        if (earlier === undefined) return []
        const about = { matter: matter.id, fact, first: earlier.name, second: later.name }
        return [{ code: 'counted-twice', severity: 'error', at: later.at, about }]
      }),
    )
  })
}
