import { isMap, isPair, isScalar, LineCounter, parseDocument, type Document } from 'yaml'
import type { Flaw } from '../flaw.ts'

/** One content file as text; `file` is its path from the project's folder. */
export interface SourceFile {
  readonly file: string
  readonly text: string
}

export type Path = readonly (string | number)[]

/** A content file read as YAML: plain data, and the line on which each part of it stands. */
export interface ContentDocument {
  readonly file: string
  readonly data: unknown
  /** The line of what stands at `path`, or of the nearest thing around it. */
  readonly line: (path: Path) => number
}

export function readDocument(source: SourceFile): {
  readonly document: ContentDocument
  readonly flaws: readonly Flaw[]
} {
  const lines = new LineCounter()
  const parsed = parseDocument(source.text, { lineCounter: lines, prettyErrors: false })
  const flaws = [...parsed.errors, ...parsed.warnings].map((error): Flaw => ({
    code: 'unreadable',
    severity: 'error',
    file: source.file,
    line: lines.linePos(error.pos[0]).line,
    about: { says: error.message },
  }))
  const data: unknown = parsed.errors.length > 0 ? null : parsed.toJS({ maxAliasCount: 100 })
  return { document: { file: source.file, data, line: (path) => lineAt(parsed, lines, path) }, flaws }
}

function lineAt(parsed: Document.Parsed, lines: LineCounter, path: Path): number {
  for (let length = path.length; length >= 0; length--) {
    const offset = offsetAt(parsed, path.slice(0, length))
    if (offset !== null) return lines.linePos(offset).line
  }
  return 1
}

/** Where the key stands rather than its value, so that a folded sentence is found at the line that names it. */
function offsetAt(parsed: Document.Parsed, path: Path): number | null {
  if (path.length === 0) return startOf(parsed.contents)
  const within = path.length === 1 ? parsed.contents : parsed.getIn(path.slice(0, -1), true)
  const last = path[path.length - 1]
  if (isMap(within)) {
    const pair = within.items.find((item) => isPair(item) && isScalar(item.key) && item.key.value === last)
    return pair === undefined ? null : startOf(pair.key)
  }
  return startOf(parsed.getIn(path, true))
}

function startOf(node: unknown): number | null {
  const range = (node as { readonly range?: readonly number[] | null } | null)?.range
  return range?.[0] ?? null
}
