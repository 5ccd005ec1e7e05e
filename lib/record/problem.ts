/**
 * What is wrong with what a person gave us, as data: where it stands, what was found, what may have been meant. The
 * sentences are made in lib/wording/problems.ts.
 */
export type Severity =
  | 'unreadable' // a row (or the file) that gives no record
  | 'problem' // something was not understood; the rest is read
  | 'note' // it was read, and this is how

const severities = {
  // the file
  'empty-file': 'unreadable',
  'header-only': 'unreadable',
  'not-a-table': 'unreadable',
  'unsafe-workbook': 'unreadable',
  'broken-workbook': 'unreadable',
  'workbook-too-slow': 'unreadable',
  'no-find-number-column': 'unreadable',
  'not-of-the-store': 'unreadable',
  'read-in-old-encoding': 'note',
  'undecodable-text': 'problem',
  'rows-above-heading': 'note',
  'other-sheet': 'note',
  'other-find-sheet': 'problem',
  'duplicate-heading': 'problem',
  'guessed-heading': 'problem',
  'unknown-column': 'note',
  'unbalanced-quote': 'problem',
  'stray-quote': 'note',
  'too-many-cells': 'problem',
  'broken-json': 'unreadable',
  'not-an-object': 'unreadable',
  // the row
  'no-find-number': 'unreadable',
  'no-component': 'unreadable',
  'no-place-name': 'unreadable',
  'no-day': 'unreadable',
  'cell-needed': 'unreadable',
  'unlisted-find': 'unreadable',
  'unlisted-box': 'problem',
  'place-repeated': 'problem',
  'stands-overlap': 'problem',
  'no-material': 'problem',
  'unknown-material': 'problem',
  'material-not-told': 'note',
  'component-renamed': 'problem',
  'repeated-row': 'note',
  contradiction: 'problem',
  'core-disagrees': 'problem',
  // the cell
  'unknown-value': 'problem',
  'several-values': 'problem',
  'listed-otherwise': 'note',
  'guessed-value': 'note',
  'near-known-kind': 'note',
  'blank-word': 'note',
  formula: 'problem',
  'spreadsheet-error': 'problem',
  'not-a-number': 'problem',
  'not-whole': 'problem',
  'out-of-range': 'problem',
  'ends-swapped': 'problem',
  'wrong-unit': 'problem',
  'ambiguous-number': 'problem',
  'number-read': 'note',
  'not-a-date': 'problem',
  'ambiguous-date': 'problem',
  'date-read': 'note',
  'not-text': 'note',
  'unknown-test': 'problem',
  'unknown-test-result': 'problem',
  'test-read': 'note',
  'tests-disagree': 'problem',
  'no-such-part': 'problem',
  'unknown-look': 'problem',
  'unknown-look-answer': 'problem',
  'look-read': 'note',
  'looks-disagree': 'problem',
  'unreadable-treatment': 'problem',
} as const satisfies Record<string, Severity>

export type ProblemCode = keyof typeof severities

export interface Where {
  /** As a spreadsheet shows it, from 1; for JSON the how-manieth object. Null: the whole file. */
  readonly row: number | null
  /** Line of the file, where the row is not a line of a table. */
  readonly line?: number
  /** Of a workbook of which several sheets are read. */
  readonly sheet?: string
  /** The heading as it stands in the file. */
  readonly column?: string | null
  readonly field?: string | null
  readonly find?: string
}

export interface Problem {
  readonly code: ProblemCode
  readonly severity: Severity
  readonly row: number | null
  readonly line?: number
  readonly sheet?: string
  readonly column: string | null
  readonly field: string | null
  readonly found: string
  /** What was probably meant, or what it was read as. */
  readonly suggestion?: string
  readonly find?: string
}

export function problem(code: ProblemCode, where: Where, found: string, suggestion?: string): Problem {
  return {
    code,
    severity: severities[code],
    row: where.row,
    ...(where.line === undefined ? {} : { line: where.line }),
    ...(where.sheet === undefined ? {} : { sheet: where.sheet }),
    column: where.column ?? null,
    field: where.field ?? null,
    found,
    ...(suggestion === undefined ? {} : { suggestion }),
    ...(where.find === undefined ? {} : { find: where.find }),
  }
}

/** By place in the file; what concerns the whole file first. */
export function inFileOrder(problems: readonly Problem[]): readonly Problem[] {
  return problems.toSorted((a, b) => (a.row ?? 0) - (b.row ?? 0))
}
