import { cellHolds } from '../knowledge/cell-holds.ts'
import type { Cell } from '../knowledge/knowledge.ts'
import type { Fact, RecordFacts } from '../record/fact.ts'

/**
 * How evidence reads a record. It differs from the rules in two kinds of lists. What a person ticks of what he sees says
 * nothing of what he did not tick: nobody goes through forty words for every nail. What a laboratory reports is all that it
 * found: the element that is not named was not found, and that it may be there all the same is what failures are for.
 */
export type Holds = 'yes' | 'no' | 'open'
export type Lookup = (fact: string) => Fact | undefined

const ticked: ReadonlySet<string> = new Set(['seen', 'evidence'])
const reported: ReadonlySet<string> = new Set(['xrf', 'xrd', 'raman'])

function asEvidence(name: string, fact: Fact | undefined): Fact | undefined {
  if (fact === undefined || fact.has.includes('unknown')) return fact
  if (ticked.has(name)) return fact.has.includes('none') ? fact : { ...fact, may: 'any' }
  if (reported.has(name) && fact.has.length > 0) return { ...fact, may: [] }
  return fact
}

/** The facts of one part, and those of the find for all that parts do not have. */
export function lookupOf(facts: RecordFacts, part: number): Lookup {
  const own = facts.components[part]!.facts
  const { find } = facts
  return (name) => asEvidence(name, own[name] ?? find[name])
}

/** All of them: yes where each surely holds, no where one surely does not. */
export function allHold(cells: readonly Cell[], lookup: Lookup): Holds {
  let open = false
  for (const cell of cells) {
    const holds = cellHolds(cell, lookup(cell.fact))
    if (holds === 'no') return 'no'
    if (holds === 'open') open = true
  }
  return open ? 'open' : 'yes'
}
