import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import type { Problem } from '../../lib/record/problem.ts'
import type { ImportReport } from '../../lib/services/import-file.ts'
import { problemAdvice, problemPlace } from '../../lib/wording/problems.ts'

export interface ProblemSaid {
  readonly where: string
  readonly says: string
  readonly severity: Problem['severity']
}

/** What a dry run or an import tells a person: counts, what was not understood, and every stop. */
export interface Summary {
  readonly fileName: string
  readonly dryRun: boolean
  /** Empty for a project that is yet to be begun. */
  readonly projectId: string
  readonly importId: string | null
  readonly kind: ImportReport['file']['kind']
  readonly sheet: string | null
  readonly records: number
  readonly findsNew: number
  readonly added: number
  readonly alreadyThere: number
  readonly rejected: number
  readonly problems: readonly ProblemSaid[]
  readonly problemsInAll: number
  readonly notesInAll: number
  readonly unknownColumns: readonly string[]
  readonly stops: readonly { readonly where: string; readonly text: string; readonly who: string }[]
}

const told = 200
const loudness: readonly Problem['severity'][] = ['unreadable', 'problem', 'note']

export function summaryOf(report: ImportReport, projectId: string | null, knowledge: Knowledge): Summary {
  const { file } = report
  const problems = report.problems.toSorted(
    (a, b) => loudness.indexOf(a.severity) - loudness.indexOf(b.severity),
  )
  const notes = problems.filter(({ severity }) => severity === 'note').length
  return {
    fileName: report.fileName,
    dryRun: report.dryRun,
    projectId: projectId ?? '',
    importId: report.importId,
    kind: file.kind,
    sheet: file.sheet,
    records: report.recordsRead,
    findsNew: report.findsNew,
    added: report.recordsAdded,
    alreadyThere: report.recordsAlreadyThere,
    rejected: report.unreadableRows.length,
    problems: problems.slice(0, told).map((problem) => ({
      where: problemPlace(problem),
      says: problemAdvice(problem),
      severity: problem.severity,
    })),
    problemsInAll: problems.length - notes,
    notesInAll: notes,
    unknownColumns: file.unknownColumns,
    stops: report.stops.map(({ find, row, caution }) => ({
      where: [find, row === null ? null : `row ${row}`].filter((part) => part !== null).join(', '),
      text: caution.text,
      who:
        caution.who === '' && caution.call !== null
          ? (knowledge.vocabulary.contacts[caution.call]?.label ?? '')
          : caution.who,
    })),
  }
}
