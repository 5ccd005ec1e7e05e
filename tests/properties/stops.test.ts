import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fields, type FieldName } from '../../lib/record/fields.ts'
import { hazardsNoticed, material as materials } from '../../lib/record/ids.ts'
import { noNames } from '../../lib/record/names.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { readFile } from '../../lib/tables/read-file.ts'
import { anyRecord, recordArbitrary } from '../arbitrary/record.ts'
import { plainWords } from '../arbitrary/text.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { stopsOf } from './statements.ts'
import { law, planned, runs } from './plans.ts'

type Loose = Record<string, unknown>

/** One filled-in cell of a record: a field of the find (`part` null) or of one of its parts. */
interface CellPlace {
  readonly part: number | null
  readonly name: FieldName
}

const identity: readonly string[] = ['find_number', 'component', 'material']

function filledCells(record: ConditionRecord): readonly CellPlace[] {
  const filled = (holder: object, part: number | null) =>
    Object.keys(holder).flatMap((name) =>
      name in fields && !identity.includes(name) ? [{ part, name: name as FieldName }] : [],
    )
  return [...filled(record, null), ...record.components.flatMap((one, part) => filled(one, part))]
}

/** The record with that cell emptied, or filled otherwise. */
function withCell(record: ConditionRecord, { part, name }: CellPlace, value: unknown): ConditionRecord {
  const put = (holder: object): Loose => {
    const { [name]: _, ...rest } = holder as Loose
    return value === undefined ? rest : { ...rest, [name]: value }
  }
  if (part === null) return put(record) as unknown as ConditionRecord
  const components = record.components.map((one, at) => (at === part ? put(one) : one))
  return { ...record, components } as unknown as ConditionRecord
}

const cellIn = (record: ConditionRecord, { part, name }: CellPlace): unknown =>
  ((part === null ? record : record.components[part]) as unknown as Loose)[name]

/** What somebody writes who looked and could not tell; null where the field has no such word. */
function couldNotTell(name: FieldName, value: unknown): unknown {
  switch (fields[name].kind) {
    case 'choice':
    case 'open-choice':
    case 'number':
    case 'whole':
      return 'unknown'
    case 'choices':
      return ['unknown']
    case 'tests':
      return (value as readonly string[]).map((test) => test.replace(/:[^:]*$/, ':unknown'))
    default:
      return null
  }
}

const missingFrom = (found: ReadonlySet<string>, wanted: ReadonlySet<string>) =>
  [...wanted].filter((stop) => !found.has(stop))

const recordAndCell = fc.tuple(anyRecord(), fc.nat()).map(([record, which]) => ({
  record,
  cell: filledCells(record)[which % Math.max(1, filledCells(record).length)],
}))

const bare = (hazards_noticed: readonly (typeof hazardsNoticed)[number][]): ConditionRecord => ({
  find_number: 'TW-1',
  hazards_noticed,
  components: [{ component: 'body', material: 'iron' }],
})

/** Hazards that stop all work by themselves; the others warn. */
const stopping = [
  'ammunition-like',
  'firearm-like',
  'luminous-paint',
  'silvery-droplets',
  'woven-white-fibre',
  'bone-hair-or-skin',
  'swollen-tin-or-cylinder',
] as const

const alone = new Map(stopping.map((hazard) => [hazard, stopsOf(planned(bare([hazard])))]))

const singleValues = (Object.keys(fields) as FieldName[])
  .filter((name) => name !== 'hazards_noticed')
  .flatMap((name) => {
    const field = fields[name]
    return 'ids' in field ? [...field.ids, 'unknown'].map((value) => ({ name, value })) : []
  })

describe('stops', () => {
  test('an unknown value hides no stop that the rest of the record calls for', () => {
    law(recordAndCell, ({ record, cell }) => {
      const unknown = cell && couldNotTell(cell.name, cellIn(record, cell))
      if (!cell || unknown === null) return
      const rest = stopsOf(planned(withCell(record, cell, undefined)))
      expect(missingFrom(stopsOf(planned(withCell(record, cell, unknown))), rest)).toEqual([])
    })
  })

  test('a cell nobody can read hides no stop that the rest of the record calls for', async () => {
    await fc.assert(
      fc.asyncProperty(recordAndCell, async ({ record, cell }) => {
        if (!cell) return
        const spoilt = withCell(record, cell, 'qzxv')
        const bytes = new TextEncoder().encode(JSON.stringify([spoilt]))
        const { records } = await readFile(bytes, noNames, knowledge.vocabulary.textWords)
        expect(records).toHaveLength(1)
        const rest = stopsOf(planned(withCell(record, cell, undefined)))
        expect(missingFrom(stopsOf(planned(records[0]!)), rest)).toEqual([])
      }),
      runs,
    )
  })

  test('a material nobody can read hides no stop that the other parts call for', () => {
    law(fc.tuple(anyRecord(), fc.constantFrom(...materials)), ([record, material]) => {
      const [first, ...others] = record.components
      if (others.length === 0) return
      const rest = stopsOf(planned({ ...record, components: others }))
      for (const instead of ['metal-unidentified', material] as const) {
        const plan = planned({ ...record, components: [{ ...first!, material: instead }, ...others] })
        expect(missingFrom(stopsOf(plan), rest)).toEqual([])
      }
    })
  })

  test('the hazards that stop all work do so by themselves', () => {
    const stops = hazardsNoticed.filter((hazard) => stopsOf(planned(bare([hazard]))).size > 0)
    expect(stops).toEqual(stopping)
  })

  test('nothing else that is recorded hides a hazard that was noticed', () => {
    law(fc.tuple(anyRecord(), fc.constantFrom(...alone.keys())), ([record, hazard]) => {
      const plan = planned({ ...record, hazards_noticed: [hazard] })
      expect(missingFrom(stopsOf(plan), alone.get(hazard)!)).toEqual([])
    })
  })

  test('no single value of any field hides a hazard that was noticed', () => {
    const hidden = [...alone].flatMap(([hazard, stops]) =>
      singleValues.flatMap(({ name, value }) => {
        const { level, kind } = fields[name]
        const cell = { part: level === 'find' ? null : 0, name }
        const plan = planned(withCell(bare([hazard]), cell, kind === 'choices' ? [value] : value))
        return missingFrom(stopsOf(plan), stops).map((stop) => `${stop}: ${name} ${value}`)
      }),
    )
    expect(hidden).toEqual([])
  })

  test('no stop without a fact that calls for it', () => {
    const without = ['hazards_noticed', 'object_kind', 'tests'] as const
    const calm = [1, 5, 9].map((filled) => recordArbitrary({ words: plainWords, without, filled }))
    law(fc.oneof(...calm), (record) => {
      expect([...stopsOf(planned(record))]).toEqual([])
    })
  })
})
