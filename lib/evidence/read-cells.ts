import { cellHolds } from '../knowledge/cell-holds.ts'
import type { Cell } from '../knowledge/knowledge.ts'
import type { Fact, RecordFacts } from '../record/fact.ts'

/**
 * How evidence reads a record. It differs from the rules in two kinds of lists and in one field. What a person ticks of what he sees says
 * nothing of what he did not tick: nobody goes through forty words for every nail. What a laboratory reports is all that it
 * found: the element that is not named was not found, and that it may be there all the same is what failures are for.
 * And a material that is named only in general may be any of its kind.
 */
export type Holds = 'yes' | 'no' | 'open'
export type Lookup = (fact: string) => Fact | undefined

const ticked: ReadonlySet<string> = new Set(['seen', 'evidence'])
const reported: ReadonlySet<string> = new Set(['xrf', 'xrd', 'raman'])

const inGeneral: Readonly<Record<string, readonly string[]>> = {
  'copper-alloy': ['bronze', 'brass', 'copper'],
  'white-metal': [
    'tin',
    'pewter',
    'solder',
    'lead',
    'silver',
    'base-silver',
    'zinc',
    'aluminium',
    'nickel-alloy',
    'magnesium',
  ],
  'metal-unidentified': [
    'iron',
    'cast-iron',
    'steel',
    'copper-alloy',
    'copper',
    'bronze',
    'brass',
    'lead',
    'tin',
    'pewter',
    'solder',
    'silver',
    'base-silver',
    'gold',
    'zinc',
    'aluminium',
    'white-metal',
    'magnesium',
    'nickel-alloy',
  ],
  'organic-unidentified': [
    'wood',
    'leather',
    'textile',
    'bone',
    'antler',
    'horn',
    'ivory',
    'amber',
    'jet',
    'shell',
    'coral',
  ],
}

function materialOf(fact: Fact): Fact {
  const more = fact.has.flatMap((value) => inGeneral[value] ?? [])
  return more.length === 0 || fact.may === 'any' ? fact : { ...fact, may: [...fact.may, ...more] }
}

function asEvidence(name: string, fact: Fact | undefined): Fact | undefined {
  if (fact === undefined || fact.has.includes('unknown')) return fact
  if (ticked.has(name)) return fact.has.includes('none') ? fact : { ...fact, may: 'any' }
  if (name === 'material') return materialOf(fact)
  if (reported.has(name) && fact.has.length > 0) return { ...fact, may: [] }
  return fact
}

/** The facts of one part, and those of the find for all that parts do not have; each is read once. */
export function lookupOf(facts: RecordFacts, part: number): Lookup {
  const own = facts.components[part]!.facts
  const { find } = facts
  const known = new Map<string, Fact | undefined>()
  return (name) => {
    const before = known.get(name)
    if (before !== undefined || known.has(name)) return before
    const fact = asEvidence(name, own[name] ?? find[name])
    known.set(name, fact)
    return fact
  }
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
