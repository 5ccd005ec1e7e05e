import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { IsoDate } from '../../lib/base/calendar.ts'
import { factsOf } from '../../lib/record/facts.ts'
import { noNames } from '../../lib/record/names.ts'
import type { Component, ConditionRecord } from '../../lib/record/record.ts'
import { csvText } from '../../lib/tables/csv-write.ts'
import { streamCsv } from '../../lib/tables/csv-stream.ts'
import { surveyCsv } from '../../lib/tables/csv-survey.ts'
import type { FileRead } from '../../lib/tables/file-read.ts'
import { readFile } from '../../lib/tables/read-file.ts'
import { recordTable } from '../../lib/tables/write-file.ts'
import { recordsArbitrary } from '../arbitrary/record.ts'

const words = [{ words: ['grenade'], not: [], hazard: 'ammunition-like' }]
const asOf = '2026-11-25' as IsoDate
type Rows = readonly (readonly string[])[]

const bytes = (rows: Rows) => new TextEncoder().encode(csvText(rows))
const read = (rows: Rows) => readFile(bytes(rows), noNames, words)

const byName = (a: Component, b: Component) => (a.component < b.component ? -1 : 1)
const byFind = (a: ConditionRecord, b: ConditionRecord) => (a.find_number < b.find_number ? -1 : 1)
const unordered = (records: readonly ConditionRecord[]) =>
  records.map((record) => ({ ...record, components: record.components.toSorted(byName) })).toSorted(byFind)

/** Every hazard that a plan will see or that is said aloud of the file. */
function hazardsHeard(file: FileRead): ReadonlySet<string> {
  const planned = file.records.flatMap(
    (record) => factsOf(record, words, asOf).find['hazards_noticed']?.has ?? [],
  )
  return new Set(
    [...planned, ...file.loudHazards.map((one) => one.hazard)].filter((hazard) => hazard !== 'unknown'),
  )
}

/** One slip of the finger: a letter lost, doubled, changed, or two swapped. */
const slip = fc.record({
  at: fc.nat(),
  kind: fc.constantFrom('lost', 'added', 'changed', 'swapped'),
  letter: fc.constantFrom(...'aeinrstx0'),
})

function slipped(text: string, { at, kind, letter }: { at: number; kind: string; letter: string }): string {
  const letters = [...text]
  const place = at % letters.length
  if (kind === 'lost') letters.splice(place, 1)
  if (kind === 'added') letters.splice(place, 0, letter)
  if (kind === 'changed') letters[place] = letter
  if (kind === 'swapped' && place + 1 < letters.length)
    letters.splice(place, 2, letters[place + 1]!, letters[place]!)
  return letters.join('')
}

describe('laws of reading', () => {
  test('the order of rows changes nothing but the order', async () => {
    await fc.assert(
      fc.asyncProperty(recordsArbitrary(3), fc.infiniteStream(fc.nat()), async (records, chance) => {
        const [headings, ...rows] = recordTable(records, noNames.fields)
        const shuffled = rows
          .map((row) => ({ row, at: chance.next().value! }))
          .toSorted((a, b) => a.at - b.at)
          .map(({ row }) => row)
        const file = await read([headings!, ...shuffled])
        expect(unordered(file.records)).toEqual(unordered(records))
      }),
      { numRuns: 1000 },
    )
  })

  test('a slip in any cell but the number loses no find, no component and no hazard', async () => {
    await fc.assert(
      fc.asyncProperty(recordsArbitrary(2), fc.nat(), fc.nat(), slip, async (records, down, across, typo) => {
        const table = recordTable(records, noNames.fields).map((row) => [...row])
        const before = await read(table)
        const row = table[1 + (down % (table.length - 1))]!
        const filled = row.flatMap((cell, at) => (cell === '' || table[0]![at] === 'find_number' ? [] : [at]))
        const at = filled[across % filled.length]!
        row[at] = slipped(row[at]!, typo)
        const after = await read(table)
        const parts = (file: FileRead) => Map.groupBy(file.records, (one) => one.find_number)
        for (const [find, own] of parts(before)) {
          const mine = parts(after).get(find) ?? []
          const count = (of: readonly ConditionRecord[]) =>
            of.reduce((sum, one) => sum + one.components.length, 0)
          const repeated = after.problems.filter((one) => one.code === 'repeated-row').length
          expect(count(mine) + repeated).toBe(count(own))
        }
        for (const hazard of hazardsHeard(before)) expect(hazardsHeard(after)).toContain(hazard)
      }),
      { numRuns: 1000 },
    )
  })

  test('a slip in a heading loses no find', async () => {
    await fc.assert(
      fc.asyncProperty(recordsArbitrary(2), fc.nat(), slip, async (records, across, typo) => {
        const table = recordTable(records, noNames.fields).map((row) => [...row])
        const at = across % table[0]!.length
        table[0]![at] = slipped(table[0]![at]!, typo)
        const file = await read(table)
        expect(new Set(file.records.map((one) => one.find_number))).toEqual(
          new Set(records.map((one) => one.find_number)),
        )
      }),
      { numRuns: 1000 },
    )
  })

  test('row by row or whole, a file gives the same', async () => {
    await fc.assert(
      fc.asyncProperty(
        recordsArbitrary(6),
        fc.infiniteStream(fc.nat()),
        fc.boolean(),
        async (records, chance, spoil) => {
          const [headings, ...rows] = recordTable(records, noNames.fields).map((row) => [...row])
          if (spoil) rows[0]![headings!.indexOf('find_number')] = ''
          const shuffled = rows
            .map((row) => ({ row, at: chance.next().value! }))
            .toSorted((a, b) => a.at - b.at)
            .map(({ row }) => row)
          const content = bytes([headings!, ...shuffled])
          const whole = await readFile(content, noNames, words)
          const open = async function* () {
            for (let at = 0; at < content.length; at += 97) yield content.subarray(at, at + 97)
          }
          const survey = await surveyCsv(open, noNames, words)
          expect(survey).not.toBeNull()
          const batches = await Array.fromAsync(streamCsv(open, survey!, noNames))
          expect(batches.flatMap((batch) => batch.records)).toEqual(whole.records)
          expect(batches.flatMap((batch) => batch.unreadableRows).map((row) => row.row)).toEqual(
            whole.unreadableRows.map((row) => row.row),
          )
          expect(survey!.loudHazards).toEqual(whole.loudHazards)
          const codes = (problems: readonly { code: string; row: number | null }[]) =>
            problems.map((one) => `${one.row} ${one.code}`).toSorted()
          expect(codes([...survey!.problems, ...batches.flatMap((batch) => batch.problems)])).toEqual(
            codes(whole.problems),
          )
        },
      ),
      { numRuns: 500 },
    )
  })
})
