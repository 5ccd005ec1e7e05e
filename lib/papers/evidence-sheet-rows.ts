import type { EvidenceSheet } from './evidence-sheet.ts'
import { sourcesText } from './decision-sheet-text.ts'

/** What a correction says: which grade, what it is to be, why, and by what and by whom that is known. */
export const correctionColumns = [
  'matter',
  'group',
  'state',
  'rival',
  'grade',
  'because',
  'work',
  'place',
  'known',
  'by',
  'on',
] as const

/**
 * The grades as rows of a table, headings first. `knowledge correct` takes it back: a specialist changes `grade` and fills in
 * why, by whom and when; `grade_before` tells the rows that were left alone.
 */
export function evidenceSheetRows(sheet: EvidenceSheet): string[][] {
  const headings = [...correctionColumns, 'grade_before', 'state_says', 'sources']
  const rows = sheet.groups.flatMap(({ group, states }) =>
    states.flatMap((state) =>
      sheet.rivals.map(({ rival }, at) => {
        const { work = '', place = null, known = '' } = state.source ?? {}
        const grade = state.grades[at]!
        const cell = [sheet.matter, group, state.state, rival, grade]
        return [...cell, '', work, place ?? '', known, '', '', grade, state.says, sourcesText(state)]
      }),
    ),
  )
  return [headings, ...rows]
}
