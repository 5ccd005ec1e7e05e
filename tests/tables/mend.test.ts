import { expect, test } from 'vitest'
import { problemAdvice } from '../../lib/wording/problems.ts'
import { mendFile } from '../../lib/tables/mend-file.ts'
import { readFile } from '../../lib/tables/read-file.ts'
import { encode, finds, names, words } from './reading.ts'

const read = (text: string) => readFile(encode(text), names, words)
const bad = 'Find No;material;object\nTW-1;iron;nail\n;lead;"a ""thing"" = 3"\nTW-3;;ring\n'

test('rows that could not be read are saved under their own headings with what is wrong', async () => {
  const saved = mendFile(await read(bad), problemAdvice)
  expect(saved.extension).toBe('csv')
  expect(saved.text).toMatch(/^\ufeffFind No,material,object,mend: what is wrong\r\n/)
  expect(saved.text).toContain(',lead,"a ""thing"" = 3",')
  expect(saved.text).toContain('The find number is missing.')
})

test('they come back as they were, without the column that says what is wrong', async () => {
  const first = await read(bad)
  const again = await read(mendFile(first, problemAdvice).text)
  expect(again.unreadableRows.map((row) => row.cells.slice(0, 3))).toEqual(
    first.unreadableRows.map((row) => row.cells),
  )
  expect(again.unknownColumns).toEqual([])
})

test('mended, they are read', async () => {
  const saved = mendFile(await read(bad), problemAdvice).text
  const mended = await read(saved.replace('\n,lead', '\nTW-2,lead').replace('TW-3,,', 'TW-3,gold,'))
  expect(finds(mended)).toEqual(['TW-2', 'TW-3'])
  expect(mended.records.map((one) => one.components[0])).toEqual([
    { component: 'body', material: 'lead' },
    { component: 'body', material: 'gold' },
  ])
})

test('of JSON, objects leave one a line; what is no JSON leaves as the text it was', async () => {
  const file = await read(
    '{"find_number":"TW-1","notes":"x"}\n{"find_number":"TW-2","material":"iron"}\n{"find_number":"TW-3", grenade\n',
  )
  const saved = mendFile(file, problemAdvice)
  expect(saved.extension).toBe('jsonl')
  expect(
    saved.text
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as unknown),
  ).toEqual([
    {
      find_number: 'TW-1',
      notes: 'x',
      'mend: what is wrong': problemAdvice(file.unreadableRows[0]!.problems[0]!),
    },
    {
      text: '{"find_number":"TW-3", grenade',
      'mend: what is wrong': problemAdvice(file.unreadableRows[1]!.problems[0]!),
    },
  ])
  const again = await read(saved.text)
  expect(again.unreadableRows.length).toBe(2)
  expect(again.loudHazards).toMatchObject([{ hazard: 'ammunition-like' }])
})
