import { readLogFile, type LogAnswers, type LogRead } from '../logger/read/read-log.ts'
import { readLogBytes } from './read-log-bytes.ts'
import { openerOf, type Content } from './record-source.ts'

/** Reads a logger's file as it comes, so that a long one need not be in memory; a workbook is small enough to be. */
export async function readLogStream(content: Content, answers: LogAnswers): Promise<LogRead> {
  const open = openerOf(content)
  const size = content instanceof Uint8Array ? content.byteLength : content.size
  const read = await readLogFile(open(), answers, size)
  if (!read.problems.some(({ code }) => code === 'spreadsheet-file')) return read
  const pieces: Uint8Array[] = []
  for await (const piece of open()) pieces.push(piece)
  return readLogBytes(Buffer.concat(pieces), answers)
}
