import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxKinds } from '../../lib/record/places.ts'
import { eventColumns, type TabledKind } from '../../lib/record/store-diary.ts'
import { storeColumns, storeKeys, storeTables, type StoreTable } from '../../lib/record/store-tables.ts'
import { storeQuantities } from '../../lib/record/store-quantities.ts'
import { readPlaces } from '../../lib/tables/place-table.ts'
import {
  storeJsonLines,
  storeTableCsv,
  storeWorkbook,
  type StoreGiven,
  type StoreRows,
} from '../../lib/tables/write-places.ts'
import { textArbitrary } from '../arbitrary/text.ts'

const bytes = (text: string) => new TextEncoder().encode(text)
const word = textArbitrary.filter((text) => text !== '')
const day = fc
  .integer({ min: 0, max: 3000 })
  .map((days) => new Date(Date.UTC(2020, 0, 1 + days)).toISOString().slice(0, 10))

const words: Readonly<Record<string, readonly string[]>> = {
  'boxes.kind': boxKinds,
  'rounds.lid': ['seated', 'not-seated', 'unknown'],
  'diary.lid': ['opened', 'seated', 'not-seated'],
  'diary.move': ['out', 'back', 'to-box'],
  'diary.cause': ['flood', 'leak'],
  'diary.metal': ['silver', 'lead'],
  'diary.method': ['mass-gain', 'mass-loss'],
}

function cell(table: StoreTable, column: string, kind: string): fc.Arbitrary<string | number> {
  if (kind === 'date') return day
  const choice = words[`${table}.${column}`]
  if (choice) return fc.constantFrom(...choice)
  if (kind === 'text') return word
  const { range = [0, 100], percent } = storeQuantities[column]!
  const [low, high] = range!
  return fc
    .double({ min: Math.max(low, percent === true ? 1 : 0.01), max: Math.min(high, 1000), noNaN: true })
    .map((number) => Number(number.toFixed(3)))
}

/** Ends in their order, or they would be set aside. */
function inOrder(row: Record<string, unknown>): Record<string, unknown> {
  const sorted = { ...row }
  for (const [low, high] of [
    ['rh_low', 'rh_high'],
    ['t_low', 't_high'],
    ['target_min', 'target_max'],
    ['strip_low', 'strip_high'],
    ['from', 'to'],
  ] as const) {
    const [a, b] = [sorted[low], sorted[high]]
    if (a !== undefined && b !== undefined && (a as number) > (b as number))
      [sorted[low], sorted[high]] = [b, a]
  }
  return sorted
}

function rowOf(table: StoreTable): fc.Arbitrary<StoreGiven> {
  const columns = Object.entries(storeColumns[table]).filter(([column]) => column !== 'event')
  const model = Object.fromEntries(columns.map(([column, kind]) => [column, cell(table, column, kind)]))
  const extra = fc.record({ colour: word, remark: word }, { requiredKeys: [] })
  const plain = fc
    .tuple(fc.record(model, { requiredKeys: storeKeys[table].filter((key) => key !== 'event') }), extra)
    .map(
      ([row, more]) => inOrder(Object.keys(more).length === 0 ? row : { ...row, extra: more }) as StoreGiven,
    )
  if (table !== 'diary') return plain
  return fc.constantFrom(...(Object.keys(eventColumns) as TabledKind[])).chain((event) => {
    const { must } = eventColumns[event]
    return fc
      .tuple(plain, fc.record(Object.fromEntries(must.map((column) => [column, model[column]!]))))
      .map(([row, needed]) => ({ event, ...row, ...needed }))
  })
}

/** In the order of columns, which is not part of what is told. */
const sorted = (rows: readonly unknown[]) =>
  rows.map((row) =>
    Object.fromEntries(Object.entries(row as object).toSorted(([a], [b]) => (a < b ? -1 : 1))),
  )

describe('a table of the store', () => {
  const comesBack = async (table: StoreTable, rows: readonly StoreGiven[], file: Uint8Array) => {
    const read = await readPlaces(file)
    expect(read.unreadable).toEqual([])
    expect(sorted(read[table].map(({ given }) => given))).toEqual(sorted(rows))
  }

  it.each(storeTables)('%s: comes back from CSV and JSON as it left', async (table) => {
    await fc.assert(
      fc.asyncProperty(fc.array(rowOf(table), { minLength: 1, maxLength: 6 }), async (rows) => {
        await comesBack(table, rows, bytes(storeTableCsv(table, rows)))
        await comesBack(table, rows, bytes(storeJsonLines(rows)))
      }),
      { numRuns: 100 },
    )
  })

  it.each(storeTables)('%s: comes back from XLSX as it left', async (table) => {
    const none = { rooms: [], boxes: [], loggers: [], rounds: [], diary: [] }
    await fc.assert(
      fc.asyncProperty(fc.array(rowOf(table), { minLength: 5, maxLength: 30 }), async (rows) => {
        await comesBack(table, rows, await storeWorkbook({ ...none, [table]: rows } as StoreRows))
      }),
      { numRuns: 3 },
    )
  })

  it('keeps what was not understood under the column it came from', async () => {
    const text = 'box,gel_kg,colour\r\nB1,a little,blue\r\n'
    const read = await readPlaces(bytes(text))
    expect(
      storeTableCsv(
        'boxes',
        read.boxes.map(({ given }) => given as StoreGiven),
      ),
    ).toBe(text)
  })

  it('leaves as a workbook of a sheet a table', async () => {
    const rows = {
      rooms: [{ room: 'Cold' }],
      boxes: [{ box: 'B1', room: 'Cold' }],
      loggers: [{ serial: 'L1', box: 'B1', from: '2026-01-01' }],
      rounds: [{ box: 'B1', on: '2026-02-01', strip_low: 10 }],
      diary: [{ event: 'water-change', on: '2026-02-02', box: 'B1' }],
    }
    const read = await readPlaces(await storeWorkbook(rows))
    expect(read.problems).toEqual([])
    for (const table of storeTables) expect(read[table].map(({ given }) => given)).toEqual(rows[table])
  })
})
