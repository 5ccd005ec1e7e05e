import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { excursionsOf } from '../../lib/logger/excursions.ts'
import { greatestChange } from '../../lib/logger/greatest-change.ts'
import { percentile, percentileMethods, rankedValues } from '../../lib/logger/percentiles.ts'
import { rollingMeans } from '../../lib/logger/rolling.ts'
import { chanceOver } from '../../lib/logger/sensor-error.ts'
import { statisticsOf } from '../../lib/logger/statistics.ts'
import { stretchesOf } from '../../lib/logger/stretches.ts'
import { against, at, day, error, every, hour, start } from './at-hand.ts'

const quarter = hour / 4
const humidity = fc.integer({ min: 0, max: 1000 }).map((tenths) => tenths / 10)

/** Mostly even steps, as loggers take them, with gaps and stragglers. */
const log = fc
  .array(
    fc.tuple(
      fc.oneof({ weight: 12, arbitrary: fc.constant(quarter) }, fc.integer({ min: 60_000, max: 2 * day })),
      humidity,
    ),
    { minLength: 1, maxLength: 400 },
  )
  .map((readings) => {
    let moment = start
    return at(
      readings.map(([step]) => (moment += step)),
      readings.map(([, rh]) => rh),
    )
  })

describe('against slow and plain reckoning', () => {
  it('the greatest change of a day', () => {
    fc.assert(
      fc.property(log, fc.integer({ min: 60_000, max: 2 * day }), (series, windowMs) => {
        let greatest = -1
        for (let i = 0; i < series.atMs.length; i += 1)
          for (let k = 0; k < i; k += 1)
            if (series.atMs[i]! - series.atMs[k]! <= windowMs)
              greatest = Math.max(greatest, Math.abs(series.rhPercent[i]! - series.rhPercent[k]!))
        const found = greatestChange(series, windowMs)
        if (greatest < 0) expect(found).toBeNull()
        else {
          expect(Math.abs(found!.toRhPercent - found!.fromRhPercent)).toBeCloseTo(greatest, 4)
          expect(found!.toMs - found!.fromMs).toBeLessThanOrEqual(windowMs)
          expect(found!.toMs).toBeGreaterThan(found!.fromMs)
        }
      }),
    )
  })

  it('the highest and lowest mean of a while', () => {
    fc.assert(
      fc.property(
        log,
        fc.integer({ min: quarter, max: 2 * day }),
        fc.integer({ min: 0, max: 100 }),
        (series, windowMs, least) => {
          const stretches = stretchesOf(series)
          const means = stretches
            .flatMap(({ from, to, stepMs }) =>
              Array.from({ length: to - from }, (_, n) => {
                const i = from + n
                const end = i + 1 < to ? series.atMs[i + 1]! : series.atMs[i]! + stepMs
                const begin = end - windowMs
                const held = [...series.rhPercent].filter((_rh, k) => k <= i && series.atMs[k]! >= begin)
                const read = stretches.reduce((sum, stretch) => {
                  const until = Math.min(end, series.atMs[stretch.to - 1]! + stretch.stepMs)
                  return sum + Math.max(0, until - Math.max(begin, series.atMs[stretch.from]!))
                }, 0)
                if (begin < series.atMs[0]! || read < (windowMs * least) / 100 || held.length === 0)
                  return null
                return held.reduce((sum, rh) => sum + rh, 0) / held.length
              }),
            )
            .filter((mean) => mean !== null)
          const found = rollingMeans(series, stretches, windowMs, least)
          if (means.length === 0) expect(found).toBeNull()
          else {
            expect(found!.highest.rhPercent).toBeCloseTo(Math.max(...means), 4)
            expect(found!.lowest.rhPercent).toBeCloseTo(Math.min(...means), 4)
          }
        },
      ),
    )
  })

  it('percentiles by their place among the sorted', () => {
    const methods = fc.constantFrom(...percentileMethods)
    fc.assert(
      fc.property(fc.array(humidity, { minLength: 1, maxLength: 60 }), methods, (values, method) => {
        const of = (percent: number) => percentile(rankedValues(values), percent, method)
        const sorted = values.toSorted((a, b) => a - b)
        expect([of(0), of(100)]).toEqual([sorted[0], sorted.at(-1)])
        for (let percent = 1; percent <= 100; percent += 1)
          expect(of(percent)).toBeGreaterThanOrEqual(of(percent - 1))
        if (method === 'linear' && values.length > 1)
          sorted.forEach((value, n) => expect(of((100 * n) / (sorted.length - 1))).toBeCloseTo(value, 9))
        if (method === 'inverse') expect(sorted).toContain(of(37))
      }),
    )
  })
})

describe('laws', () => {
  it('a higher limit is never passed for longer, nor by more', () => {
    fc.assert(
      fc.property(
        log,
        humidity,
        humidity,
        fc.constantFrom('rectangle', 'trapezoid'),
        (series, a, b, doseMethod) => {
          const of = (limit: number) =>
            statisticsOf(series, against(limit, { doseMethod: doseMethod as 'rectangle' })).humidity!.above!
          const [low, high] = [of(Math.min(a, b)), of(Math.max(a, b))]
          expect(high.hours).toBeLessThanOrEqual(low.hours)
          expect(high.doseRhPercentHours).toBeLessThanOrEqual(low.doseRhPercentHours + 1e-9)
          expect(high.doseRhPercentHours).toBeGreaterThanOrEqual(0)
          expect(low.hoursWithError.least).toBeLessThanOrEqual(low.hours)
          expect(low.hoursWithError.most).toBeGreaterThanOrEqual(low.hours)
        },
      ),
    )
  })

  it('time below, within and above is the time with readings', () => {
    fc.assert(
      fc.property(log, humidity, humidity, (series, a, b) => {
        const band = { minRhPercent: Math.min(a, b), maxRhPercent: Math.max(a, b) }
        const { hours, hoursIn, above, below } = statisticsOf(series, { ...against(null), band }).humidity!
        expect(hoursIn + above!.hours + below!.hours).toBeCloseTo(hours, 9)
        expect(hoursIn).toBeGreaterThanOrEqual(0)
      }),
    )
  })

  it('excursions hold all the time and all the dose above the limit, and never overlap', () => {
    fc.assert(
      fc.property(log, humidity, (series, limit) => {
        const found = excursionsOf(series, { aboveRhPercent: limit, error })
        const { above } = statisticsOf(series, against(limit)).humidity!
        const hours = found.reduce((sum, { fromMs, toMs }) => sum + (toMs - fromMs) / hour, 0)
        const dose = found.reduce((sum, { doseRhPercentHours }) => sum + doseRhPercentHours, 0)
        expect(hours).toBeCloseTo(above!.hours, 6)
        expect(dose).toBeCloseTo(above!.doseRhPercentHours, 4)
        expect(above!.excursions).toBe(found.length)
        found.forEach((one, n) => {
          expect(one.toMs).toBeGreaterThanOrEqual(one.fromMs)
          expect(one.worstRhPercent).toBeGreaterThan(limit)
          expect(one.chanceReal).toBeGreaterThanOrEqual(0.5)
          if (n > 0) expect(one.fromMs).toBeGreaterThanOrEqual(found[n - 1]!.toMs)
        })
      }),
    )
  })

  it('a reading nearer to the limit is likelier to have been over it', () => {
    fc.assert(
      fc.property(
        humidity,
        humidity,
        humidity,
        fc.constantFrom('normal', 'rectangular'),
        (a, b, limit, shape) => {
          const of = (read: number) => chanceOver(read, limit, { ...error, shape: shape as 'normal' })
          expect(of(Math.max(a, b))).toBeGreaterThanOrEqual(of(Math.min(a, b)))
          expect(of(a)).toBeGreaterThanOrEqual(0)
          expect(of(a)).toBeLessThanOrEqual(1)
        },
      ),
    )
  })

  it('what is told does not change when all of it happens later, save the months', () => {
    fc.assert(
      fc.property(
        fc.array(humidity, { minLength: 1, maxLength: 200 }),
        fc.integer({ min: 1, max: 400 }),
        (rh, days) => {
          const now = statisticsOf(every(quarter, rh), against(40)).humidity!
          const later = statisticsOf(every(quarter, rh, [], start + days * day), against(40)).humidity!
          expect({ ...later, day: null, greatestChange: null, above: later.above!.hours }).toEqual({
            ...now,
            day: null,
            greatestChange: null,
            above: now.above!.hours,
          })
          expect(later.day?.highest.rhPercent).toBe(now.day?.highest.rhPercent)
        },
      ),
    )
  })
})
