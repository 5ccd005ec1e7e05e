import { againstBand } from '../../lib/logger/beyond.ts'
import { excursionsIn } from '../../lib/logger/excursions.ts'
import { monthsOf } from '../../lib/logger/months.ts'
import { percentile } from '../../lib/logger/percentiles.ts'
import { above, below, profileOf, rankedOf, stoodMs } from '../../lib/logger/profile.ts'
import { noAnswers } from '../../lib/logger/read/log-answers.ts'
import { rollingMeans } from '../../lib/logger/rolling.ts'
import type { Series } from '../../lib/logger/series.ts'
import { statisticsOf } from '../../lib/logger/statistics.ts'
import { stretchesOf, withHumidity } from '../../lib/logger/stretches.ts'
import { readLogAt } from '../../lib/services/read-log-at.ts'
import { asked, clocks, peakMegabytes, type Answers } from './logger-answers.ts'

/** Runs by itself: `logger-ours.ts FILE`. The file as the command reads it, then the same answers as the peers give. */
const error = { rhPercent: 3, shape: 'normal', coverageFactor: 2 } as const

function answersOf(series: Series): Answers {
  const read = withHumidity(series)
  const stretches = stretchesOf(read, asked.longestStepMs)
  const profile = profileOf(read, stretches, 0)
  const readMs = stoodMs(profile)
  const outMs = above(profile, asked.band.maxRhPercent).ms + below(profile, asked.band.minRhPercent).ms
  const excursions = excursionsIn(read, stretches, { aboveRhPercent: asked.excursionRhPercent, error })
  const day = rollingMeans(read, stretches, asked.windowMs, 0)
  const ranked = rankedOf(profile)
  const three = (values: { readonly mean: number; readonly min: number; readonly max: number } | null) =>
    values!
  return {
    readings: profile.readings,
    shareInBand: 1 - outMs / readMs,
    longExcursions: excursions.filter(({ fromMs, toMs }) => toMs - fromMs > asked.excursionHours * 3_600_000)
      .length,
    highestDayRhPercent: day!.highest.rhPercent,
    percentiles: asked.percentiles.map((percent) => percentile(ranked, percent, 'linear')),
    months: monthsOf(read).months.map(({ month, rhPercent, temperatureC }) => ({
      month,
      readings: rhPercent!.readings,
      rhPercent: three(rhPercent),
      temperatureC: three(temperatureC),
    })),
  }
}

const file = process.argv[2]!
const took = clocks()
const { channels } = await readLogAt(file, noAnswers)
const readSeconds = took().seconds
const { series } = channels[0]!
const answers = answersOf(series)
const ran = took()
const peak = peakMegabytes()

const timed = (work: () => unknown) => {
  const began = performance.now()
  work()
  return (performance.now() - began) / 1000
}
// Another band and another limit on what is loaded, from the readings on and with nothing kept from before.
const newLimitsSeconds = timed(() => {
  const stretches = stretchesOf(series, asked.longestStepMs)
  const against = { band: { minRhPercent: 40, maxRhPercent: 50 }, error }
  againstBand(series, stretches, profileOf(series, stretches, 0), against)
  excursionsIn(series, stretches, { aboveRhPercent: 58, error })
})
const everythingSeconds = timed(() =>
  statisticsOf(series, { band: asked.band, error, leastCoveragePercent: 75 }),
)
console.log(
  JSON.stringify({ ...ran, peakMegabytes: peak, readSeconds, newLimitsSeconds, everythingSeconds, answers }),
)
