import { deflateRawSync } from 'node:zlib'
import writeExcelFile from 'write-excel-file/node'
import { describe, expect, test } from 'vitest'
import { readFile, type FileRead } from '../../lib/tables/read-file.ts'
import { writeWorkbook } from '../../lib/tables/xlsx-write.ts'

const names = { fields: { find_number: ['Find No'], mass_g: ['Mass', 'Weight (g)'] }, values: {} }
const words = [{ words: ['grenade'], not: [], hazard: 'ammunition-like' }]
const encode = (text: string) => new TextEncoder().encode(text)
const read = (bytes: Uint8Array) => readFile(bytes, names, words)
const readText = (text: string) => read(encode(text))
const codes = (file: FileRead) => file.problems.map((one) => one.code)
const finds = (file: FileRead) => file.records.map((one) => one.find_number)

const good = 'find_number,material\nTW-1,iron\nTW-2,lead\n'

describe('files that are no records', () => {
  test.each([
    ['nothing', new Uint8Array(), 'empty-file'],
    ['only blanks', encode(' \n\n'), 'empty-file'],
    ['only a heading', encode('find_number,material\n'), 'header-only'],
    [
      'a web page',
      encode('<!DOCTYPE html><html><table><tr><td>TW-1</td></tr></table></html>'),
      'not-a-table',
    ],
    [
      'a table of a web page under another name',
      encode('\n<table><tr><td>TW-1</td></tr></table>'),
      'not-a-table',
    ],
    ['a PDF', encode('%PDF-1.7 find_number'), 'not-a-table'],
    ['an old workbook', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0, 0]), 'not-a-table'],
    ['a picture', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]), 'not-a-table'],
    ['bytes', Uint8Array.from({ length: 4096 }, (_, at) => (at * 31) % 256), 'not-a-table'],
    ['a zip of something else', encode('PK\u0003\u0004 letter.txt'), 'not-a-table'],
    ['an empty list', encode('[]'), 'empty-file'],
  ])('%s', async (_, bytes, code) => {
    const file = await read(bytes)
    expect(codes(file)).toEqual([code])
    expect(file.records).toEqual([])
    expect(file.problems[0]!.severity).toBe('unreadable')
  })

  test('a text without the heading of a find number says so once and keeps every row', async () => {
    const file = await readText('object,material\nnail,iron\na grenade,iron\n')
    expect(codes(file)).toEqual(['no-find-number-column'])
    expect(file.unreadableRows.map((row) => [row.row, row.cells])).toEqual([
      [2, ['nail', 'iron']],
      [3, ['a grenade', 'iron']],
    ])
    expect(file.loudHazards).toMatchObject([{ row: 3, hazard: 'ammunition-like' }])
  })

  test('plain prose is kept row by row and its dangers are heard', async () => {
    const file = await readText('Dear all,\nwe found a grenade today.\n')
    expect(codes(file)).toEqual(['no-find-number-column'])
    expect(file.unreadableRows.map((row) => row.row)).toEqual([1, 2])
    expect(file.loudHazards).toMatchObject([{ row: 2, hazard: 'ammunition-like' }])
  })
})

describe('encodings', () => {
  const text = 'find_number;material;object\nTW-1;iron;clé à griffe – “1”\n'
  const utf16 = (big: boolean, mark: boolean) => {
    const buffer = Buffer.from(mark ? `\ufeff${text}` : text, 'utf16le')
    return new Uint8Array(big ? buffer.swap16() : buffer)
  }
  const cp1252 = Uint8Array.from(
    text,
    (letter) => ({ '–': 0x96, '“': 0x93, '”': 0x94 })[letter] ?? letter.charCodeAt(0),
  )
  test.each([
    ['utf-8', encode(text)],
    ['utf-8', encode(`\ufeff${text}`)],
    ['utf-16le', utf16(false, true)],
    ['utf-16le', utf16(false, false)],
    ['utf-16be', utf16(true, true)],
    ['utf-16be', utf16(true, false)],
    ['windows-1252', cp1252],
  ])('%s', async (encoding, bytes) => {
    const file = await read(bytes)
    expect(file.encoding).toBe(encoding)
    expect(file.records).toMatchObject([{ find_number: 'TW-1', object: 'clé à griffe – “1”' }])
    expect(codes(file)).toEqual(encoding === 'windows-1252' ? ['read-in-old-encoding'] : [])
  })

  test('a few broken bytes in UTF-8 are told, and the rest stays UTF-8', async () => {
    const file = await read(
      Buffer.concat([
        encode('find_number,material,object\nTW-1,iron,clé à é è\nTW-2,iron,x'),
        Buffer.from([0xff]),
        encode('y\n'),
      ]),
    )
    expect(file.problems).toMatchObject([{ code: 'undecodable-text', found: '1' }])
    expect(file.records[0]!.object).toBe('clé à é è')
    expect(finds(file)).toEqual(['TW-1', 'TW-2'])
  })
})

describe('delimiters, headings and rows', () => {
  test.each([',', ';', '\t', '|'])('%j is found by what it makes of the headings', async (delimiter) => {
    const file = await readText(
      `Find No${delimiter}Material${delimiter}burial\nTW-1${delimiter}iron${delimiter}clay\n`,
    )
    expect(file.delimiter).toBe(delimiter)
    expect(file.records).toMatchObject([{ find_number: 'TW-1', burial: ['clay'] }])
  })

  test('lists by semicolon do not mislead', async () => {
    const file = await readText(
      'find_number,material,burial\nTW-1,iron,clay;damp;peat\nTW-2,iron,clay;damp;cess\n',
    )
    expect(file.delimiter).toBe(',')
    expect(file.records[0]!.burial).toEqual(['clay', 'damp', 'peat'])
  })

  test('a line that names the delimiter, old line ends and title rows', async () => {
    expect(finds(await readText(`sep=;\r\nfind_number;material\r\nTW-1;iron\r\n`))).toEqual(['TW-1'])
    expect(finds(await readText('find_number,material\rTW-1,iron\rTW-2,lead'))).toEqual(['TW-1', 'TW-2'])
    const titled = await readText('Tollgate Wharf finds\n\nfind_number,material\nTW-1,bronz\n')
    expect(titled.problems).toMatchObject([
      { code: 'rows-above-heading', row: 1 },
      { code: 'unknown-material', row: 4 },
    ])
  })

  test('headings are matched forgivingly; unknown columns are kept and listed', async () => {
    const file = await readText(
      'FIND NUMBER,Materiel,Weight (g),Recorded On,Photographer,,Photographer\nTW-1,iron,12,2024-03-01,Ann,x,Bob\n',
    )
    expect(file.unknownColumns).toEqual(['Photographer', 'Photographer'])
    expect(file.records).toEqual([
      {
        find_number: 'TW-1',
        recorded_on: '2024-03-01',
        mass_g: 12,
        components: [
          {
            component: 'body',
            material: 'iron',
            extra: { Photographer: 'Ann', 'column F': 'x', 'Photographer (2)': 'Bob' },
          },
        ],
      },
    ])
    expect(file.problems).toMatchObject([
      { code: 'guessed-heading', found: 'Materiel', suggestion: 'material' },
      { code: 'unknown-column' },
      { code: 'unknown-column' },
    ])
  })

  test('a heading in another unit is no slip of ours', async () => {
    const file = await readText('find_number,material,mass_kg\nTW-1,iron,2\n')
    expect(file.unknownColumns).toEqual(['mass_kg'])
    expect(file.records[0]!.mass_g).toBeUndefined()
  })

  test('a second column of one field is kept beside the record', async () => {
    const file = await readText('find_number,material,Mass,mass_g\nTW-1,iron,12,13\n')
    expect(file.problems).toMatchObject([
      { code: 'duplicate-heading', column: 'mass_g' },
      { code: 'unknown-column' },
    ])
    expect(file.records).toMatchObject([{ mass_g: 12, components: [{ extra: { mass_g: '13' } }] }])
  })

  test('rows longer and shorter than the headings', async () => {
    const file = await readText('find_number,material,mass_g\nTW-1,iron,12,5\nTW-2,iron\n')
    expect(file.problems).toMatchObject([{ code: 'too-many-cells', row: 2, found: '5' }])
    expect(file.records).toMatchObject([
      { components: [{ extra: { 'column D': '5' } }] },
      { find_number: 'TW-2' },
    ])
  })

  test('blank rows count as rows', async () => {
    expect((await readText('find_number,material\n\n,\nTW-1,bronz\n')).problems).toMatchObject([{ row: 4 }])
  })
})

describe('quotes', () => {
  test('one that is never closed costs no find below it', async () => {
    const file = await readText(
      'find_number,material,object\nTW-1,iron,"nail\nTW-2,lead,weight\nTW-3,tin,"spoon"\nTW-4,gold,ring\n',
    )
    expect(finds(file)).toEqual(['TW-1', 'TW-2', 'TW-3', 'TW-4'])
    expect(file.records.map((one) => one.object)).toEqual(['"nail', 'weight', 'spoon', 'ring'])
    expect(file.problems).toMatchObject([{ code: 'unbalanced-quote', row: 2, line: 2 }])
  })
  test('one that would be closed by a later one of its kind', async () => {
    const file = await readText(
      'find_number,material,object\nTW-1,iron,"nail\nTW-2,lead,x\nTW-3,tin,spoon"\n',
    )
    expect(finds(file)).toEqual(['TW-1', 'TW-2', 'TW-3'])
    expect(codes(file)).toEqual(['unbalanced-quote', 'stray-quote'])
  })
  test('inches are no quotes; cells of several lines stay one row', async () => {
    const file = await readText(
      'find_number,material,object\nTW-1,iron,5" nail\nTW-2,lead,"one\ntwo, ""three"""\nTW-3,lead,x\n',
    )
    expect(file.records.map((one) => one.object)).toEqual(['5" nail', 'one\ntwo, "three"', 'x'])
    expect(file.problems).toMatchObject([{ code: 'stray-quote', severity: 'note', row: 2 }])
  })
})

describe('cells', () => {
  test('formulas are told, guarded texts and kept zeros are read', async () => {
    const file = await readText(
      `find_number,material,object,mass_g,context\nTW-1,iron,=A1+1,=2*3,"=""0012"""\nTW-2,iron,'=A1,-5,'-x\n`,
    )
    expect(file.problems.map((one) => [one.row, one.code, one.field])).toEqual([
      [2, 'formula', 'object'],
      [2, 'formula', 'mass_g'],
      [3, 'out-of-range', 'mass_g'],
    ])
    expect(file.records).toMatchObject([
      { object: '=A1+1', context: '0012', unread: { mass_g: '=2*3' } },
      { object: '=A1', context: '-x', unread: { mass_g: '-5' } },
    ])
  })

  test('dates in another order are settled by their column, or asked about', async () => {
    const settled = await readText(
      'find_number,material,lifted_on\nTW-1,iron,03/04/2024\nTW-2,iron,31/03/2024\n',
    )
    expect(settled.records.map((one) => one.lifted_on)).toEqual(['2024-04-03', '2024-03-31'])
    const open = await readText('find_number,material,lifted_on\nTW-1,iron,03/04/2024\n')
    expect(open.records).toMatchObject([{ unread: { lifted_on: '03/04/2024' } }])
    expect(open.problems).toMatchObject([{ code: 'ambiguous-date', suggestion: '2024-04-03 or 2024-03-04' }])
  })

  test('a row whose only readable cell is a hazard', async () => {
    const file = await readText(
      'find_number,material,hazards_noticed,object\n,,ammunition-like,\n,,,grenade\nTW-9,,sharp,\n',
    )
    expect(file.records).toEqual([])
    expect(file.unreadableRows.map((row) => row.row)).toEqual([2, 3, 4])
    expect(file.loudHazards.map((one) => [one.row, one.find, one.hazard])).toEqual([
      [2, null, 'ammunition-like'],
      [3, null, 'ammunition-like'],
      [4, 'TW-9', 'sharp'],
    ])
  })

  test('unknown everywhere', async () => {
    const { fields } = await import('../../lib/record/fields.ts')
    const headings = Object.keys(fields)
    const file = await readText(
      `${headings.join(',')}\n${headings.map((name) => (name === 'find_number' ? 'TW-1' : 'unknown')).join(',')}\n`,
    )
    expect(file.records).toMatchObject([
      {
        find_number: 'TW-1',
        state_now: 'unknown',
        mass_g: 'unknown',
        burial: ['unknown'],
        components: [{ material: 'metal-unidentified', core: 'unknown' }],
      },
    ])
    expect(file.problems.filter((one) => one.severity !== 'note')).toEqual([])
  })
})

describe('JSON', () => {
  const record = {
    find_number: 'TW-1',
    burial: 'clay',
    mass_g: 12.5,
    pet: { name: 'Rex' },
    components: [{ material: 'iron', seen: ['loose-flakes'], wear: 3 }],
  }
  const expected = [
    {
      find_number: 'TW-1',
      burial: ['clay'],
      mass_g: 12.5,
      extra: { pet: { name: 'Rex' } },
      components: [{ component: 'body', material: 'iron', seen: ['loose-flakes'], extra: { wear: 3 } }],
    },
  ]
  test.each([
    ['one object', JSON.stringify(record)],
    ['a list', JSON.stringify([record])],
    ['printed over lines', JSON.stringify([record], null, 2)],
    ['one a line', `${JSON.stringify(record)}\n\n`],
  ])('%s', async (_, text) => {
    const file = await readText(text)
    expect(file.records).toEqual(expected)
    expect(file.problems).toEqual([])
    expect(file.unknownColumns).toEqual(['pet', 'wear'])
  })

  test('a flat object is a row', async () => {
    expect(finds(await readText('{"find_number":412,"material":"iron"}'))).toEqual(['412'])
  })

  test('one broken piece costs no other, and its dangers are heard', async () => {
    const file = await readText(
      '[\n {"find_number":"TW-1","components":[{"material":"iron"}]},\n {"find_number":"TW-2","notes":"grenade" "x"},\n {"find_number":"TW-3","components":[{"material":"iron"}]}\n]',
    )
    expect(finds(file)).toEqual(['TW-1', 'TW-3'])
    expect(file.problems).toMatchObject([{ code: 'broken-json', row: 2, line: 3 }])
    expect(file.unreadableRows).toMatchObject([
      { row: 2, line: 3, cells: ['{"find_number":"TW-2","notes":"grenade" "x"}'] },
    ])
    expect(file.loudHazards).toMatchObject([{ row: 2, line: 3, hazard: 'ammunition-like' }])
    const lines = await readText(
      '{"find_number":"TW-1","material":"iron"}\n{"find_number":"TW-2",\n{"find_number":"TW-3","material":"iron"}\n',
    )
    expect(finds(lines)).toEqual(['TW-1', 'TW-3'])
    expect(lines.problems).toMatchObject([{ code: 'broken-json', row: 2, line: 2 }])
  })

  test('a list cut short gives what is whole', async () => {
    const file = await readText('[{"find_number":"TW-1","material":"iron"},{"find_number":"TW-2","mat')
    expect(finds(file)).toEqual(['TW-1'])
    expect(codes(file)).toEqual(['broken-json'])
  })

  test('items that are no records, and a record without components', async () => {
    const file = await readText(
      '[[1],{"find_number":"TW-1","components":[]},"grenade",{"components":[{"material":"iron"}]}]',
    )
    expect(file.problems.map((one) => [one.row, one.code])).toEqual([
      [1, 'not-an-object'],
      [2, 'no-component'],
      [3, 'not-an-object'],
      [4, 'no-find-number'],
      [4, 'no-find-number'],
    ])
    expect(file.unreadableRows.map((row) => row.row)).toEqual([1, 2, 3, 4])
    expect(file.loudHazards).toMatchObject([{ row: 3, hazard: 'ammunition-like' }])
  })
})

/** A zip file whose directory can be made to say anything. */
function zip(entries: readonly { name: string; content: Uint8Array; declared?: number }[]): Uint8Array {
  const parts: Buffer[] = []
  const directory: Buffer[] = []
  let at = 0
  for (const { name, content, declared = content.length } of entries) {
    const packed = deflateRawSync(content, { level: 9 })
    const local = Buffer.alloc(30)
    local.writeUInt32LE(0x04034b50, 0)
    local.writeUInt16LE(8, 8)
    local.writeUInt32LE(packed.length, 18)
    local.writeUInt32LE(declared, 22)
    local.writeUInt16LE(name.length, 26)
    const entry = Buffer.alloc(46)
    entry.writeUInt32LE(0x02014b50, 0)
    entry.writeUInt16LE(8, 10)
    entry.writeUInt32LE(packed.length, 20)
    entry.writeUInt32LE(declared, 24)
    entry.writeUInt16LE(name.length, 28)
    entry.writeUInt32LE(at, 42)
    parts.push(local, Buffer.from(name), packed)
    directory.push(entry, Buffer.from(name))
    at += 30 + name.length + packed.length
  }
  const end = Buffer.alloc(22)
  const size = directory.reduce((sum, part) => sum + part.length, 0)
  end.writeUInt32LE(0x06054b50, 0)
  end.writeUInt16LE(entries.length, 8)
  end.writeUInt16LE(entries.length, 10)
  end.writeUInt32LE(size, 12)
  end.writeUInt32LE(at, 16)
  return Buffer.concat([...parts, ...directory, end])
}

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

test('a good file has no problems', async () => {
  const file = await readText(good)
  expect(file.problems).toEqual([])
  expect(finds(file)).toEqual(['TW-1', 'TW-2'])
})
