import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { IsoDate } from '../../lib/base/calendar.ts'
import { looks } from '../../lib/record/looks.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { readFile } from '../../lib/tables/read-file.ts'
import { recordsToCsv, recordsToJsonLines, recordsToXlsx } from '../../lib/tables/write-file.ts'
import { recordsArbitrary } from '../arbitrary/record.ts'
import { textArbitrary } from '../arbitrary/text.ts'

const names = {
  fields: { mass_g: ['Mass'], material: ['Made of'] },
  values: { material: { iron: ['Iron or steel'] } },
}
const bytes = (text: string) => new TextEncoder().encode(text)

/** Keys and values that no field knows, and values that no field understood. */
// Node 24.21 reads `{"\\"":1}` as `{"\\\\":1}` once it has parsed the latter: keys that need an escape are left out.
const escaped = (value: unknown) => JSON.stringify(value).includes('\\')
const key = textArbitrary.filter((text) => text !== '__proto__' && !escaped(text))
const bag = fc.dictionary(
  key,
  fc.oneof(
    textArbitrary,
    fc
      .jsonValue({ maxDepth: 1 })
      .filter((value) => !escaped(value))
      .map((value) => JSON.parse(JSON.stringify(value)) as unknown),
  ),
  { minKeys: 1, maxKeys: 3, noNullPrototype: true },
)
const unread = fc.constantFrom(
  { core: 'sollid' },
  { fragility: String.raw`brok\;en` },
  { seen: 'wartig' },
  { seen: 'one;two' },
  { looked: 'no-question:yes;skin-edge:mauve' },
)
const findUnread = fc.constantFrom(
  { state_now: 'moistish' },
  { mass_g: 'heavy' },
  { context: 'C1;C2' },
  { lifted_by: String.raw`x\;y;z` },
  { burial: 'bogg;fenn' },
  { recorded_on: '31/31/2024' },
)

const kept = (most: number, least = 1): fc.Arbitrary<readonly ConditionRecord[]> =>
  fc
    .tuple(
      recordsArbitrary(most, least),
      fc.array(fc.tuple(fc.option(bag), fc.option(bag), fc.option(unread), fc.option(findUnread)), {
        minLength: most,
        maxLength: most,
      }),
    )
    .map(([records, more]) =>
      records.map((record, at) => {
        const [ofFind, ofPart, misread, findMisread] = more[at]!
        const [first, ...rest] = record.components
        const part = {
          ...first!,
          ...(ofPart ? { extra: ofPart } : {}),
          ...(misread ? { unread: misread } : {}),
        }
        const own: Record<string, unknown> = {
          ...record,
          ...(ofFind ? { extra: ofFind } : {}),
          ...(findMisread ? { unread: findMisread } : {}),
        }
        // A value may stand beside one that contradicts it, but a second day makes a second record.
        if (findMisread && 'recorded_on' in findMisread) delete own['recorded_on']
        // Of a text there is nothing to misread; what is kept beside it contradicts it.
        for (const field of ['context', 'lifted_by'])
          if (findMisread && field in findMisread) own[field] ??= 'C9'
        const clean: Record<string, unknown> = { ...part }
        for (const field of Object.keys(misread ?? {})) if (field !== 'seen') delete clean[field]
        return { ...own, components: [clean, ...rest] } as unknown as ConditionRecord
      }),
    )

describe('what leaves as a file comes back as the same records', () => {
  test('CSV', async () => {
    await fc.assert(
      fc.asyncProperty(kept(4), async (records) => {
        expect((await readFile(bytes(recordsToCsv(records, names.fields)), names, [])).records).toEqual(
          records,
        )
      }),
      { numRuns: 1000 },
    )
  })
  test('JSON lines', async () => {
    await fc.assert(
      fc.asyncProperty(kept(4), async (records) => {
        expect((await readFile(bytes(recordsToJsonLines(records, names.fields)), names, [])).records).toEqual(
          records,
        )
      }),
      { numRuns: 1000 },
    )
  })
  test('XLSX, many records a file', async () => {
    await fc.assert(
      fc.asyncProperty(kept(50, 40), async (records) => {
        expect((await readFile(await recordsToXlsx(records, names.fields), names, [])).records).toEqual(
          records,
        )
      }),
      { numRuns: 25, endOnFailure: true },
    )
  })

  test('dated records of one find, one of them undated', async () => {
    const undated: ConditionRecord = {
      find_number: 'TW-1',
      site_code: 'TW',
      components: [{ component: 'body', material: 'iron' }],
    }
    const on = (day: string): ConditionRecord => ({ ...undated, recorded_on: day as IsoDate })
    const records = [on('2024-01-01'), undated, on('2025-01-01')]
    expect((await readFile(bytes(recordsToCsv(records, names.fields)), names, [])).records).toEqual(records)
    expect((await readFile(bytes(recordsToJsonLines(records, names.fields)), names, [])).records).toEqual(
      records,
    )
  })
})

test('answers to questions come back as they were, contradictions and slips among them', async () => {
  const [question, answers] = Object.entries(looks)[0]!
  const looked = [`${question}:${answers[0]}`, `${question}:none`]
  const body = {
    component: 'body',
    material: 'bronze',
    looked,
    unread: { looked: 'no-question:yes' },
  } as const
  const records: ConditionRecord[] = [{ find_number: 'TW-1', components: [body] }]
  const csv = await readFile(bytes(recordsToCsv(records, names.fields)), names, [])
  const xlsx = await readFile(await recordsToXlsx(records, names.fields), names, [])
  const json = await readFile(bytes(recordsToJsonLines(records, names.fields)), names, [])
  for (const { records: back, problems } of [csv, xlsx, json]) {
    expect(back).toEqual(records)
    expect(problems.map(({ code }) => code)).toEqual(['unknown-look', 'looks-disagree'])
  }
})
