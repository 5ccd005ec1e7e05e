import { describe, expect, test } from 'vitest'
import { fields } from '../../lib/record/fields.ts'
import { readFile } from '../../lib/tables/read-file.ts'
import { codes, encode, finds, names, words } from './reading.ts'

const read = (bytes: Uint8Array) => readFile(bytes, names, words)
const readText = (text: string) => read(encode(text))
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

  test('dangers named above the headings and in a column of their own', async () => {
    const file = await readText(
      'Box with a grenade\nfind_number,material,ammunition-like,mould\nTW-1,iron,yes,no\n',
    )
    expect(file.loudHazards.map((one) => [one.row, one.find, one.hazard, one.column])).toEqual([
      [1, null, 'ammunition-like', 'above the headings'],
      [3, 'TW-1', 'ammunition-like', 'ammunition-like'],
    ])
  })

  test('unknown everywhere', async () => {
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

test('a good file has no problems', async () => {
  const file = await readText(good)
  expect(file.problems).toEqual([])
  expect(finds(file)).toEqual(['TW-1', 'TW-2'])
})
