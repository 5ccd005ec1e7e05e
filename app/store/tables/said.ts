import type { PlacesKept } from '../../../lib/services/keep-places.ts'
import { problemAdvice, problemPlace } from '../../../lib/wording/problems.ts'
import { tableCountWords } from '../../../lib/wording/store-tables.ts'
import { countWords } from '../../../lib/wording/list.ts'

/** What a file of the store's tables holds, or has brought. */
export interface TablesSaid {
  readonly ok: boolean
  readonly kept: boolean
  readonly says: string
  readonly stops: readonly { readonly about: string; readonly text: string; readonly who: string }[]
  readonly problems: readonly string[]
  /** Problems beyond those that are listed. */
  readonly more: number
  readonly toMend: readonly string[]
}

const listed = 100

export const refusal = (says: string): TablesSaid => ({
  ok: false,
  kept: false,
  says,
  stops: [],
  problems: [],
  more: 0,
  toMend: [],
})

export function saidOf(report: PlacesKept, fileName: string, kept: boolean): TablesSaid {
  const counts = tableCountWords(report)
  const lost =
    report.unreadableRows === 0
      ? ''
      : ` ${countWords(report.unreadableRows, 'row')} could not be read${kept ? ' and lie ready to be mended' : ''}.`
  const held = counts === '' ? 'holds nothing that could be read' : `${kept ? 'is in' : 'holds'}: ${counts}`
  return {
    ok: counts !== '' || (kept && report.unreadableRows > 0),
    kept,
    says: `${fileName} ${held}.${lost}`,
    stops: report.stops.map(({ row, caution }) => ({
      about: `Row ${row}`,
      text: caution.text,
      who: caution.who,
    })),
    problems: report.problems
      .slice(0, listed)
      .map((problem) => `${problemPlace(problem)}: ${problemAdvice(problem)}`),
    more: Math.max(0, report.problems.length - listed),
    toMend: report.importIds,
  }
}
