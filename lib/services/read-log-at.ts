import { open, readFile, stat } from 'node:fs/promises'
import { readLogFile, type LogAnswers, type LogRead } from '../logger/read/read-log.ts'
import { readLogBytes } from './read-log-bytes.ts'

/** The bytes of a file, a piece at a time, all in one buffer: a piece holds good until the next one is asked for. */
async function* piecesOf(file: string): AsyncGenerator<Uint8Array> {
  const handle = await open(file)
  try {
    const buffer = new Uint8Array(1 << 20)
    for (;;) {
      const { bytesRead } = await handle.read(buffer, 0, buffer.length)
      if (bytesRead === 0) return
      yield buffer.subarray(0, bytesRead)
    }
  } finally {
    await handle.close()
  }
}

/** Reads a logger's file where it lies, so that a long one is never in memory; a workbook is small enough to be. */
export async function readLogAt(file: string, answers: LogAnswers): Promise<LogRead> {
  const { size } = await stat(file)
  const read = await readLogFile(piecesOf(file), answers, size)
  const isWorkbook = read.problems.some(({ code }) => code === 'spreadsheet-file')
  return isWorkbook ? readLogBytes(await readFile(file), answers) : read
}
