import { describe, expect, test } from 'vitest'
import { readFile } from '../../lib/tables/read-file.ts'
import { codes, encode, finds, names, words } from './reading.ts'

const readText = (text: string) => readFile(encode(text), names, words)

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
