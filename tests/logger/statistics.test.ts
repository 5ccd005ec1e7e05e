import { describe, expect, it } from 'vitest'
import { statisticsOf } from '../../lib/logger/statistics.ts'
import { against, at, day, every, hour, start, workedDay } from './at-hand.ts'

/** physics.md, check values 45 and 46: computed by hand there, from no source but these 24 readings. */
describe('the worked day', () => {
  const told = (limit: number, more = {}) =>
    statisticsOf(
      every(
        hour,
        workedDay,
        workedDay.map(() => 20),
      ),
      against(limit, more),
    )
  const humidity = (limit: number, more = {}) => told(limit, more).humidity!

  it('has mean and spread', () => {
    expect(humidity(15).mean).toBe(17.25)
    expect(humidity(15).sdPopulation).toBeCloseTo(4.3708, 4)
    expect(humidity(15).sdSample).toBeCloseTo(4.4648, 4)
    expect([humidity(15).min, humidity(15).max]).toEqual([13, 27])
  })

  it.each([
    ['linear', 25.39],
    ['inverse', 26],
    ['hazen', 25.82],
    ['weibull', 26.25],
  ] as const)(
    'has its 93rd percentile by the %s method at %d, and says the method',
    (percentileMethod, value) => {
      const { percentiles, percentileMethod: said } = humidity(15, { percentileMethod })
      expect(percentiles.find(({ percent }) => percent === 93)!.rhPercent).toBeCloseTo(value, 10)
      expect(said).toBe(percentileMethod)
    },
  )

  it('has its 7th and 50th', () => {
    expect(humidity(15).percentiles.map(({ percent, rhPercent }) => [percent, rhPercent])).toEqual([
      [7, 13],
      [50, 15],
      [93, 25.39],
    ])
  })

  it('has its time and dose, and says the method', () => {
    expect(humidity(15).percentOfTimeIn).toBeCloseTo(54.1667, 4)
    expect(humidity(15).above).toMatchObject({
      hours: 11,
      doseRhPercentHours: 66,
      meanBeyondRhPercent: 6,
      excursions: 1,
      longest: { hours: 11 },
    })
    expect(humidity(20).above).toMatchObject({ hours: 6, doseRhPercentHours: 25 })
    const lines = humidity(20, { doseMethod: 'trapezoid' })
    expect(lines.above!.doseRhPercentHours).toBeCloseTo(24.333, 3)
    expect([humidity(20).doseMethod, lines.doseMethod]).toEqual(['rectangle', 'trapezoid'])
  })

  it('has its worst 24 hours and its greatest change', () => {
    expect(humidity(15).day).toMatchObject({
      highest: { rhPercent: 17.25, fromMs: start, toMs: start + day },
      lowest: { rhPercent: 17.25 },
    })
    expect(humidity(15).thirtyDays).toBeNull()
    expect(humidity(15).greatestChange).toEqual({
      fromRhPercent: 13,
      toRhPercent: 27,
      fromMs: start + 3 * hour,
      toMs: start + 12 * hour,
    })
  })

  it('has the water in its air, from pressures and not from humidities', () => {
    const { moisture } = told(15)
    // physics.md part 1.3: 20 °C and 15 % is a frost point of -6.577 °C; c at 20 °C and 50 % is 8.6433 g/m³.
    expect(moisture!.absoluteHumidityGPerM3.max).toBeCloseTo((8.6433 * 27) / 50, 3)
    expect(moisture!.frostPointC.min).toBeLessThan(-6.577)
    expect(moisture!.dewPointC.min).toBeLessThan(moisture!.frostPointC.min!)
  })
})

describe('what the sensor may be off', () => {
  it('gives the hours above a range', () => {
    const { above } = statisticsOf(every(hour, workedDay), against(15)).humidity!
    expect(above!.hoursWithError).toEqual({ least: 7, most: 24 })
  })
})

describe('gaps and what is missing', () => {
  const readings = [10, 20, 20, 10, 10, 10, 10, 10]
  const broken = at(
    [0, 1, 2, 3, 9, 10, 11, 12].map((hours) => start + hours * hour),
    readings,
  )

  it('a gap is told and is not time', () => {
    const told = statisticsOf(broken, against(15))
    expect(told.gaps).toEqual([{ fromMs: start + 3 * hour, toMs: start + 9 * hour }])
    expect(told.humidity!.hours).toBe(8)
    expect(told.coveragePercent).toBeCloseTo((100 * 8) / 13, 10)
    expect(told.humidity!.above!.hours).toBe(2)
  })

  it('a longer step may be allowed', () => {
    const told = statisticsOf(broken, against(15, { longestStepMs: 7 * hour }))
    expect(told.gaps).toEqual([])
    expect(told.humidity!.hours).toBe(13)
  })

  it('the last reading before a gap may be given no time', () => {
    expect(statisticsOf(broken, against(15, { lastStandsMs: 0 })).humidity!.hours).toBe(6)
  })

  it('a logger set to another step makes no gap', () => {
    const moments = [
      ...Array.from({ length: 20 }, (_, n) => n / 4),
      ...Array.from({ length: 20 }, (_, n) => 5 + 6 * n),
    ]
    const told = statisticsOf(
      at(
        moments.map((hours) => start + hours * hour),
        moments.map(() => 10),
      ),
      against(15),
    )
    expect(told.gaps).toEqual([])
    expect(told.coveragePercent).toBe(100)
  })

  it('a reading without humidity is a gap in it, and its temperature counts', () => {
    const told = statisticsOf(
      every(hour, [10, 10, Number.NaN, Number.NaN, 10, 10], [20, 20, 30, 30, 20, 20]),
      against(15),
    )
    expect(told.readings).toBe(4)
    expect(told.gaps).toEqual([{ fromMs: start + hour, toMs: start + 4 * hour }])
    expect(told.temperatureC).toMatchObject({ min: 20, max: 30 })
    expect(told.months[0]).toMatchObject({ rhPercent: { readings: 4 }, temperatureC: { readings: 6 } })
  })

  it('nothing read is nothing told, and no error', () => {
    const none = statisticsOf(every(hour, []), against(15))
    expect(none).toMatchObject({ readings: 0, fromMs: null, humidity: null, moisture: null, months: [] })
    const onlyTemperature = statisticsOf(every(hour, [Number.NaN, Number.NaN], [20, 21]), against(15))
    expect(onlyTemperature).toMatchObject({ readings: 0, humidity: null, temperatureC: { mean: 20.5 } })
  })

  it('one reading is one reading', () => {
    const one = statisticsOf(every(hour, [16]), against(15))
    expect(one).toMatchObject({ readings: 1, coveragePercent: 100, humidity: { mean: 16, sdSample: null } })
    expect(one.humidity!.above).toMatchObject({ hours: 0, excursions: 1 })
  })

  it('a mean over a day that was read too little is not told', () => {
    const half = at(
      Array.from({ length: 12 }, (_, n) => start + n * hour).concat(
        Array.from({ length: 6 }, (_, n) => start + (24 + n) * hour),
      ),
      Array.from({ length: 18 }, () => 10),
    )
    expect(statisticsOf(half, against(15)).humidity!.day).toBeNull()
    expect(statisticsOf(half, against(15, { leastCoveragePercent: 50 })).humidity!.day).not.toBeNull()
  })
})

describe('values as printed', () => {
  it('a reading at the limit is within it, whatever floats make of it', () => {
    for (const limit of [12.1, 14.7, 15, 33.3, 0.1, 99.9]) {
      const { above, below } = statisticsOf(every(hour, [limit, limit]), {
        ...against(limit),
        band: { minRhPercent: limit, maxRhPercent: limit },
      }).humidity!
      expect([above!.hours, above!.excursions, below!.hours, below!.excursions]).toEqual([0, 0, 0, 0])
    }
    expect(statisticsOf(every(hour, [12.11, 12.11]), against(12.1)).humidity!.above!.hours).toBe(2)
  })

  it('more than two decimals are rounded and said, and what is no humidity is left out and said', () => {
    const told = statisticsOf(every(hour, [10, 10.123, 10.126, 5000, -400]), against(15))
    expect(told).toMatchObject({ readings: 3, rounded: 2, implausible: 2 })
    expect(told.humidity).toMatchObject({ min: 10, max: 10.13 })
  })
})

describe('at a flat floor', () => {
  const floor = { atRhPercent: 15, readings: 12, share: 0.5, from: 'flat' } as const
  const flat = every(hour, [...Array<number>(12).fill(15), 16, 17, 18, 19, 20, 21, 20, 19, 18, 17, 16, 16])

  it('the mean is what it is at most, and so are the percentiles there', () => {
    const { humidity } = statisticsOf(flat, against(25, { floor }))
    expect(humidity!.atMost).toBe(true)
    expect(humidity!.percentiles.map(({ atMost }) => atMost)).toEqual([true, false, false])
  })

  it('time below a limit above the floor is time below', () => {
    const told = statisticsOf(flat, {
      ...against(null, { floor }),
      band: { minRhPercent: 18, maxRhPercent: null },
    })
    expect(told.humidity!.below).toMatchObject({ hours: 17, hoursCannotTell: 0 })
  })

  it('nobody can tell whether the floor is above a limit that lies lower', () => {
    const { above, hoursIn } = statisticsOf(flat, against(12, { floor })).humidity!
    expect(above).toMatchObject({ hours: 12, hoursCannotTell: 12, excursions: 1 })
    expect(hoursIn).toBe(0)
    const below = statisticsOf(flat, {
      ...against(null, { floor }),
      band: { minRhPercent: 12, maxRhPercent: null },
    })
    expect(below.humidity!.below).toMatchObject({ hours: 0, hoursCannotTell: 12 })
  })
})
