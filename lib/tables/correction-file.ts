import { cleanText } from '../record/clean-text.ts'
import { csvRow } from './csv-read.ts'
import { delimiters } from './csv-dialect.ts'
import { csvRows } from './csv-rows.ts'
import { decode } from './decode.ts'

/** A review table as it came back: cells by heading, nothing understood. */
export interface CorrectionTable {
  readonly headings: readonly string[]
  readonly rows: readonly { readonly row: number; readonly cells: ReadonlyMap<string, string> }[]
  /** Rows, from 1, whose quotes are broken: nobody can say what they mean. */
  readonly broken: readonly number[]
}

/** Whichever delimiter the spreadsheet has saved it with: the one that finds most of the headings. */
export function readCorrectionTable(bytes: Uint8Array, wanted: readonly string[]): CorrectionTable {
  const text = (decode(bytes)?.text ?? '').replace(/^\ufeff/, '').replace(/\r\n?/g, '\n')
  const first = text.split('\n', 1)[0]!
  const headingsBy = (delimiter: string) => first.split(delimiter).map((cell) => cleanText(unquoted(cell)))
  const best = delimiters
    .map((delimiter) => ({
      delimiter,
      headings: headingsBy(delimiter),
      score: headingsBy(delimiter).filter((heading) => wanted.includes(heading)).length,
    }))
    .toSorted((a, b) => b.score - a.score)[0]!
  const shape = { delimiter: best.delimiter, width: best.headings.length, findAt: -1 }
  const { rows, problems } = csvRows(text, shape)
  const table = rows.slice(1).map((cells, at) => csvRow(at + 2, cells))
  return {
    headings: best.headings,
    rows: table
      .filter(({ cells }) => cells.some((cell) => cell.trim() !== ''))
      .map(({ row, cells }) => ({
        row,
        cells: new Map(best.headings.map((heading, at) => [heading, cleanText(cells[at] ?? '')])),
      })),
    broken: problems.flatMap(({ row }) => (row === null ? [] : [row])),
  }
}

const unquoted = (cell: string): string => /^"(.*)"$/.exec(cell.trim())?.[1] ?? cell
