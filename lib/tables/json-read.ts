import { problem, type Problem } from '../record/problem.ts'

/** One value of a JSON file with the place where it stands. */
export interface JsonItem {
  /** The how-manieth, from 1. */
  readonly item: number
  readonly line: number
  readonly value: unknown
}

/** A piece of the file that is no JSON. */
export interface BrokenJson {
  readonly item: number
  readonly line: number
  readonly text: string
}

export interface JsonRead {
  readonly items: readonly JsonItem[]
  readonly broken: readonly BrokenJson[]
  readonly problems: readonly Problem[]
}

interface Piece {
  readonly text: string
  readonly from: number
}

/** Top-level pieces between commas, by counting brackets outside of strings; nothing need be valid within them. */
function pieces(text: string, from: number): readonly Piece[] {
  const found: Piece[] = []
  let depth = 0
  let start = from
  let quoted = false
  for (let at = from; at < text.length; at++) {
    const letter = text[at]!
    if (quoted) {
      if (letter === '\\') at++
      else if (letter === '"') quoted = false
      else if (letter === '\n') quoted = false // a JSON string cannot go on: the quote was left open
    } else if (letter === '"') quoted = true
    else if (letter === '{' || letter === '[') depth++
    else if (letter === '}' || letter === ']') {
      if (depth === 0) {
        found.push({ text: text.slice(start, at), from: start })
        return found.filter((piece) => piece.text.trim() !== '')
      }
      depth--
    } else if (letter === ',' && depth === 0) {
      found.push({ text: text.slice(start, at), from: start })
      start = at + 1
    }
  }
  found.push({ text: text.slice(start), from: start })
  return found.filter((piece) => piece.text.trim() !== '')
}

function linesIn(text: string): readonly Piece[] {
  const found: Piece[] = []
  let from = 0
  for (const line of text.split('\n')) {
    if (line.trim() !== '') found.push({ text: line, from })
    from += line.length + 1
  }
  return found
}

/** Tells lines of rising places without counting from the top each time. */
function lineCounter(text: string): (at: number) => number {
  let line = 1
  let counted = 0
  return (at) => {
    for (
      let next = text.indexOf('\n', counted);
      next !== -1 && next < at;
      next = text.indexOf('\n', counted)
    ) {
      line++
      counted = next + 1
    }
    return line
  }
}

function parsed(text: string): { readonly ok: true; readonly value: unknown } | { readonly ok: false } {
  try {
    return { ok: true, value: JSON.parse(text) as unknown }
  } catch {
    return { ok: false }
  }
}

function readPieces(text: string, found: readonly Piece[]): JsonRead {
  const lineAt = lineCounter(text)
  const items: JsonItem[] = []
  const broken: BrokenJson[] = []
  for (const [at, piece] of found.entries()) {
    const place = { item: at + 1, line: lineAt(piece.from + piece.text.search(/\S/)) }
    const read = parsed(piece.text)
    if (read.ok) items.push({ ...place, value: read.value })
    else broken.push({ ...place, text: piece.text.trim() })
  }
  const problems = broken.map((piece) =>
    problem('broken-json', { row: piece.item, line: piece.line }, piece.text.slice(0, 200)),
  )
  return { items, broken, problems }
}

/** An array, one object, or one object a line. A piece that is broken costs no other piece. */
export function readJson(text: string): JsonRead {
  const start = text.search(/\S/)
  if (text[start] === '[') return readPieces(text, pieces(text, start + 1))
  const whole = parsed(text)
  if (whole.ok) return readPieces(text, [{ text, from: 0 }])
  const byLine = readPieces(text, linesIn(text))
  return byLine.items.length > 0 ? byLine : readPieces(text, [{ text, from: 0 }])
}
