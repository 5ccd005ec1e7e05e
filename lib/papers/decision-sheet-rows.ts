import type { DecisionSheet } from './decision-sheet.ts'
import { sourcesText } from './decision-sheet-text.ts'

/** The review sheet as rows of a table, headings first; what is not covered stands below the rules. */
export function decisionSheetRows(sheet: DecisionSheet): string[][] {
  const headings = [
    'decision',
    'rule',
    'title',
    'when',
    'gives',
    'level',
    'strength',
    'certainty',
    'advice',
    'because',
    'caution',
    'call',
    'silences',
    'sources',
    'contested',
    'retired',
    'initials',
    'date',
  ]
  const rules = sheet.rules.map((rule) => [
    sheet.decision,
    rule.rule,
    rule.title,
    rule.when,
    rule.gives,
    rule.level ?? '',
    rule.strength,
    rule.certainty,
    rule.advice,
    rule.because,
    rule.caution ?? '',
    rule.call ?? '',
    rule.silences.join('; '),
    sourcesText(rule),
    rule.contested ?? '',
    rule.retired ?? '',
    '',
    '',
  ])
  const gaps = sheet.notCovered.map(({ when, what, because, quiet }) => [
    sheet.decision,
    '',
    `${quiet ? 'Knowingly silent' : 'We have no advice on'}: ${what}`,
    when,
    '',
    '',
    '',
    '',
    '',
    because,
    '',
    '',
    '',
    '',
    '',
    '',
    '',
    '',
  ])
  return [headings, ...rules, ...gaps]
}
