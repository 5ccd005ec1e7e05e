import type { FieldName } from '../record/fields.ts'
import type { GivenRow } from '../record/given.ts'
import { hazardsIn } from '../record/hazard-words.ts'
import { fieldOfHeading } from '../record/heading.ts'
import type { Names } from '../record/names.ts'
import { inFileOrder, problem } from '../record/problem.ts'
import { givenOfJson } from '../record/read-json.ts'
import { readRecords } from '../record/read-record.ts'
import type { HazardSeen } from '../record/read-row.ts'
import type { TextWord } from '../record/text-words.ts'
import type { Decoded } from './decode.ts'
import { decodingProblems, nothing, unreadableOf, type FileRead } from './file-read.ts'
import { readJson } from './json-read.ts'

/** Objects of a JSON file as records; what is no object, or broken, is kept as the text it was. */
export function readJsonFile(decoded: Decoded, names: Names, words: readonly TextWord[]): FileRead {
  const { items, broken, problems } = readJson(decoded.text)
  const fieldOf = (key: string): FieldName | null => fieldOfHeading(key, names.fields)
  const given = items.map(({ value, item, line }) => ({
    item,
    line,
    value,
    ...givenOfJson(value, item, line, fieldOf),
  }))
  const rows: readonly GivenRow[] = given.flatMap((one) => one.rows)
  const read = readRecords(rows, names, words)
  const refused = [...problems, ...given.flatMap((one) => one.problems)]
  const lost = [
    ...broken,
    ...given
      .filter((one) => one.rows.length === 0)
      .map((one) => ({ ...one, text: JSON.stringify(one.value) })),
  ]
  const heard = lost.flatMap(({ item, line, text }): HazardSeen[] =>
    hazardsIn(text.replace(/[{}[\]":]/g, ' , '), words).map((hazard) => ({
      row: item,
      line,
      find: null,
      ...hazard,
      column: 'json',
    })),
  )
  const texts = new Map([
    ...items.map((one) => [one.item, [JSON.stringify(one.value)]] as const),
    ...lost.map((one) => [one.item, [one.text]] as const),
  ])
  const unreadable = { ...read, unreadable: new Set([...read.unreadable, ...lost.map((one) => one.item)]) }
  const all = inFileOrder([...decodingProblems(decoded), ...refused, ...read.problems])
  const extras = new Set(
    rows.flatMap((row) => [...Object.keys(row.findExtra), ...Object.keys(row.partExtra)]),
  )
  return {
    ...nothing,
    kind: 'json',
    encoding: decoded.encoding,
    headings: ['json'],
    unknownColumns: [...extras],
    records: read.records,
    problems: items.length + broken.length === 0 ? [problem('empty-file', { row: null }, 'json')] : all,
    unreadableRows: unreadableOf(unreadable, all, texts),
    loudHazards: [...read.loudHazards, ...heard],
  }
}
