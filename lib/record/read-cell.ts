import { flaw, refused, type CellRead } from './cell-read.ts'
import { cleanText } from './clean-text.ts'
import { fields, isList, type FieldName } from './fields.ts'
import type { GivenCell } from './given.ts'
import { closest, nameKey } from './likeness.ts'
import { joinList, splitList } from './list-cell.ts'
import type { Names } from './names.ts'
import { readChoice } from './read-choice.ts'
import { readDate, type DayOrder } from './read-date.ts'
import { choices, listed, looked, otherParting, tests, treatments } from './read-list.ts'
import { readNumber } from './read-number.ts'

const sheetError =
  /^#(?:REF!|N\/A|NAME\?|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!|FIELD!|BLOCKED!|UNKNOWN!|GETTING_DATA)$|^#{3,}$/i
/** Of these, `unknown` tells nothing that an empty cell does not. */
const untold: readonly string[] = ['date', 'tests', 'treatments', 'looks']
const blankWord = /^(?:[-–—]+|n\/?a|n\.a\.|nil|null)$/i

function choice(field: FieldName, text: string, names: Names): CellRead {
  const read = readChoice(field, text, names)
  if (read.ok) return { value: read.id, problems: read.guessed ? [flaw('guessed-value', text, read.id)] : [] }
  const pieces = text.split(/;/.test(text) ? ';' : otherParting).map((piece) => piece.trim())
  if (pieces.length > 1 && pieces.every((piece) => readChoice(field, piece, names).ok))
    return refused(text, 'several-values')
  return refused(text, field === 'material' ? 'unknown-material' : 'unknown-value', read.suggestion)
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
  const many = isList(kind)
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
    case 'looks':
      return looked(items)
  }
}
