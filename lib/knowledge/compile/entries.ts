import type { z } from 'zod'
import type { Flaw, FlawAbout, FlawCode, Place, Severity } from '../flaw.ts'
import type { ContentDocument, Path } from './document.ts'
import { nearest } from './nearest.ts'

/** One thing written in the content, with the way back to the line it stands on. */
export interface Entry<Written> {
  readonly written: Written
  readonly place: (...path: Path) => Place
}

/** Collects flaws; every step of the compiler is handed the same one. */
export interface Report {
  readonly add: <Code extends FlawCode>(
    code: Code,
    place: Place,
    about: FlawAbout[Code],
    severity?: Severity,
  ) => void
  readonly flaws: Flaw[]
}

export function newReport(): Report {
  const flaws: Flaw[] = []
  return {
    flaws,
    add: (code, place, about, severity = 'error') =>
      void flaws.push({ code, severity, ...place, about } as Flaw),
  }
}

/** The value at `path` in the written form, or null where it is not what was expected; then the report says why. */
export function shaped<Shape extends z.ZodType>(
  document: ContentDocument,
  path: Path,
  raw: unknown,
  shape: Shape,
  report: Report,
): Entry<z.infer<Shape>> | null {
  const place = (...further: Path): Place => ({
    file: document.file,
    line: document.line([...path, ...further]),
  })
  const read = shape.safeParse(raw)
  if (read.success) return { written: read.data, place }
  for (const issue of read.error.issues) reportIssue(issue, raw, place, shape, report)
  return null
}

/** Each entry stands or falls by itself, so that one slip does not hide the rest. */
export function shapedEach<Shape extends z.ZodType>(
  document: ContentDocument,
  path: Path,
  list: readonly unknown[],
  shape: Shape,
  report: Report,
): Entry<z.infer<Shape>>[] {
  return list.flatMap((raw, index) => shaped(document, [...path, index], raw, shape, report) ?? [])
}

/** A file that is one list. */
export function shapedList<Shape extends z.ZodType>(
  document: ContentDocument,
  shape: Shape,
  report: Report,
): Entry<z.infer<Shape>>[] {
  if (document.data === null || document.data === undefined) return []
  if (!Array.isArray(document.data)) {
    const place = { file: document.file, line: document.line([]) }
    report.add('wrong-form', place, {
      key: document.file,
      expected: 'a list of entries',
      found: kindOf(document.data),
    })
    return []
  }
  return shapedEach(document, [], document.data, shape, report)
}

function reportIssue(
  issue: z.core.$ZodIssue,
  raw: unknown,
  place: (...path: Path) => Place,
  shape: z.ZodType,
  report: Report,
): void {
  const path = issue.path.filter((step) => typeof step !== 'symbol')
  const key = path.join('.')
  if (issue.code === 'unrecognized_keys') {
    const allowed = keysAt(shape, path)
    for (const extra of issue.keys) {
      report.add('unknown-key', place(...path, extra), {
        key: [...path, extra].join('.'),
        near: nearest(extra, allowed),
      })
    }
    return
  }
  const found = valueAt(raw, path)
  if (found === undefined) report.add('missing-key', place(...path), { key, expected: expectedBy(issue) })
  else report.add('wrong-form', place(...path), { key, expected: expectedBy(issue), found: kindOf(found) })
}

function expectedBy(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.expected
    case 'invalid_value':
      return issue.values.map(String).join(' | ')
    case 'invalid_union':
      return '[values], { none: [values] } or { from|above, to|below: figure ids }'
    case 'invalid_format':
      return issue.message.replace(/^Invalid string: /, '')
    case 'too_small':
      return 'something in it'
    default:
      return issue.message
  }
}

function valueAt(raw: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (at, step) => (at === null || at === undefined ? undefined : Reflect.get(Object(at), step)),
    raw,
  )
}

/** The keys that the shape allows at `path`, for the suggestion; none where the path leads through a union. */
function keysAt(shape: z.ZodType, path: Path): string[] {
  let at: unknown = shape
  for (const step of path) {
    at = unwrapped(at)
    const inner = at as { readonly shape?: Record<string, unknown>; readonly element?: unknown }
    at = typeof step === 'number' ? inner.element : inner.shape?.[step]
  }
  return Object.keys((unwrapped(at) as { readonly shape?: object } | undefined)?.shape ?? {})
}

function unwrapped(shape: unknown): unknown {
  let at = shape as { readonly def?: { readonly innerType?: unknown } } | undefined
  while (at?.def?.innerType !== undefined) at = at.def.innerType as typeof at
  return at
}

/** What was written, short enough for a line. */
export function kindOf(value: unknown): string {
  if (value === null) return 'nothing'
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : 'a list'
  if (typeof value === 'object') return `{ ${Object.keys(value).join(', ')} }`
  const text = String(value)
  return text.length > 40 ? `${text.slice(0, 40)}…` : text
}
