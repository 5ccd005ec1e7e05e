import type { LogDelimiter } from './log-form.ts'

export interface Cells {
  readonly cells: readonly string[]
  /** A quotation mark was opened and never closed; the line was split as if it were not there. */
  readonly unclosed: boolean
}

function splitQuoted(line: string, delimiter: string): Cells | null {
  const cells: string[] = []
  let at = 0
  for (;;) {
    while (line[at] === ' ') at++
    if (line[at] === '"') {
      let cell = ''
      for (at++; ; at++) {
        const close = line.indexOf('"', at)
        if (close === -1) return null
        cell += line.slice(at, close)
        at = close + 1
        if (line[at] !== '"') break
        cell += '"'
      }
      const next = line.indexOf(delimiter, at)
      cells.push((cell + line.slice(at, next === -1 ? undefined : next)).trim())
      if (next === -1) return { cells, unclosed: false }
      at = next + 1
    } else {
      const next = line.indexOf(delimiter, at)
      cells.push(line.slice(at, next === -1 ? undefined : next).trim())
      if (next === -1) return { cells, unclosed: false }
      at = next + 1
    }
  }
}

const trimmed = (cells: readonly string[]) => cells.map((cell) => cell.trim())

/** The cells of one line, without blanks around them and without their quotation marks. */
export function splitCells(line: string, delimiter: LogDelimiter): Cells {
  if (delimiter === 'cells') return { cells: trimmed(line.split('\t')), unclosed: false }
  if (delimiter === 'spaces') {
    const bare = line.replaceAll('"', ' ').trim()
    return { cells: bare === '' ? [] : bare.split(/[ \t]+/), unclosed: false }
  }
  if (!line.includes('"')) return { cells: trimmed(line.split(delimiter)), unclosed: false }
  const quoted = splitQuoted(line, delimiter)
  if (quoted) return quoted
  return { cells: trimmed(line.split(delimiter).map((cell) => cell.replaceAll('"', ''))), unclosed: true }
}
