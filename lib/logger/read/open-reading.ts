import type { LogProblemCode } from '../log-problem.ts'
import { openByteFeed } from './byte-lines.ts'
import { lookAt, narrowed } from './encoding.ts'
import { fileKind } from './file-kind.ts'
import type { LogAnswers } from './log-answers.ts'
import { openProblemBook } from './problem-book.ts'
import { headBytes, openTableReading, type ReadingOptions, type Walked } from './table-reading.ts'

export interface OpenReading {
  readonly feed: (piece: Uint8Array) => void
  readonly end: () => Walked
}

const joined = (pieces: readonly Uint8Array[]): Uint8Array => {
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const piece of pieces) {
    whole.set(piece, at)
    at += piece.length
  }
  return whole
}

const withoutLineFeeds = (bytes: Uint8Array) =>
  !bytes.includes(10) && bytes.indexOf(13) !== -1 && bytes.indexOf(13) !== bytes.length - 1

/** Reads a file as it comes, piece by piece: its beginning is surveyed, then every line is read as the survey says. */
export function openReading(answers: LogAnswers, options: ReadingOptions): OpenReading {
  const book = openProblemBook()
  let first: Uint8Array[] | null = []
  let held = 0
  let narrow: ((piece: Uint8Array | null) => Uint8Array) | null = null
  let asLines: boolean | null = null
  let refused: LogProblemCode | null = null
  const table = openTableReading(answers, options, book)

  const feed = openByteFeed({
    lines: (bytes, from, to) => table.lines(bytes, from, to),
    rest: (bytes) => table.rest(bytes),
    tooLong: (beginning) => table.tooLong(beginning),
  })

  function pipe(piece: Uint8Array) {
    const bytes = narrow ? narrow(piece) : piece
    if (bytes.length === 0) return
    asLines ??= !withoutLineFeeds(bytes)
    feed.feed(asLines ? bytes : bytes.map((byte) => (byte === 13 ? 10 : byte)))
  }
  function decide() {
    const head = joined(first!)
    first = null
    refused = fileKind(head)
    const look = lookAt(head)
    if (refused === null && look.binary) refused = 'binary-file'
    if (refused) return
    if (look.wide) {
      narrow = narrowed(look.wide)
      if (look.mark === 0) book.note('utf-16-without-mark', null, look.wide)
    }
    table.wide(look.wide)
    pipe(head.subarray(look.mark))
  }
  return {
    feed(given) {
      if (refused) return
      // Where pieces are buffers of Node, a slice of them would be no copy.
      const piece = new Uint8Array(given.buffer, given.byteOffset, given.byteLength)
      let rest = piece
      if (first) {
        const taken = piece.subarray(0, Math.max(0, headBytes - held))
        first.push(taken.slice())
        held += taken.length
        rest = piece.subarray(taken.length)
        if (held < headBytes) return
        decide()
      }
      if (!refused && rest.length > 0) pipe(rest)
    },
    end() {
      if (first) decide()
      if (refused) return { book, lines: 0, outcome: { failure: refused, line: null, found: '' } }
      const last = narrow?.(null)
      if (last && last.length > 0) feed.feed(last)
      feed.end()
      if (asLines === false) book.note('lone-carriage-returns', 1, '')
      return table.end()
    },
  }
}
