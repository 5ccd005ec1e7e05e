import { parse } from 'csv-parse'
import { Readable } from 'node:stream'
import type { Dialect } from './csv-dialect.ts'
import { csvRow } from './csv-read.ts'
import type { Encoding } from './decode.ts'
import { isBlank } from './given-rows.ts'
import type { TableRow } from './table.ts'

/** Opens the file anew from its beginning; it is read twice. */
export type OpenFile = () => AsyncIterable<Uint8Array>

const headBytes = 256 * 1024

/** As much of the file as tells what it is. */
export async function headOf(open: OpenFile): Promise<Uint8Array> {
  const pieces: Uint8Array[] = []
  let size = 0
  for await (const piece of open()) {
    pieces.push(piece)
    size += piece.length
    if (size >= headBytes) break
  }
  return Buffer.concat(pieces).subarray(0, headBytes)
}

async function* texts(open: OpenFile, encoding: Encoding): AsyncGenerator<string> {
  const decoder = new TextDecoder(encoding, { fatal: encoding === 'utf-8' })
  // A carriage return at the end of a piece may belong to the line feed that opens the next.
  let held = ''
  for await (const piece of open()) {
    const text = held + decoder.decode(piece, { stream: true })
    held = text.endsWith('\r') ? '\r' : ''
    yield text.slice(0, text.length - held.length).replace(/\r\n?/g, '\n')
  }
  yield (held + decoder.decode()).replace(/\r\n?/g, '\n')
}

/** Rows as csv-parse gives them; it throws where quoting is broken. */
function rowsOf(open: OpenFile, encoding: Encoding, dialect: Dialect): AsyncIterable<readonly string[]> {
  const parser = parse({
    delimiter: dialect.delimiter,
    relax_column_count: true,
    record_delimiter: '\n',
    from_line: dialect.delimiterLine ? 2 : 1,
  })
  const source = Readable.from(texts(open, encoding))
  source.on('error', (error) => parser.destroy(error))
  return source.pipe(parser) as AsyncIterable<readonly string[]>
}

/** Rows one after the other, numbered as a spreadsheet shows them; blank ones are left out. */
export async function* filledRows(
  open: OpenFile,
  encoding: Encoding,
  dialect: Dialect,
): AsyncGenerator<TableRow> {
  let row = 0
  for await (const cells of rowsOf(open, encoding, dialect)) {
    const read = csvRow(++row, cells)
    if (!isBlank(read)) yield read
  }
}
