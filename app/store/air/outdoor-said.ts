import type { AirWords } from '../../../lib/wording/air.ts'
import type { FigureShown } from '../../_marks/figure-links.tsx'

/** What became of a question about outdoor air: an answer for each metal, or every reason why there is none. */
export interface OutdoorSaid {
  /** By the name of the field. */
  readonly wrong: Readonly<Record<string, string>>
  readonly given: Readonly<Record<string, string>>
  readonly refusals: readonly string[]
  readonly verdicts: readonly AirWords[]
  /** What the verdicts rest on. */
  readonly figures: readonly FigureShown[]
}
