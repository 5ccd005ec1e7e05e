import { readLog, readLogRows, type LogAnswers, type LogRead } from '../logger/read/read-log.ts'
import { readWorkbook } from '../tables/xlsx-read.ts'

/** The text of a logger, or the longest sheet of a workbook that somebody saved it as. */
export async function readLogBytes(bytes: Uint8Array, answers: LogAnswers): Promise<LogRead> {
  const read = readLog(bytes, answers)
  if (!read.problems.some(({ code }) => code === 'spreadsheet-file')) return read
  const workbook = await readWorkbook(bytes)
  if (!workbook.ok) return read
  const longest = workbook.sheets.toSorted((a, b) => b.rows.length - a.rows.length)[0]
  return longest === undefined ? read : readLogRows(longest.rows, answers)
}
