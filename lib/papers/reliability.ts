import type { Point } from '../evidence/score.ts'
import { fitOf, type Fit } from '../wording/score.ts'

/** One point of a reliability diagram as places [%] from the left and from the top. */
export interface ReliabilityMark {
  readonly fit: Fit
  readonly left: number
  readonly top: number
  /** Between which the true share may lie. */
  readonly from: number
  readonly to: number
}

const hundred = (share: number) => Math.round(share * 1000) / 10
const down = (share: number) => hundred(1 - share)

export const reliabilityMarks = (points: readonly Point[]): readonly ReliabilityMark[] =>
  points.map((point) => ({
    fit: fitOf(point),
    left: hundred(point.stated),
    top: down(point.cameTrue),
    from: down(point.range[1]),
    to: down(point.range[0]),
  }))

/** Fifths of the scale, as a place [%] and what stands there: tenths, as everything is told. */
export const reliabilityTicks: readonly { readonly at: number; readonly words: string }[] = [
  0, 2, 4, 6, 8, 10,
].map((tenths) => ({ at: tenths * 10, words: String(tenths) }))
