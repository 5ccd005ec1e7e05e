import { cleanText } from './clean-text.ts'
import { fields, type FieldName } from './fields.ts'
import type { GivenCell } from './given.ts'
import { closest, nameKey } from './likeness.ts'
import { joinList, splitList } from './list-cell.ts'
import type { Names } from './names.ts'
import type { ProblemCode } from './problem.ts'
import { readChoice } from './read-choice.ts'
import { readDate, type DayOrder } from './read-date.ts'
import { readNumber } from './read-number.ts'
import type { Treatment } from './record.ts'
import { readTest } from './tests.ts'
import { readTreatment } from './treatment-text.ts'

export type FieldValue = string | number | readonly string[] | readonly Treatment[]

export interface CellProblem {
  readonly code: ProblemCode
  readonly found: string
  readonly suggestion?: string
}

/** What a cell says: the part that was understood, the part that was not (as written, parted by `;`), and why. */
export interface CellRead {
  readonly value?: FieldValue
  readonly unread?: string
  readonly problems: readonly CellProblem[]
}

const sheetError =
  /^#(?:REF!|N\/A|NAME\?|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!|FIELD!|BLOCKED!|UNKNOWN!|GETTING_DATA)$|^#{3,}$/i
/** Of these, `unknown` tells nothing that an empty cell does not. */
const untold: readonly string[] = ['date', 'tests', 'treatments']
const blankWord = /^(?:[-–—]+|n\/?a|n\.a\.|nil|null)$/i

const flaw = (code: ProblemCode, found: string, suggestion?: string | null): CellProblem => ({
  code,
  found,
  ...(suggestion === undefined || suggestion === null ? {} : { suggestion }),
})

const refused = (found: string, code: ProblemCode, suggestion?: string | null): CellRead => ({
  unread: joinList([found]),
  problems: [flaw(code, found, suggestion)],
})

const otherParting = /[,|/\n&+]|\s+and\s+/

function choice(field: FieldName, text: string, names: Names): CellRead {
  const read = readChoice(field, text, names)
  if (read.ok) return { value: read.id, problems: read.guessed ? [flaw('guessed-value', text, read.id)] : [] }
  const pieces = text.split(/;/.test(text) ? ';' : otherParting).map((piece) => piece.trim())
  if (pieces.length > 1 && pieces.every((piece) => readChoice(field, piece, names).ok))
    return refused(text, 'several-values')
  return refused(text, field === 'material' ? 'unknown-material' : 'unknown-value', read.suggestion)
}

/** `washed, brushed` where `;` is the rule: taken apart when that makes at least one of the pieces known. */
function otherwiseListed(field: FieldName, item: string, names: Names): readonly string[] | null {
  if (!otherParting.test(item)) return null
  const pieces = item
    .split(otherParting)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '')
  return pieces.length > 1 && pieces.some((piece) => readChoice(field, piece, names).ok) ? pieces : null
}

function choices(field: FieldName, items: readonly string[], names: Names): CellRead {
  const values = new Set<string>()
  const unread: string[] = []
  const problems: CellProblem[] = []
  const take = (text: string) => {
    const read = readChoice(field, text, names)
    if (!read.ok) {
      unread.push(text)
      problems.push(flaw('unknown-value', text, read.suggestion))
    } else {
      values.add(read.id)
      if (read.guessed) problems.push(flaw('guessed-value', text, read.id))
    }
  }
  for (const item of items) {
    const pieces = readChoice(field, item, names).ok ? null : otherwiseListed(field, item, names)
    if (pieces) problems.push(flaw('listed-otherwise', item, pieces.join(';')))
    for (const piece of pieces ?? [item]) take(piece)
  }
  return listed([...values], unread, problems)
}

function listed(
  value: readonly string[] | readonly Treatment[],
  unread: readonly string[],
  problems: readonly CellProblem[],
): CellRead {
  return {
    ...(value.length === 0 ? {} : { value }),
    ...(unread.length === 0 ? {} : { unread: joinList(unread) }),
    problems,
  }
}

/** Tests parted by commas come apart only where each piece has its own name. */
function eachTest(item: string): readonly string[] {
  if (readTest(item).ok) return [item]
  const pieces = item.split(/[,\n](?=[^,\n:]*:)/).map((piece) => piece.trim())
  return pieces.filter((piece) => piece !== '')
}

function tests(items: readonly string[]): CellRead {
  const written = new Set<string>()
  const unread: string[] = []
  const problems: CellProblem[] = []
  for (const item of items.flatMap(eachTest)) {
    const read = readTest(item)
    if (read.ok) {
      written.add(read.test.written)
      if (!read.asWritten) problems.push(flaw('test-read', item, read.test.written))
    } else {
      unread.push(item)
      problems.push(flaw(read.code, item, read.suggestion))
    }
  }
  return listed([...written], unread, problems)
}

const looseDate = /^\d{4}(?:-\d{2}(?:-\d{2})?)?$/

function treatments(items: readonly string[]): CellRead {
  const read: Treatment[] = []
  const unread: string[] = []
  const problems: CellProblem[] = []
  for (const item of items) {
    const treatment = readTreatment(item)
    if (!treatment) {
      unread.push(item)
      problems.push(flaw('unreadable-treatment', item))
      continue
    }
    read.push(treatment)
    if (treatment.on !== undefined && !looseDate.test(treatment.on))
      problems.push(flaw('not-a-date', treatment.on))
  }
  return listed(read, unread, problems)
}

/** An open list keeps other words as they are, but a slip of a listed one is pointed out. */
function openChoice(field: FieldName, text: string, names: Names): CellRead {
  const read = readChoice(field, text, names)
  if (read.ok) return { value: read.id, problems: read.guessed ? [flaw('guessed-value', text, read.id)] : [] }
  const entry = fields[field]
  const ids: readonly string[] = 'ids' in entry ? entry.ids : []
  const near = closest(
    nameKey(text),
    ids.map((key) => ({ key })),
  )
  return { value: text, problems: near ? [flaw('near-known-kind', text, near.key)] : [] }
}

function number(field: FieldName, text: string, names: Names): CellRead {
  const told = readChoice(field, text, names)
  if (told.ok)
    return { value: 'unknown', problems: told.guessed ? [flaw('guessed-value', text, 'unknown')] : [] }
  const read = readNumber(field, text)
  if (!read.ok) return refused(text, read.code, read.suggestion)
  return {
    value: read.value,
    problems: read.asWritten ? [] : [flaw('number-read', text, String(read.value))],
  }
}

function date(text: string, order: DayOrder): CellRead {
  const read = readDate(text, order)
  if (!read.ok) return refused(text, read.code, read.suggestion)
  return { value: read.date, problems: read.asWritten ? [] : [flaw('date-read', text, read.date)] }
}

/** Reads one cell by the kind of its field. Nothing is dropped: what is not understood comes back in `unread`. */
export function readCell(field: FieldName, cell: GivenCell, names: Names, order: DayOrder): CellRead {
  const kind = fields[field].kind
  const many = kind === 'choices' || kind === 'texts' || kind === 'tests' || kind === 'treatments'
  const given = (typeof cell.value === 'string' ? [cell.value] : cell.value)
    .map(cleanText)
    .filter((text) => text !== '')
  if (given.length === 0) return { problems: [] }
  const items = many && typeof cell.value === 'string' ? splitList(given[0]!) : given
  const text = items[0] ?? ''
  if (kind === 'text' && items.length > 1 && field !== 'find_number' && field !== 'component') {
    return {
      value: items.join('; '),
      problems: [flaw('listed-otherwise', items.join(' | '), items.join('; '))],
    }
  }
  if (!many && items.length > 1)
    return { unread: joinList([joinList(items)]), problems: [flaw('several-values', joinList(items))] }
  if (items.length === 1) {
    if (sheetError.test(text)) return refused(text, 'spreadsheet-error')
    if (cell.formula && kind !== 'text') return refused(text, 'formula')
    if (kind !== 'text' && kind !== 'texts' && blankWord.test(text)) return refused(text, 'blank-word')
    if (untold.includes(kind) && readChoice(field, text, names).ok) return refused(text, 'blank-word')
  }
  switch (kind) {
    case 'text':
      return { value: text, problems: cell.formula ? [flaw('formula', text)] : [] }
    case 'texts':
      return listed([...new Set(items)], [], [])
    case 'choice':
      return choice(field, text, names)
    case 'choices':
      return choices(field, items, names)
    case 'open-choice':
      return openChoice(field, text, names)
    case 'number':
    case 'whole':
      return number(field, text, names)
    case 'date':
      return date(text, order)
    case 'tests':
      return tests(items)
    case 'treatments':
      return treatments(items)
  }
}
