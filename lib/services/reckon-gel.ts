import type { Quantiles, Range } from '../base/range.ts'
import { figureValue, type Figures } from '../boxes/figure-value.ts'
import { solveEnclosure, sorptionOf } from '../climate/enclosure-solved.ts'
import { daysToLimitSpread, gelKgSpread, type UncertainBox } from '../climate/enclosure-spread.ts'
import { timeConstantDays, type Enclosure } from '../climate/enclosure.ts'
import { toth } from '../climate/isotherm-equations.ts'
import { permeanceGPerM2DayKPa, wallAsAirChangesPerDay } from '../climate/permeation.ts'
import { hysteresisCaution, reservoirGPerKgPercent } from '../climate/reservoir.ts'
import { outsideRhPercent } from '../climate/seasonal.ts'
import type { Known } from '../knowledge/knowledge.ts'

/** A quantity as somebody gave it: the figure, and the ends of its range where they were given too. */
export interface Told {
  readonly nominal: number
  readonly low: number | null
  readonly high: number | null
}

export interface GelAsked {
  readonly volumeL: number
  readonly airChangesPerDay: Told
  /** Film round or as the box; null where its walls let nothing through. */
  readonly film: { readonly gPerM2Day: number; readonly areaM2: number } | null
  readonly outsideRhPercent: Told
  /** The room's yearly swing about that [%], and in how many days it is dampest; null for a room that stays as it is. */
  readonly season: { readonly swingRhPercent: number; readonly dampestInDays: number } | null
  readonly startRhPercent: number
  readonly limitRhPercent: number
  readonly temperatureC: number
  /** Null where the knowledge's is used. */
  readonly reservoirGPerKgPercent: Told | null
  readonly gelKg: number | null
  readonly days: number | null
}

export type GelCaution = 'hysteresis' | 'beyond-straight' | 'leaky' | 'no-room'

export interface GelSource {
  readonly work: string
  readonly place: string | null
  readonly known: Known
}

type Spread = Quantiles & { readonly nominal: number }

/** What a box does, and how well that can be told. `Infinity`: never, or no amount of gel. */
export interface GelReckoning {
  readonly asked: GelAsked
  readonly airChangesPerDay: Range
  readonly wallAirChangesPerDay: number
  readonly outsideRhPercent: Range
  readonly startRhPercent: Range
  /** Null where it is as the asker gave it. */
  readonly reservoir: { readonly gPerKgPercent: Range; readonly source: GelSource | null }
  readonly state: 'reached' | 'never-reached' | 'already-over'
  readonly timeConstantDays: number | null
  readonly daysToLimit: Spread | null
  readonly gelKg: Spread | null
  /** The same with a bent isotherm; null where it does not hold for the box, or no gel was given. */
  readonly byIsotherm: {
    readonly isotherm: string
    readonly source: GelSource
    readonly reservoirGPerKgPercent: number
    readonly daysToLimit: number
  } | null
  readonly cautions: readonly GelCaution[]
}

const fromTold = ({ nominal, low, high }: Told, byDefault: (nominal: number) => Range): Range => {
  const spread = byDefault(nominal)
  return { low: low ?? Math.min(spread.low, nominal), nominal, high: high ?? Math.max(spread.high, nominal) }
}

const withinFactor =
  (factor: number) =>
  (nominal: number): Range => ({ low: nominal / factor, nominal, high: nominal * factor })

const withinPoints =
  (points: number) =>
  (nominal: number): Range => ({
    low: Math.max(0, nominal - points),
    nominal,
    high: Math.min(100, nominal + points),
  })

function reservoirOf(asked: GelAsked, knowledge: Figures): GelReckoning['reservoir'] {
  const value = (id: string) => figureValue(knowledge, id)
  const kept = {
    low: value('gel-reservoir-low'),
    nominal: value('gel-reservoir'),
    high: value('gel-reservoir-high'),
  }
  if (asked.reservoirGPerKgPercent === null) {
    const { source, known } = knowledge.figures['gel-reservoir']!
    return { gPerKgPercent: kept, source: { ...source, known } }
  }
  const inProportion = (nominal: number) => ({
    low: (nominal * kept.low) / kept.nominal,
    nominal,
    high: (nominal * kept.high) / kept.nominal,
  })
  return { gPerKgPercent: fromTold(asked.reservoirGPerKgPercent, inProportion), source: null }
}

/** How many times as long as the straight line has it a bent isotherm is followed; none bends that far. */
const longestTimes = 5

function byBentIsotherm(
  asked: GelAsked,
  box: Enclosure,
  straightDays: number,
  knowledge: Figures,
): GelReckoning['byIsotherm'] {
  const { startRhPercent, limitRhPercent, temperatureC, season } = asked
  if (straightDays === 0 || straightDays === Infinity) return null
  const reservoir = reservoirGPerKgPercent(toth, startRhPercent, limitRhPercent, temperatureC)
  if (Number.isNaN(reservoir)) return null
  const room = seasonOf(asked)
  const outside = season === null ? () => room.meanRhPercent : (day: number) => outsideRhPercent(room, day)
  const run = solveEnclosure(
    box,
    sorptionOf(toth, temperatureC),
    outside,
    startRhPercent,
    limitRhPercent,
    longestTimes * straightDays,
  )
  if (run.ended !== 'at-limit') return null
  const { source, known } = knowledge.figures['toth-saturation']!
  return {
    isotherm: toth.id,
    source: { ...source, known },
    reservoirGPerKgPercent: reservoir,
    daysToLimit: run.days,
  }
}

const seasonOf = ({ outsideRhPercent, season }: GelAsked) => ({
  meanRhPercent: outsideRhPercent.nominal,
  swingRhPercent: season?.swingRhPercent ?? 0,
  highestOnDay: season?.dampestInDays ?? 0,
})

function cautionsOf(
  asked: GelAsked,
  reckoned: Omit<GelReckoning, 'cautions'>,
  knowledge: Figures,
): GelCaution[] {
  const { startRhPercent, limitRhPercent, volumeL } = asked
  const value = (id: string) => figureValue(knowledge, id)
  const loop = { from: value('gel-hysteresis-rh-low'), to: value('gel-hysteresis-rh-high') }
  const cautions: GelCaution[] = []
  const touching = hysteresisCaution(startRhPercent, limitRhPercent, loop)
  if (touching !== null) cautions.push(touching)
  if (limitRhPercent > value('gel-reservoir-rh-high')) cautions.push('beyond-straight')
  const inflow = reckoned.airChangesPerDay.nominal + reckoned.wallAirChangesPerDay
  if (reckoned.state !== 'never-reached' && inflow > value('air-exchange-class-two')) cautions.push('leaky')
  const most = Math.max(asked.gelKg ?? 0, reckoned.gelKg?.nominal ?? 0)
  if (most !== Infinity && most > (volumeL / 1000) * value('gel-bulk-density')) cautions.push('no-room')
  return cautions
}

/** How long gel keeps a box below its limit, or how much gel a span needs; with the spread that what is known leaves. */
export function reckonGel(asked: GelAsked, knowledge: Figures): GelReckoning {
  const value = (id: string) => figureValue(knowledge, id)
  const { film, volumeL, temperatureC, gelKg, days, limitRhPercent } = asked
  const permeance =
    film && permeanceGPerM2DayKPa(film.gPerM2Day, value('film-test-temperature'), value('film-test-rh'))
  const wallGPerDayKPa = film === null || permeance === null ? 0 : permeance * film.areaM2
  const airChangesPerDay = fromTold(
    asked.airChangesPerDay,
    withinFactor(value('air-exchange-written-spread')),
  )
  const reservoir = reservoirOf(asked, knowledge)
  const start: Told = { nominal: asked.startRhPercent, low: null, high: null }
  const season = seasonOf(asked)
  const outside = fromTold(asked.outsideRhPercent, withinPoints(value('room-rh-written-spread')))
  const box: UncertainBox = {
    volumeL,
    gelKg: gelKg ?? 0,
    temperatureC,
    wallGPerDayKPa,
    airChangesPerDay,
    reservoirGPerKgPercent: reservoir.gPerKgPercent,
    startRhPercent: fromTold(start, withinPoints(value('gel-start-rh-spread'))),
    startDay: 0,
    room: { ...season, meanRhPercent: outside },
  }
  const nominal: Enclosure = {
    ...box,
    airChangesPerDay: airChangesPerDay.nominal,
    reservoirGPerKgPercent: reservoir.gPerKgPercent.nominal,
  }
  const over = asked.startRhPercent >= limitRhPercent
  const never = season.meanRhPercent + Math.abs(season.swingRhPercent) <= limitRhPercent
  const daysToLimit = gelKg === null ? null : daysToLimitSpread(box, limitRhPercent)
  const reckoned: Omit<GelReckoning, 'cautions'> = {
    asked,
    airChangesPerDay,
    wallAirChangesPerDay: wallAsAirChangesPerDay(wallGPerDayKPa, volumeL, temperatureC),
    outsideRhPercent: outside,
    startRhPercent: box.startRhPercent,
    reservoir,
    state: over ? 'already-over' : never || daysToLimit?.nominal === Infinity ? 'never-reached' : 'reached',
    timeConstantDays: gelKg === null ? null : timeConstantDays(nominal),
    daysToLimit,
    gelKg: days === null ? null : gelKgSpread(box, limitRhPercent, days),
    byIsotherm: daysToLimit && byBentIsotherm(asked, nominal, daysToLimit.nominal, knowledge),
  }
  return { ...reckoned, cautions: cautionsOf(asked, reckoned, knowledge) }
}
