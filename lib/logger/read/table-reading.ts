import { orderPresumed } from './date-order.ts'
import { openLineDecoder, type LineDecoder } from './encoding.ts'
import { textKind } from './file-kind.ts'
import { headLines, type HeadLine } from './head-lines.ts'
import type { LogAnswers } from './log-answers.ts'
import type { LogDelimiter } from './log-form.ts'
import type { ProblemBook } from './problem-book.ts'
import { isSurvey, surveyLines, type Survey } from './survey.ts'
import type { NoTable } from './survey-failure.ts'
import { noTemplates, openTable } from './tables.ts'
import { openWaitingText } from './waiting-text.ts'
import { walkEnd, walkLines, walkRest } from './walk.ts'
import type { WalkState } from './walk-state.ts'

/** As much of a file as tells what it is. */
export const headBytes = 256 * 1024

export interface ReadingOptions {
  /** Size of the file, where it is known. */
  readonly bytes?: number | undefined
  /** False: every line is read with care, as a check on the quick reading. */
  readonly quick?: boolean
  readonly only?: readonly LogDelimiter[]
}

export interface Walked {
  readonly book: ProblemBook
  readonly lines: number
  readonly outcome: { readonly survey: Survey; readonly state: WalkState } | NoTable
}

export interface TableReading {
  readonly wide: (encoding: 'utf-16le' | 'utf-16be' | null) => void
  readonly lines: (bytes: Uint8Array, from: number, to: number) => void
  readonly rest: (bytes: Uint8Array) => void
  readonly tooLong: (beginning: Uint8Array) => void
  readonly end: () => Walked
}

/** A table that does not begin within so many parts of that size is not looked for any further. */
const mostSurveys = 64

/** Line feeds, and carriage returns that stand alone. */
function linesIn(bytes: Uint8Array): number {
  let lines = 0
  for (let at = 0; at < bytes.length; at++) {
    if (bytes[at] === 10 || (bytes[at] === 13 && bytes[at + 1] !== 10)) lines++
  }
  return lines
}

interface Gathered {
  readonly bytes: Uint8Array
  readonly length: number
}

function added(to: Gathered, bytes: Uint8Array): Gathered {
  const length = to.length + bytes.length
  const whole = length <= to.bytes.length ? to.bytes : new Uint8Array(Math.max(length, to.bytes.length * 2))
  if (whole !== to.bytes) whole.set(to.bytes.subarray(0, to.length))
  whole.set(bytes, to.length)
  return { bytes: whole, length }
}

/** How many readings the file may hold at most, from the length of the lines surveyed. */
function capacityOf(survey: Survey, bytes: number | undefined): number {
  if (bytes === undefined) return 4096
  const lengths = survey.rows.map(({ text }) => text.length + 1)
  const mean = lengths.reduce((sum, length) => sum + length, 0) / lengths.length
  return Math.ceil((bytes / mean) * 1.06) + 64
}

function startWalk(
  survey: Survey,
  lines: readonly HeadLine[],
  decoder: LineDecoder,
  book: ProblemBook,
  answers: LogAnswers,
  options: ReadingOptions,
): WalkState {
  const table = openTable(survey.layout)
  const heading = lines.find(({ line }) => line === survey.layout.headingLine)
  for (const { code, line, found, column } of survey.remarks) book.note(code, line, found, column)
  return {
    book,
    answers,
    decoder,
    waiting: openWaitingText(book),
    order: orderPresumed(answers.dateOrder ?? 'day-first'),
    twelveHours: survey.twelveHours,
    capacity: capacityOf(survey, options.bytes),
    table,
    tables: [table],
    byHeading: new Map(heading ? [[heading.raw, table]] : []),
    collecting: null,
    templates: noTemplates(),
    line: 0,
    unreadable: 0,
    quick: options.quick !== false,
    quickLines: 0,
    steps: 0,
  }
}

/** Whole lines: surveyed until a table is found, then walked. */
export function openTableReading(
  answers: LogAnswers,
  options: ReadingOptions,
  book: ProblemBook,
): TableReading {
  let decoder = openLineDecoder(null)
  let gathered: Gathered = { bytes: new Uint8Array(), length: 0 }
  let firstLine = 1
  let walk: { readonly survey: Survey; readonly state: WalkState } | null = null
  let failure: NoTable | null = null
  let surveys = 0

  function survey(): void {
    const head = gathered.bytes.subarray(0, gathered.length)
    const lines = headLines(head, firstLine, decoder)
    const beginning = lines.slice(0, 5).map(({ text }) => text)
    const kind = firstLine === 1 ? textKind(beginning.join('\n')) : null
    const refused = kind && { failure: kind, line: 1, found: beginning[0] ?? '' }
    // Lines of readings may begin with a bracket.
    const surveyed = kind === null || kind === 'json-file' ? surveyLines(lines, answers, options.only) : null
    const found = surveyed && isSurvey(surveyed) ? surveyed : (refused ?? surveyed!)
    gathered = { bytes: new Uint8Array(), length: 0 }
    surveys++
    if (!isSurvey(found)) {
      failure ??= found
      firstLine += linesIn(head)
      return
    }
    const state = startWalk(found, lines, decoder, book, answers, options)
    walk = { survey: found, state }
    const first = found.firstLine
    const begins = lines.find(({ line }) => line >= first)!.from
    const at = lines.findIndex(({ from }) => from === begins)
    state.line = lines[at]!.line - 1
    for (const { line, raw } of lines.slice(0, at)) {
      if (raw.includes('\ufffd')) book.note('undecodable-text', line, raw)
    }
    const end = head.lastIndexOf(10) + 1
    const from = lines[at]!.from
    if (end > from) walkLines(state, head, from, end)
    if (head.length > Math.max(end, from)) walkRest(state, head.subarray(Math.max(end, from)))
  }
  return {
    wide(encoding) {
      decoder = openLineDecoder(encoding)
    },
    lines(bytes, from, to) {
      if (walk) return walkLines(walk.state, bytes, from, to)
      if (surveys >= mostSurveys) return
      let at = from
      // What is gathered stays near its size, however much of the file comes at once.
      while (at < to && !walk) {
        const limit = at + headBytes
        const end = limit >= to ? to : bytes.indexOf(10, limit) + 1
        gathered = added(gathered, bytes.subarray(at, end))
        at = end
        if (gathered.length >= headBytes) survey()
      }
      const later = walk as { readonly state: WalkState } | null
      if (later && at < to) walkLines(later.state, bytes, at, to)
    },
    rest(bytes) {
      if (walk) return walkRest(walk.state, bytes)
      gathered = added(gathered, bytes)
    },
    tooLong(beginning) {
      const found = decoder.decode(beginning, 0, 200)
      if (walk) {
        walk.state.line++
        book.note('line-too-long', walk.state.line, found)
        return
      }
      const line = firstLine + linesIn(gathered.bytes.subarray(0, gathered.length))
      book.note('line-too-long', line, found)
      gathered = added(gathered, Uint8Array.of(10))
    },
    end() {
      if (!walk) survey()
      if (!walk) return { book, lines: firstLine - 1, outcome: failure! }
      walkEnd(walk.state)
      return { book, lines: walk.state.line, outcome: walk }
    },
  }
}
