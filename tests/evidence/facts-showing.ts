import type { Cell } from '../../lib/knowledge/knowledge.ts'
import { stated, type Fact, type Facts } from '../../lib/record/fact.ts'
import type { GroupTable } from '../../lib/evidence/mappings.ts'
import { possibleStates } from '../../lib/evidence/outcome.ts'
import type { Lookup } from '../../lib/evidence/read-cells.ts'

/**
 * Facts that a record would hold if a group showed a state: the answer to its question, or the least that makes its cells
 * hold and none of those before them. Null where nothing that a record can state would say just this.
 */
export function factsShowing(table: GroupTable, state: number, lookup: Lookup): Facts | null {
  const { question } = table.group
  const rest = table.states.length - 1
  const facts: Record<string, Fact> = {}
  if (question !== null)
    facts[`looked.${question}`] = stated(state === rest ? 'none' : table.states[state]!.id)
  else if (state === rest) Object.assign(facts, nothingOf(table, lookup))
  else {
    for (const cell of table.states[state]!.when) {
      const fact = least(cell, lookup(cell.fact))
      if (fact === null) return null
      facts[cell.fact] = fact
    }
  }
  const shown = possibleStates(table, (name) => facts[name] ?? lookup(name))
  return shown.length === 1 && shown[0] === state ? facts : null
}

/** Results that name none of the things that any state asks for; what is recorded already stays as it is. */
function nothingOf({ states }: GroupTable, lookup: Lookup): Facts {
  const names = new Set(states.flatMap(({ when }) => when.map(({ fact }) => fact)))
  const bare = [...names].filter((name) => (lookup(name)?.has.length ?? 0) === 0)
  return Object.fromEntries(bare.map((name) => [name, stated('none')]))
}

function least(cell: Cell, known: Fact | undefined): Fact | null {
  if ('any' in cell) return stated(...new Set([...(known?.has ?? []), cell.any[0]!]))
  if ('none' in cell) return known?.may.length === 0 ? known : stated('none')
  const { from, above, to, below } = cell.interval
  const number = from ?? to ?? (above === undefined ? below! - 1 : above + 1)
  return { has: [], may: [], number, said: 'stated' }
}
