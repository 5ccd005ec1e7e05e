import type { TextLine } from './delimiter.ts'
import type { LineDecoder } from './encoding.ts'
import { longestLine } from './byte-lines.ts'
import { plainText } from './plain-text.ts'

export interface HeadLine extends TextLine {
  /** As decoded, before blanks and digits are made plain. */
  readonly raw: string
  /** Where it begins; parts of a line that lone carriage returns cut share it. */
  readonly from: number
}

const lineFeed = 10
/** More lines than this tell nothing new of how a table is written. */
const mostLines = 5000

/** The first lines of a part of the file as text; `firstLine` is the number of the first. */
export function headLines(bytes: Uint8Array, firstLine: number, decoder: LineDecoder): readonly HeadLine[] {
  const lines: HeadLine[] = []
  let from = 0
  while (from < bytes.length && lines.length < mostLines) {
    const next = bytes.indexOf(lineFeed, from)
    const end = next === -1 ? bytes.length : next
    const decoded = end - from > longestLine ? '' : decoder.decode(bytes, from, end)
    // A lone carriage return ends a line too.
    for (const raw of decoded
      .replace(/\r$/, '')
      .replace(/^\ufeff/, '')
      .split('\r')) {
      lines.push({ line: firstLine + lines.length, raw, text: plainText(raw).text, from })
    }
    from = end + 1
  }
  return lines
}
