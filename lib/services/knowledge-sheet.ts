import type { Decision, Knowledge } from '../knowledge/knowledge.ts'
import { decisionSheet } from '../papers/decision-sheet.ts'
import { decisionSheetRows } from '../papers/decision-sheet-rows.ts'
import { decisionSheetText } from '../papers/decision-sheet-text.ts'
import { csvText } from '../tables/csv-write.ts'

export const sheetFormats = ['text', 'json', 'csv'] as const

/** A decision's review sheet, as it leaves: to print, to read by another program, or to mark in a spreadsheet. */
export function knowledgeSheet(
  decision: Decision,
  knowledge: Knowledge,
  format: (typeof sheetFormats)[number],
): string {
  const sheet = decisionSheet(decision, knowledge)
  switch (format) {
    case 'text':
      return decisionSheetText(sheet)
    case 'json':
      return `${JSON.stringify(sheet)}\n`
    case 'csv':
      return csvText(decisionSheetRows(sheet))
  }
}
