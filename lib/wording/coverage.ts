import type { Counted, Coverage } from '../analysis/coverage.ts'
import { knowns } from '../knowledge/known.ts'
import { knownWords } from './marks.ts'

/** The counts as a table, a decision a line. */
export function coverageText(coverage: Coverage): string {
  const marks = knowns.map((known) => knownWords[known].label)
  const whole = [
    ['', 'all', ...marks],
    counted('works', coverage.works),
    counted('figures', coverage.figures),
    counted('rules', coverage.rules),
    counted('grades', coverage.grades),
    counted('odds', coverage.odds),
  ]
  const decisions = [
    [
      'decision',
      'rules',
      ...marks,
      'must',
      'should',
      'consider',
      'figures',
      'works',
      'contested',
      'not covered',
    ],
    ...coverage.decisions.map((one) => [
      ...counted(one.decision, one),
      ...[one.strength.must, one.strength.should, one.strength.consider].map(String),
      ...[one.figures, one.works, one.contested, one.notCovered].map(String),
    ]),
  ]
  const how =
    'A rule counts by the best of the sources that support it, a grade by those of its state; which word fits them is ours.'
  const tables = [whole, decisions, ...(coverage.matters.length === 0 ? [] : [mattersTable(coverage, marks)])]
  return `Knowledge ${coverage.knowledge}\n\n${tables.map(columns).join('\n\n')}\n\n${how}\n`
}

function mattersTable({ matters }: Coverage, marks: readonly string[]): string[][] {
  return [
    ['matter', 'grades', ...marks, 'rivals', 'groups', 'states', 'failures', 'works', 'contested'],
    ...matters.map((one) => [
      ...counted(one.matter, one),
      ...[one.rivals, one.groups, one.states, one.failures, one.works].map(String),
      one.contested ? 'yes' : '',
    ]),
  ]
}

function counted(name: string, { count, known }: Counted): string[] {
  return [name, String(count), ...knowns.map((one) => String(known[one]))]
}

/** The first column to the left, numbers to the right. */
function columns(rows: readonly (readonly string[])[]): string {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)))
  return rows
    .map((row) =>
      row
        .map((cell, at) => (at === 0 ? cell.padEnd(widths[at]!) : cell.padStart(widths[at]!)))
        .join('  ')
        .trimEnd(),
    )
    .join('\n')
}
