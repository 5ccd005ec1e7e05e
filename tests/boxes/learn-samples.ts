import { figureValue } from '../../lib/boxes/figure-value.ts'
import type { ClosedBox, Range, Sighting, Surroundings } from '../../lib/boxes/box.ts'
import { tradePrior } from '../../lib/boxes/leak-figures.ts'
import { timeConstantDays } from '../../lib/climate/enclosure.ts'
import { seasonalRhAfterDays } from '../../lib/climate/seasonal.ts'
import { knowledge } from '../knowledge-at-hand.ts'

export const trade = tradePrior(knowledge)
/** The same with a world that keeps to the model: no weather, no wander, nothing that strays. */
export const orderly = {
  ...trade,
  allowance: {
    ...trade.allowance,
    weatherRhPercent: 0,
    wanderRhPercent: 0.01,
    driftRhPercentPerYear: 0,
    strayShare: 1e-9,
  },
}
export const loggerError = figureValue(knowledge, 'logger-error-middle')

export const sure = (value: number, by = 0.01): Range => ({
  low: value * (1 - by),
  nominal: value,
  high: value * (1 + by),
})
export const about = (value: number, by: number): Range => ({
  low: value - by,
  nominal: value,
  high: value + by,
})

export const box: ClosedBox = {
  name: 'TW-14',
  model: 'clip box',
  room: 'Store 1',
  volumeL: 10,
  gelKg: 0.1,
  reservoirGPerKgPercent: sure(5),
  airChangesPerDay: null,
  temperatureC: 20,
  startedOn: 20_000,
  startRhPercent: about(5, 0.05),
  limitRhPercent: 15,
}

export const room: Surroundings = {
  meanRhPercent: about(55, 0.5),
  swingRhPercent: 8,
  swingErrorRhPercent: 0.1,
  highestOn: 20_100,
  from: 'logger',
}

/** What truly stands in the box some days after its start, if it leaks so much. */
export function truthAfter(days: number, airChangesPerDay = 0.5, of: ClosedBox = box): number {
  const enclosure = { ...of, reservoirGPerKgPercent: of.reservoirGPerKgPercent.nominal, airChangesPerDay }
  const season = {
    meanRhPercent: room.meanRhPercent.nominal,
    swingRhPercent: room.swingRhPercent,
    highestOnDay: room.highestOn,
  }
  const start = of.startRhPercent.nominal
  return seasonalRhAfterDays(timeConstantDays(enclosure), season, start, of.startedOn, days)
}

/** A logger every few days, off by so much. */
export function readings(
  days: number,
  {
    off = 0,
    airChangesPerDay = 0.5,
    errorRhPercent = loggerError,
    every = 1,
    serial,
    from = 1,
  }: {
    readonly off?: number
    readonly airChangesPerDay?: number
    readonly errorRhPercent?: number
    readonly every?: number
    readonly serial?: string
    readonly from?: number
  } = {},
): readonly Sighting[] {
  return Array.from({ length: Math.floor((days - from) / every) + 1 }, (_, at) => ({
    kind: 'logger',
    on: box.startedOn + from + at * every,
    rhPercent: truthAfter(from + at * every, airChangesPerDay) + off,
    errorRhPercent,
    ...(serial === undefined ? {} : { serial }),
  }))
}

/** A strip with fields of five percent. */
export const strip = (days: number, rhPercent = truthAfter(days)): Sighting => ({
  kind: 'strip',
  on: box.startedOn + days,
  lowRhPercent: 5 * Math.floor(rhPercent / 5),
  highRhPercent: 5 * Math.floor(rhPercent / 5) + 5,
  errorRhPercent: 5,
})

export const width = ({ low, high }: Range) => Math.log(high / low)
