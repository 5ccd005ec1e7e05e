import { longestLine } from './byte-lines.ts'
import { takeLine } from './careful-line.ts'
import { readFast, type LineTemplate } from './fast-line.ts'
import { nextDay } from './next-day.ts'
import { finishCollecting, isEnough } from './second-table.ts'
import { makeRoom, nextIs } from './store.ts'
import type { Templates } from './tables.ts'
import type { WalkState } from './walk-state.ts'

const lineFeed = 10
const carriageReturn = 13
const asLetters = new TextDecoder('latin1')

/** One try with one template; returns where it stopped. */
function tryTemplate(
  state: WalkState,
  template: LineTemplate,
  bytes: Uint8Array,
  view: DataView,
  at: number,
  to: number,
): number {
  const { store } = template
  state.steps++
  makeRoom(store)
  const before = store.count
  const stop = readFast(bytes, view, at, to, template)
  const read = store.count - before
  if (read === 0) return at
  store.count = before
  nextIs(store, state.line + 1, template.offsetMinutes, template.dateForm)
  store.count = before + read
  state.line += read
  state.quickLines += read
  state.waiting.beforeReading()
  state.templates.idle = 0
  state.templates.wait = 0
  return stop
}

/** Sensors that take turns need as many templates: the one that came next the last time is tried first. */
function readQuickly(state: WalkState, bytes: Uint8Array, view: DataView, at: number, to: number): number {
  const { templates } = state
  const { list, after, current } = templates
  if (current === -1) return at
  const stop = tryTemplate(state, list[current]!, bytes, view, at, to)
  if (stop > at) return stop
  const dated = nextDay(list[current]!, bytes, at, state.order)
  if (dated) {
    list[current] = dated
    const next = tryTemplate(state, dated, bytes, view, at, to)
    if (next > at) return next
  }
  const expected = after[current]!
  if (expected !== -1) {
    const next = tryTemplate(state, list[expected]!, bytes, view, at, to)
    if (next > at) return switchTo(templates, expected, next)
  }
  for (let other = list.length - 1; other >= 0; other--) {
    if (other === current || other === expected) continue
    const next = tryTemplate(state, list[other]!, bytes, view, at, to)
    if (next > at) return switchTo(templates, other, next)
  }
  return at
}

function switchTo(templates: Templates, to: number, stop: number): number {
  templates.after[templates.current] = to
  templates.current = to
  return stop
}

function carefully(state: WalkState, bytes: Uint8Array, from: number, end: number, isLast: boolean): void {
  state.steps++
  const to = end > from && bytes[end - 1] === carriageReturn ? end - 1 : end
  if (to - from > longestLine) {
    state.line++
    const beginning = state.decoder.decode(bytes, from, from + 200)
    state.book.note('line-too-long', state.line, beginning)
    return
  }
  const text = state.decoder.decode(bytes, from, to)
  if (text.includes('\u0000'))
    state.book.note('zero-bytes', state.line + 1, text.replaceAll('\u0000', '').trim())
  if (text.includes('\ufffd')) state.book.note('undecodable-text', state.line + 1, text)
  const parts = text.split('\r')
  if (parts.length > 1) state.book.note('lone-carriage-returns', state.line + 1, parts[0]!)
  for (const [at, part] of parts.entries()) {
    state.line++
    const whole = parts.length === 1 && !part.includes('\u0000') && !part.includes('\ufffd')
    // The mark of byte order is no letter of the first cell.
    const given = {
      line: state.line,
      text: state.line === 1 ? part.replace(/^\ufeff/, '') : part,
      bytes: whole ? asLetters.decode(bytes.subarray(from, to)) : null,
      isLast: isLast && at === parts.length - 1,
    }
    if (state.collecting) state.collecting.push(given)
    else takeLine(state, given)
    if (state.collecting && isEnough(state.collecting)) finishCollecting(state)
  }
}

/** Reads whole lines; `to` lies right behind a line feed. */
export function walkLines(state: WalkState, bytes: Uint8Array, from: number, to: number): void {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  let at = from
  while (at < to) {
    if (state.quick && !state.collecting) {
      const stop = readQuickly(state, bytes, view, at, to)
      if (stop > at) {
        at = stop
        continue
      }
    }
    const end = bytes.indexOf(lineFeed, at)
    carefully(state, bytes, at, end, false)
    at = end + 1
  }
}

/** What stands behind the last line feed. */
export function walkRest(state: WalkState, bytes: Uint8Array): void {
  carefully(state, bytes, 0, bytes.length, true)
}

export function walkEnd(state: WalkState): void {
  // Lines that were collected may hold further headings.
  while (state.collecting) finishCollecting(state)
  state.waiting.atEnd()
}
