import type { ClosedBox, Day, Fan, Surroundings } from './box.ts'
import { courseAhead, knotsOf, type Foreseen } from './forecast-course.ts'
import { valueAtShare, type Mixture } from './forecast-mixture.ts'

export interface Ahead {
  /** First day of the fan; where the estimate's last sighting is later, the fan begins with that. */
  readonly from: Day
  readonly days: number
}

/** Relative humidity ahead, a value a day, from everything the estimate knows and does not know. */
export function forecast(
  box: ClosedBox,
  surroundings: Surroundings,
  foreseen: Foreseen,
  { from, days }: Ahead,
): Fan {
  const first = Math.max(from, foreseen.asOf)
  const knots = knotsOf(first, days)
  const mixtures = courseAhead(box, surroundings, foreseen, knots)
  const each = Array.from({ length: Math.floor(days) + 1 }, (_, day) => first + day)
  const line = (share: number) => daily(each, knots, ribbon(mixtures, share))
  return { days: each, p10: line(0.1), p25: line(0.25), p50: line(0.5), p75: line(0.75), p90: line(0.9) }
}

function ribbon(mixtures: readonly Mixture[], share: number): readonly number[] {
  let before: number | null = null
  return mixtures.map((mixture) => {
    before = valueAtShare(mixture, share, before)
    return Math.min(100, Math.max(0, before))
  })
}

function daily(days: readonly Day[], knots: readonly Day[], values: readonly number[]): readonly number[] {
  let at = 0
  return days.map((day) => {
    while (at < knots.length - 2 && knots[at + 1]! <= day) at += 1
    const [from, to] = [knots[at]!, knots[at + 1] ?? knots[at]!]
    const share = to > from ? (day - from) / (to - from) : 0
    return values[at]! + ((values[at + 1] ?? values[at]!) - values[at]!) * share
  })
}
