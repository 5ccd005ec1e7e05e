import type { LogProblemCode } from '../log-problem.ts'
import { splitCells } from './cells.ts'
import { widest, type TextLine } from './delimiter.ts'
import { readHeading } from './heading-words.ts'

export interface NoTable {
  readonly failure: LogProblemCode
  readonly line: number | null
  readonly found: string
}

/** Headings that nothing follows stand near the beginning. */
const searched = 500

/** No line looks like a reading: is it because there are only headings, or is this no table at all? */
export function whyNoTable(lines: readonly TextLine[]): NoTable {
  for (const { line, text } of lines.slice(0, searched)) {
    for (const delimiter of ['\t', ';', '|', ','] as const) {
      const { cells } = splitCells(text, delimiter)
      if (cells.length < 2 || cells.length > widest) continue
      const senses = new Set(cells.map((cell) => readHeading(cell).sense))
      if ((senses.has('temperature') || senses.has('humidity')) && senses.size > 1) {
        return { failure: 'headings-only', line, found: text }
      }
    }
  }
  const first = lines.find(({ text }) => text.trim() !== '')
  return { failure: 'no-readings', line: first?.line ?? null, found: first?.text ?? '' }
}
