import type { BoxKind } from '../record/places.ts'
import type { Range } from './box.ts'
import { figureValue, type Figures } from './figure-value.ts'
import type { Allowance, LeakPrior } from './leak-prior.ts'
import type { AssumedRoom } from './surroundings.ts'

const rangeOf = (figures: Figures, id: string): Range => ({
  low: figureValue(figures, `${id}-low`),
  nominal: figureValue(figures, id),
  high: figureValue(figures, `${id}-high`),
})

/** How far the model and its sensors are trusted, as the figures say. */
export function allowanceOf(figures: Figures): Allowance {
  const value = (id: string) => figureValue(figures, id)
  return {
    weatherRhPercent: value('room-weather'),
    weatherDays: value('room-weather-lasts'),
    strayShare: value('box-stray-share'),
    bendPerTenPercent: rangeOf(figures, 'gel-bend'),
    seasonalPace: value('season-pace'),
    wanderRhPercent: value('logger-wander'),
    driftRhPercentPerYear: value('logger-drift-a-year'),
    stripReadingRhPercent: value('strip-reading-spread'),
    swingErrorRhPercent: {
      logger: value('room-swing-error-logger'),
      written: value('room-swing-error-written'),
      assumed: value('room-swing-error-assumed'),
    },
    spentRhPercent: rangeOf(figures, 'gel-spent-rh'),
    looseLidsPerYear: value('loose-lids-a-year'),
    looseLidFactor: rangeOf(figures, 'loose-lid-factor'),
    likeBoxesSpread: value('like-boxes-spread'),
    seatingSpread: value('box-seating-spread'),
  }
}

const tradeOf = {
  box: 'air-exchange-plastic-box',
  // A tub is a lidded plastic box that holds water.
  tub: 'air-exchange-plastic-box',
  case: 'air-exchange-case',
  'barrier-pack': 'air-exchange-barrier-pack',
} as const satisfies Record<BoxKind, string>

/** What the trade supposes of a box of this kind before anything was read in it. */
export function tradePrior(figures: Figures, kind: BoxKind = 'box'): LeakPrior {
  return {
    airChangesPerDay: rangeOf(figures, tradeOf[kind]),
    from: 'trade',
    allowance: allowanceOf(figures),
  }
}

/** What is assumed of a room of which nothing is known. */
export function assumedRoom(figures: Figures): AssumedRoom {
  const value = (id: string) => figureValue(figures, id)
  return {
    meanRhPercent: rangeOf(figures, 'room-rh-assumed'),
    swingRhPercent: value('room-swing-assumed'),
    swingErrorRhPercent: {
      written: value('room-swing-error-written'),
      assumed: value('room-swing-error-assumed'),
    },
    highestDayOfYear: value('room-highest-assumed'),
    weatherRhPercent: value('room-weather'),
    weatherDays: value('room-weather-lasts'),
    yearsDifferRhPercent: value('room-years-differ'),
    loggerErrorRhPercent: value('logger-error-middle'),
  }
}
