import type { DecisionSheet, SheetRule } from './decision-sheet.ts'
import { checkedLines, row, wrapped } from './sheet-lines.ts'

/** The review sheet as plain text for a terminal or a printer, with a line to initial under every rule. */
export function decisionSheetText(sheet: DecisionSheet): string {
  const head = [
    `${sheet.decision}: ${sheet.asks}`,
    ...wrapped(sheet.manner.join(' '), 0),
    ...(sheet.answers.length === 0
      ? []
      : wrapped(`Answers, strictest first: ${sheet.answers.join(', ')}.`, 0)),
    `Knowledge ${sheet.knowledge}`,
  ]
  const blocks = [
    head,
    ...sheet.rules.map(ruleLines),
    ...gapBlocks(
      'We have no advice on',
      sheet.notCovered.filter(({ quiet }) => !quiet),
    ),
    ...gapBlocks(
      'Knowingly silent',
      sheet.notCovered.filter(({ quiet }) => quiet),
    ),
    ...(sheet.contested.length === 0 ? [] : [['Contested here'], ...sheet.contested.map(contestedLines)]),
  ]
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`
}

function ruleLines(rule: SheetRule): string[] {
  return [
    `${rule.title}  [${rule.rule}]`,
    ...(rule.retired === null ? [] : row('retired', rule.retired)),
    ...row('when', rule.when),
    ...row('gives', rule.gives),
    ...(rule.advice === '' ? [] : row('advice', rule.advice)),
    ...row('because', rule.because),
    ...(rule.caution === null ? [] : row('caution', rule.caution)),
    ...row(
      'standing',
      [rule.strength, rule.certainty, ...(rule.level === null ? [] : [rule.level])].join('; '),
    ),
    ...(rule.call === null ? [] : row('call', rule.call)),
    ...(rule.silences.length === 0 ? [] : row('silences', rule.silences.join('; '))),
    ...row('sources', sourcesText(rule)),
    ...(rule.contested === null ? [] : row('contested', rule.contested)),
    ...checkedLines(),
  ]
}

/** The sources of a rule, each with its place and how it is known. */
export function sourcesText({ sources }: Pick<SheetRule, 'sources'>): string {
  return sources
    .map(({ work, place, known, against }) => {
      const where = place === null ? work : `${work}, ${place}`
      return `${against ? 'against: ' : ''}${where} (${known})`
    })
    .join('; ')
}

function gapBlocks(heading: string, gaps: DecisionSheet['notCovered']): string[][] {
  return gaps.length === 0 ? [] : [[heading], ...gaps.map(gapLines)]
}

function gapLines({ when, what, because }: DecisionSheet['notCovered'][number]): string[] {
  return [what, ...row('when', when), ...row('because', because)]
}

function contestedLines({ question, follows, because }: DecisionSheet['contested'][number]): string[] {
  return [question, ...row('follows', follows), ...row('because', because)]
}
