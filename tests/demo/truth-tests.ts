import type { Raised } from '../../lib/evidence/raised.ts'
import { possibleStates } from '../../lib/evidence/outcome.ts'
import type { Group } from '../../lib/knowledge/evidence.ts'
import { stated } from '../../lib/record/fact.ts'
import { readTest } from '../../lib/record/tests.ts'
import type { Chance } from './chance.ts'

/** Elements that X-ray fluorescence finds of a material whatever lies on it. */
const always: Readonly<Record<string, readonly string[]>> = {
  iron: ['Fe'],
  steel: ['Fe'],
  'cast-iron': ['Fe'],
  'copper-alloy': ['Cu'],
  bronze: ['Cu', 'Sn'],
  brass: ['Cu', 'Zn'],
  copper: ['Cu'],
  lead: ['Pb'],
  tin: ['Sn'],
  pewter: ['Sn', 'Pb'],
  silver: ['Ag', 'Cu'],
  'base-silver': ['Cu', 'Ag'],
  gold: ['Au'],
  zinc: ['Zn'],
}

interface Shown {
  readonly group: Group
  readonly state: number
}

const factOf: Readonly<Record<string, string>> = {
  xrf: 'xrf',
  xrd: 'xrd',
  raman: 'raman',
  'x-radiography': 'radiograph',
  'chloride-test': 'silver_nitrate',
}

/** Results that one report can hold so that every group of its method shows what was drawn; null where none was met. */
export function testsShowing(
  method: string,
  groups: readonly Shown[],
  { joint, lookup }: Raised,
  { pick, happens }: Chance,
): readonly string[] | null {
  const fact = factOf[method]
  if (fact === undefined) return null
  const base = fact === 'xrf' ? (always[lookup('material')?.has[0] ?? ''] ?? []) : []
  for (let attempt = 0; attempt < 60; attempt += 1) {
    const found = new Set(attempt % 2 === 0 ? base : base.slice(0, 1))
    for (const { group, state } of groups) {
      for (const cell of group.states[state]?.when ?? [])
        if (cell.fact === fact && 'any' in cell && !cell.any.some((one) => found.has(one)))
          found.add(happens(0.6) ? cell.any[0]! : pick(cell.any))
    }
    if (found.size === 0 && fact !== 'xrf') found.add(fact === 'silver_nitrate' ? 'negative' : 'none')
    const values = [...found]
    const tests = fact === 'radiograph' || fact === 'silver_nitrate' ? values : [values.join('+')]
    const written = tests.map((result) => `${fact.replaceAll('_', '-')}:${result}`)
    if (values.length === 0 || written.some((test) => !readTest(test).ok)) continue
    const read = (name: string) =>
      name === fact ? { ...stated(...values), may: [] } : name === 'core' ? lookup('core') : lookup(name)
    const shows = groups.every(({ group, state }) => {
      const { table } = joint.groups.find(({ table: one }) => one.group === group)!
      const possible = possibleStates(table, read)
      return possible.length === 1 && possible[0] === state
    })
    if (shows) return written
  }
  return null
}
