import { describe, expect, test } from 'vitest'
import writeExcelFile from 'write-excel-file/node'
import { readFile } from '../../lib/tables/read-file.ts'
import { writeWorkbook } from '../../lib/tables/xlsx-write.ts'
import { codes, encode, names, words } from './reading.ts'
import { zip } from './zip.ts'

const read = (bytes: Uint8Array) => readFile(bytes, names, words)

describe('workbooks', () => {
  const blank = Buffer.alloc(30_000_000)
  test.each([
    ['that unpack to far more than their size', [{ name: 'xl/workbook.xml', content: blank }], 'too-dense'],
    [
      'that declare more than a workbook holds',
      [{ name: 'xl/workbook.xml', content: encode('x'), declared: 100_000_000 }],
      'too-large',
    ],
    [
      'whose directory lies',
      [{ name: 'xl/workbook.xml', content: blank, declared: 1000 }],
      'xl/workbook.xml',
    ],
    [
      'that point out of themselves',
      [
        { name: 'xl/workbook.xml', content: encode('x') },
        { name: '../../etc/x', content: encode('x') },
      ],
      'name-leaves-folder',
    ],
    [
      'of very many parts',
      Array.from({ length: 300 }, (_, at) => ({
        name: `xl/worksheets/sheet${at}.xml`,
        content: encode('x'),
      })),
      'too-many-entries',
    ],
  ])('%s are refused', async (_, entries, why) => {
    const started = performance.now()
    const file = await read(zip(entries))
    expect(file.problems).toMatchObject([{ code: 'unsafe-workbook', found: why, severity: 'unreadable' }])
    expect(performance.now() - started).toBeLessThan(3000)
  })

  test('one that is cut short or holds nonsense is told', async () => {
    const whole = await writeWorkbook('finds', [
      ['find_number', 'material'],
      ['TW-1', 'iron'],
    ])
    expect(codes(await read(whole.slice(0, whole.length - 30)))).toEqual(['unsafe-workbook'])
    expect(codes(await read(zip([{ name: 'xl/workbook.xml', content: encode('<not a workbook') }])))).toEqual(
      ['broken-workbook'],
    )
  })

  test('dates, numbers and truth values come as texts; the sheet with find numbers is the one', async () => {
    const bytes = await writeExcelFile([
      {
        sheet: 'Notes',
        data: [
          ['what', 'why'],
          ['about', 'the dig'],
        ],
      },
      {
        sheet: 'Finds',
        data: [
          [null, null, null, null],
          ['Find No', 'material', 'recorded_on', 'wet_when_lifted', 'mass_g'],
          [
            'TW-1',
            'iron',
            { value: new Date(Date.UTC(2024, 2, 1)), type: Date, format: 'dd/mm/yyyy' },
            { value: true, type: Boolean },
            { value: 12.5, type: Number },
          ],
          [{ value: 412, type: Number }, 'bronz', null, null, null],
        ],
      },
    ]).toBuffer()
    const file = await read(bytes)
    expect(file.sheet).toBe('Finds')
    expect(file.records).toMatchObject([
      { find_number: 'TW-1', recorded_on: '2024-03-01', wet_when_lifted: 'yes', mass_g: 12.5 },
      { find_number: '412' },
    ])
    expect(file.problems).toMatchObject([
      { code: 'other-sheet', found: 'Notes', suggestion: 'Finds' },
      { code: 'guessed-value', field: 'wet_when_lifted', row: 3 },
      { code: 'unknown-material', row: 4 },
    ])
  })

  test('finds on a second sheet are a problem, and dangers on any sheet are heard', async () => {
    const bytes = await writeExcelFile([
      {
        sheet: 'Iron',
        data: [
          ['find_number', 'material'],
          ['TW-1', 'iron'],
        ],
      },
      {
        sheet: 'Copper',
        data: [
          ['find_number', 'material'],
          ['TW-2', 'copper-alloy'],
        ],
      },
      { sheet: 'Diary', data: [['Monday', 'a grenade']] },
    ]).toBuffer()
    const file = await read(bytes)
    expect(file.problems).toMatchObject([
      { code: 'other-find-sheet', severity: 'problem', found: 'Copper' },
      { code: 'other-sheet', severity: 'note', found: 'Diary' },
    ])
    expect(file.loudHazards).toEqual([
      { row: 1, find: null, hazard: 'ammunition-like', word: 'grenade', column: 'sheet Diary' },
    ])
  })

  test('a formula without a value is told where it stands', async () => {
    const bytes = await writeExcelFile([
      ['find_number', 'material', 'mass_g'],
      ['TW-1', 'iron', { value: '=1+1', type: 'Formula' }],
    ]).toBuffer()
    const file = await read(bytes)
    expect(file.problems).toMatchObject([{ code: 'formula', row: 2, column: 'mass_g', found: '=1+1' }])
    expect(file.records).toMatchObject([{ unread: { mass_g: '=1+1' } }])
  })
})
