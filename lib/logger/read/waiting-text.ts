import type { ProblemBook } from './problem-book.ts'

/** Lines of text since the last reading: what they are shows only by what comes after them. */
export interface WaitingText {
  readonly add: (line: number, text: string) => void
  /** A heading known already stood among them. */
  readonly sawHeading: (line: number, text: string) => void
  /** The last thing was a heading: units may follow it. */
  readonly hasHeading: () => boolean
  readonly beforeReading: () => void
  /** A new table begins: what stands above it is its own heading. */
  readonly newTable: () => void
  readonly atEnd: () => void
}

const comment = /^\s*(?:#|\/\/|;;|%|')/

/**
 * Text above the first reading is the file's own heading and no problem; between readings it was not read, unless it led up
 * to the headings told once more; behind the last reading it is a footer.
 */
export function openWaitingText(book: ProblemBook): WaitingText {
  let first: { readonly line: number; readonly text: string } | null = null
  let count = 0
  let heading: { readonly line: number; readonly text: string } | null = null
  let readBefore = false
  const clear = () => {
    first = null
    heading = null
    count = 0
  }
  return {
    add(line, text) {
      if (readBefore && comment.test(text)) {
        book.note('comment-lines', line, text)
        return
      }
      first ??= { line, text }
      count++
    },
    sawHeading(line, text) {
      heading ??= { line, text }
    },
    hasHeading: () => heading !== null,
    beforeReading() {
      if (readBefore) {
        if (heading) book.note('heading-repeated', heading.line, heading.text)
        else if (first) book.note('line-not-read', first.line, first.text, null, count)
      }
      readBefore = true
      clear()
    },
    newTable: clear,
    atEnd() {
      if (heading) book.note('heading-repeated', heading.line, heading.text)
      else if (first && readBefore) book.note('footer-lines', first.line, first.text, null, count)
      clear()
    },
  }
}
