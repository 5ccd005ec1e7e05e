import { takeLine } from './careful-line.ts'
import type { TextLine } from './delimiter.ts'
import type { Layout } from './layout.ts'
import { plainText } from './plain-text.ts'
import { isSurvey, surveyLines } from './survey.ts'
import { noTemplates, openTable, type Table } from './tables.ts'
import type { LineGiven, WalkState } from './walk-state.ts'

/** So many lines below new headings tell how they are written. */
const enough = 24
/** A file of more tables than this is not surveyed further; their lines are told as not read. */
const mostTables = 60

export const isEnough = (lines: readonly TextLine[]): boolean => lines.length > enough

const holds = (layout: Layout) =>
  layout.values
    .map(({ quantity, channel }) => `${channel}\u0000${quantity}`)
    .toSorted()
    .join('\u0001')

function surveyed(state: WalkState, lines: readonly TextLine[]): Table | null {
  const heading = lines[0]!
  const known = state.byHeading.get(heading.text)
  if (known) return known
  if (state.tables.length >= mostTables) return null
  state.steps += lines.length
  const plain = lines.map(({ line, text }) => ({ line, text: plainText(text).text }))
  const found = surveyLines(plain, { ...state.answers, columns: null })
  if (!isSurvey(found) || found.question || found.layout.headingLine !== heading.line) return null
  const table = openTable(found.layout)
  state.tables.push(table)
  state.byHeading.set(heading.text, table)
  return table
}

/** New headings and the lines below them: read as they say, or, where that leads to nothing, as the table before. */
export function finishCollecting(state: WalkState): void {
  const lines = state.collecting!
  state.collecting = null
  const [heading, ...below] = lines
  const table = surveyed(state, lines)
  if (!table) {
    state.waiting.add(heading!.line, heading!.text)
  } else if (table !== state.table) {
    const moved = holds(table.layout) === holds(state.table.layout)
    state.waiting.newTable()
    state.book.note(moved ? 'columns-changed' : 'second-table', heading!.line, heading!.text)
    state.table = table
    state.templates = noTemplates()
  }
  for (const given of below) {
    // A line below may be a heading itself: it takes the rest of the lines with it.
    const again = state.collecting as LineGiven[] | null
    if (again) again.push(given)
    else takeLine(state, given)
  }
}
