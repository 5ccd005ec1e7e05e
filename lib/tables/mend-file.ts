import { mendColumn } from '../record/extra-cell.ts'
import type { Problem } from '../record/problem.ts'
import { byteOrderMark, csvText } from './csv-write.ts'
import type { FileRead, UnreadableRow } from './file-read.ts'

export interface MendFile {
  readonly extension: 'csv' | 'jsonl'
  readonly text: string
}

type Say = (problem: Problem) => string

const wrong = (row: UnreadableRow, say: Say) =>
  row.problems
    .filter((one) => one.severity !== 'note')
    .map(say)
    .join(' ')

function objectOf(text: string): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text)
    if (typeof value === 'object' && value !== null && !Array.isArray(value))
      return value as Record<string, unknown>
  } catch {
    // What is no JSON is handed back as the text it was.
  }
  return { text }
}

/**
 * The rows that could not be read, as they stood, with what is wrong beside each: to be saved, mended and read again. The
 * column that says it is not read back.
 */
export function mendFile(file: Pick<FileRead, 'kind' | 'headings' | 'unreadableRows'>, say: Say): MendFile {
  const rows = file.unreadableRows
  if (file.kind === 'json') {
    const lines = rows.map((row) =>
      JSON.stringify({ ...objectOf(row.cells[0] ?? ''), [mendColumn]: wrong(row, say) }),
    )
    return { extension: 'jsonl', text: lines.map((line) => `${line}\n`).join('') }
  }
  const width = Math.max(file.headings.length, ...rows.map((row) => row.cells.length))
  const padded = (cells: readonly string[]) => [...cells, ...Array<string>(width - cells.length).fill('')]
  const table = [
    [...padded(file.headings), mendColumn],
    ...rows.map((row) => [...padded(row.cells), wrong(row, say)]),
  ]
  return { extension: 'csv', text: `${byteOrderMark}${csvText(table)}` }
}
