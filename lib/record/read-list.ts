import { flaw, type CellProblem, type CellRead } from './cell-read.ts'
import type { FieldName } from './fields.ts'
import { joinList } from './list-cell.ts'
import { readLook } from './look.ts'
import { looks, type Looks } from './looks.ts'
import type { Names } from './names.ts'
import { readChoice } from './read-choice.ts'
import type { Treatment } from './record.ts'
import { readTest } from './tests.ts'
import { readTreatment } from './treatment-text.ts'

/** What people part values with where `;` is the rule. */
export const otherParting = /[,|/\n&+]|\s+and\s+/

/** `washed, brushed` where `;` is the rule: taken apart when that makes at least one of the pieces known. */
function otherwiseListed(field: FieldName, item: string, names: Names): readonly string[] | null {
  if (!otherParting.test(item)) return null
  const pieces = item
    .split(otherParting)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '')
  return pieces.length > 1 && pieces.some((piece) => readChoice(field, piece, names).ok) ? pieces : null
}

export function choices(field: FieldName, items: readonly string[], names: Names): CellRead {
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

export function listed(
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

/** Tests and answers parted by commas come apart only where each piece has its own name. */
function eachNamed(item: string, known: boolean): readonly string[] {
  if (known) return [item]
  const pieces = item.split(/[,\n](?=[^,\n:]*:)/).map((piece) => piece.trim())
  return pieces.filter((piece) => piece !== '')
}

export function tests(items: readonly string[]): CellRead {
  const written = new Set<string>()
  const unread: string[] = []
  const problems: CellProblem[] = []
  for (const item of items.flatMap((one) => eachNamed(one, readTest(one).ok))) {
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

/** Two answers to one question are both kept, and said. */
export function looked(items: readonly string[], known: Looks = looks): CellRead {
  const answers = new Map<string, string>()
  const unread: string[] = []
  const problems: CellProblem[] = []
  for (const item of items.flatMap((one) => eachNamed(one, readLook(one, known).ok))) {
    const read = readLook(item, known)
    if (read.ok) {
      answers.set(read.look.written, read.look.question)
      if (!read.asWritten) problems.push(flaw('look-read', item, read.look.written))
    } else {
      unread.push(item)
      problems.push(flaw(read.code, item, read.suggestion))
    }
  }
  const written = [...answers.keys()]
  for (const group of Map.groupBy(written, (text) => answers.get(text)!).values())
    if (group.length > 1) problems.push(flaw('looks-disagree', group.join('; ')))
  return listed(written, unread, problems)
}

const looseDate = /^\d{4}(?:-\d{2}(?:-\d{2})?)?$/

export function treatments(items: readonly string[]): CellRead {
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
