import { sourcesText } from './decision-sheet-text.ts'
import type { EvidenceSheet, SheetGroup, SheetRival } from './evidence-sheet.ts'
import { checkedLines, row, wrapped } from './sheet-lines.ts'

const gradeWidth = 12

/** The matter as plain text for a terminal or a printer: rivals as letters across, states down, a line to initial under each. */
export function evidenceSheetText(sheet: EvidenceSheet): string {
  const blocks = [
    [
      `${sheet.matter}: ${sheet.asks}`,
      ...row('raised by', sheet.raisedBy),
      ...(sheet.where === 'always' ? [] : row('only where', sheet.where)),
      `Knowledge ${sheet.knowledge}`,
    ],
    ['What it may be, and how common each is before anybody has looked closer'],
    ...sheet.rivals.map(rivalLines),
    ['How often it looks so where each is true'],
    ...sheet.groups.map((group) => groupLines(group, sheet.rivals.length)),
    ...(sheet.contested === null
      ? []
      : [
          [
            'Contested here',
            sheet.contested.question,
            ...row('follows', sheet.contested.follows),
            ...row('because', sheet.contested.because),
          ],
        ]),
  ]
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`
}

const letter = (at: number): string => String.fromCodePoint(65 + at)

function rivalLines({ rival, label, says, odds }: SheetRival, at: number): string[] {
  return [
    `${letter(at)}  ${label}  [${rival}]`,
    ...wrapped(says, 2),
    ...odds.flatMap((one) => [
      ...row('odds', one.when === 'always' ? one.odds : `${one.odds}, where ${one.when}`),
      ...row('', `${one.because} ${sourcesText(one)}`.trim()),
    ]),
    ...checkedLines(),
  ]
}

function groupLines({ label, group, by, asks, states, failures }: SheetGroup, rivals: number): string[] {
  const nameWidth = Math.max(...states.map(({ state }) => state.length)) + 2
  const line = (name: string, cells: readonly string[]): string =>
    `  ${name.padEnd(nameWidth)}${cells.map((cell) => cell.padEnd(gradeWidth)).join('')}`.trimEnd()
  return [
    `${label}, ${by}  [${group}]`,
    ...(asks === null ? [] : row('asked', asks)),
    line(
      '',
      Array.from({ length: rivals }, (_, at) => letter(at)),
    ),
    ...states.flatMap((state) => [
      line(state.state, state.grades),
      ...wrapped(state.when === null ? state.says : `${state.says}; when ${state.when}`, 6),
      ...(state.sources.length === 0 ? [] : wrapped(sourcesText(state), 6)),
    ]),
    ...failures.flatMap((one) => [
      ...row('goes wrong', `${one.says} [${one.failure}]`),
      ...row('', failureWords(one)),
      ...row('', sourcesText(one)),
    ]),
    ...checkedLines(),
  ]
}

function failureWords({ when, of, shows, how }: SheetGroup['failures'][number]): string {
  const whom = of.length === 0 ? '' : ` with ${of.join(', ')}`
  return `${how}${whom}${when === 'always' ? '' : `, where ${when}`}; then it shows ${shows}`
}
