/**
 * How good the probabilities were. Every rival of every matter that was identified later is one forecast: it came true or
 * it did not. Nothing of this is shown before there are enough of them, for a few say nothing.
 */
export interface Scored {
  readonly rivals: readonly { readonly interpretation: string; readonly probability: number }[]
  /** What it was identified as; where it was none of the rivals, none of them came true. */
  readonly truth: string
}

/** Identifications from which on the tool is scored. A house rule: with fewer, chance alone would make or break it. */
export const enough = 20
/** Forecasts that a point of the diagram is made of at least. A house rule, of the same kind. */
const aPoint = 10
/** Standard deviations between which nineteen of twenty lie. */
const usual = 1.96

export interface Score {
  readonly identified: number
  /** Identified as something that the matter did not have among its rivals. */
  readonly noneOfThese: number
  /** Mean over matters of the squared miss of all rivals, 0 to 2: 0 is perfect (Brier's score in its first form). */
  readonly brier: number
  /** The same for somebody who holds all rivals of a matter for equally likely. */
  readonly brierOfGuessing: number
  /** How often the explanation in front was the true one. */
  readonly leaderTrue: number
  readonly reliability: readonly Point[]
}

/** Forecasts of like probability together: what was said on average, and how often it came true. */
export interface Point {
  readonly forecasts: number
  readonly stated: number
  readonly cameTrue: number
  /** What the true share may be, from as many forecasts, nineteen times in twenty. */
  readonly range: readonly [low: number, high: number]
}

/**
 * Range of a share of which so many of so many were seen [1, 1].
 * @param seen [count] that came true
 * @param of [count] of all
 * @source Wilson 1927, score interval
 * @valid any count above 0
 * @agrees exact with the printed formula
 */
export function shareRange(seen: number, of: number): readonly [low: number, high: number] {
  const share = seen / of
  const z = usual ** 2
  const middle = share + z / (2 * of)
  const half = usual * Math.sqrt((share * (1 - share)) / of + z / (4 * of * of))
  const scale = 1 + z / of
  return [Math.max(0, (middle - half) / scale), Math.min(1, (middle + half) / scale)]
}

interface Forecast {
  readonly probability: number
  readonly true: boolean
}

/** Tenths of probability, each joined to the next until it holds enough to say something. */
function pointsOf(forecasts: readonly Forecast[]): readonly Point[] {
  const sorted = forecasts.toSorted((a, b) => a.probability - b.probability)
  const groups: Forecast[][] = []
  let open: Forecast[] = []
  for (const [at, forecast] of sorted.entries()) {
    open.push(forecast)
    const next = sorted[at + 1]
    const turns =
      next === undefined || Math.floor(next.probability * 10) > Math.floor(forecast.probability * 10)
    if (!turns || open.length < aPoint) continue
    groups.push(open)
    open = []
  }
  // Too few are left for a point of their own: they belong to the one before them.
  if (open.length > 0) groups.push([...(groups.pop() ?? []), ...open])
  return groups.map((group) => {
    const cameTrue = group.filter((one) => one.true).length
    return {
      forecasts: group.length,
      stated: group.reduce((sum, { probability }) => sum + probability, 0) / group.length,
      cameTrue: cameTrue / group.length,
      range: shareRange(cameTrue, group.length),
    }
  })
}

const missOf = ({ rivals, truth }: Scored, stated: (probability: number) => number): number =>
  rivals.reduce(
    (sum, { interpretation, probability }) =>
      sum + (stated(probability) - Number(interpretation === truth)) ** 2,
    0,
  )

const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length

/** The score, or null while there are too few identifications. */
export function scoreOf(scored: readonly Scored[]): Score | null {
  if (scored.length < enough) return null
  const forecasts = scored.flatMap(({ rivals, truth }) =>
    rivals.map(({ interpretation, probability }) => ({ probability, true: interpretation === truth })),
  )
  const leads = scored.filter(({ rivals, truth }) => {
    const leader = rivals.toSorted((a, b) => b.probability - a.probability)[0]
    return leader?.interpretation === truth
  })
  return {
    identified: scored.length,
    noneOfThese: scored.filter(({ rivals, truth }) =>
      rivals.every(({ interpretation }) => interpretation !== truth),
    ).length,
    brier: mean(scored.map((one) => missOf(one, (probability) => probability))),
    brierOfGuessing: mean(scored.map((one) => missOf(one, () => 1 / one.rivals.length))),
    leaderTrue: leads.length / scored.length,
    reliability: pointsOf(forecasts),
  }
}
