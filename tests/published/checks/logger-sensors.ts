import { describe, expect } from 'vitest'
import { loggerFigures, sensorErrorOf } from '../../../lib/boxes/logger-figures.ts'
import { guarded } from '../../../lib/logger/sensor-error.ts'
import { statisticsOf } from '../../../lib/logger/statistics.ts'
import { knowledge } from '../../knowledge-at-hand.ts'
import { at, hour, start } from '../../logger/at-hand.ts'
import { figure } from '../../said.ts'
import { printed } from '../printed.ts'

const sheet = { work: 'sht3x-arp-sheet', known: 'read' } as const
const rules = { work: 'air-quality-regulations-2007', place: 'schedule 12, part 2', known: 'read' } as const

describe('what is printed of sensors', () => {
  printed(
    {
      check: 'physics 4.1, middle',
      ...sheet,
      place: 'accuracy table',
      tolerance: 'exact: printed whole numbers, tried at both ends',
      says: 'a common sensor is off by 3 % from 10 to 90 %, and 15 % read with a limit of 18 % is just within it',
    },
    () => {
      expect([10, 12, 50, 90].map((read) => sensorErrorOf(knowledge, read).rhPercent)).toEqual([3, 3, 3, 3])
      expect(guarded(15, 18, sensorErrorOf(knowledge, 15))).toBe('within')
      expect(guarded(15.1, 18, sensorErrorOf(knowledge, 15.1))).toBe('cannot-tell')
      return figure('logger-error-middle')
    },
  )

  printed(
    {
      check: 'physics 4.1, ends',
      ...sheet,
      place: 'accuracy figure',
      tolerance:
        'exact: printed at 0 and at 100 %; between, no number is printed and the error only may not shrink',
      says: 'it is off by 4.5 % at 0 and 100 %, and no better on the way there',
    },
    () => {
      expect([0, 100].map((read) => sensorErrorOf(knowledge, read).rhPercent)).toEqual([4.5, 4.5])
      const toTheDry = [10, 8, 6, 4, 2, 0].map((read) => sensorErrorOf(knowledge, read).rhPercent)
      expect(toTheDry).toEqual(toTheDry.toSorted((a, b) => a - b))
      return figure('logger-error-ends')
    },
  )

  printed(
    {
      check: 'physics 4.1, drift',
      ...sheet,
      place: 'specification table',
      tolerance: 'exact: printed decimals',
      says: 'hysteresis and a drift of a quarter percent a year come on top',
    },
    () => {
      const extra = [figure('logger-hysteresis'), figure('logger-drift-a-year')]
      expect(extra.map(({ value }) => value)).toEqual([0.8, 0.25])
      return extra
    },
  )

  printed(
    {
      check: 'physics 4.1, floor',
      work: 'softsolder-2013',
      place: null,
      known: 'read',
      tolerance: 'exact: a printed whole number, tried at it and one beyond',
      says: 'a logger was seen flat at 15 %: up to there a flat run is a floor',
    },
    () => {
      expect(loggerFigures(knowledge).highestFloorRhPercent).toBe(15)
      return figure('logger-floor-highest')
    },
  )
})

describe('how much must have been read', () => {
  /** Two days by the hour of which `read` hours in 48 were read. */
  const days = (read: number) => {
    const moments = Array.from({ length: 48 }, (_, n) => n).filter((n) => n < 12 || n >= 60 - read)
    return statisticsOf(
      at(
        moments.map((n) => start + n * hour),
        moments.map(() => 10),
      ),
      {
        band: { minRhPercent: null, maxRhPercent: 15 },
        error: sensorErrorOf(knowledge, 15),
        leastCoveragePercent: loggerFigures(knowledge).leastCoveragePercent,
      },
    )
  }

  printed(
    {
      check: 'physics 4.3, means',
      ...rules,
      tolerance: 'exact: a printed whole number, tried at it and one hour below',
      says: 'a mean stands on three quarters of its time',
    },
    () => {
      expect(days(30).humidity!.day).not.toBeNull()
      expect(days(29).humidity!.day).toBeNull()
      return figure('log-least-read-mean')
    },
  )

  printed(
    {
      check: 'physics 4.3, counts',
      ...rules,
      tolerance: 'exact: a printed whole number',
      says: 'a count of excursions stands on nine tenths of its time',
    },
    () => {
      expect(loggerFigures(knowledge).leastCoverageForCountsPercent).toBe(90)
      return figure('log-least-read-count')
    },
  )
})
