import type { Matter } from '../knowledge/evidence.ts'
import type { Decision, Knowledge } from '../knowledge/knowledge.ts'
import { decisionSheet } from '../papers/decision-sheet.ts'
import { decisionSheetRows } from '../papers/decision-sheet-rows.ts'
import { decisionSheetText } from '../papers/decision-sheet-text.ts'
import { evidenceSheet } from '../papers/evidence-sheet.ts'
import { evidenceSheetRows } from '../papers/evidence-sheet-rows.ts'
import { evidenceSheetText } from '../papers/evidence-sheet-text.ts'
import { csvText } from '../tables/csv-write.ts'

export const sheetFormats = ['text', 'json', 'csv'] as const
type Format = (typeof sheetFormats)[number]

/** A decision's review sheet, as it leaves: to print, to read by another program, or to mark in a spreadsheet. */
export function knowledgeSheet(decision: Decision, knowledge: Knowledge, format: Format): string {
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

/** A matter's review sheet; the CSV is what `knowledge correct` takes back. */
export function matterSheet(matter: Matter, knowledge: Knowledge, format: Format): string {
  const sheet = evidenceSheet(matter, knowledge)
  switch (format) {
    case 'text':
      return evidenceSheetText(sheet)
    case 'json':
      return `${JSON.stringify(sheet)}\n`
    case 'csv':
      return csvText(evidenceSheetRows(sheet))
  }
}
