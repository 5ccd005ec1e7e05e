import type { Range } from '../../lib/base/range.ts'
import type { ClosedBox, Sighting, Surroundings } from '../../lib/boxes/box.ts'
import type { Allowance } from '../../lib/boxes/leak-prior.ts'
import { drawn, type Drawn } from './chance-drawn.ts'
import { realCourse, storeWarmth } from './real-box.ts'
import { potentialGel, tothGel } from './real-gel.ts'
import { roomAir } from './room-air.ts'
import { loggerReads, stripReads } from './sensor-read.ts'

/** Water in a cubic metre of saturated air at 20 °C [g], as tables print it: not taken from the code under test. */
const saturationGPerM3 = 17.29

export interface Stated {
  readonly allowance: Allowance
  /** Air exchange of boxes of the kind, and the reservoir of their gel. */
  readonly airChangesPerDay: Range
  readonly reservoirGPerKgPercent: Range
}

/** An invented box, what is stated of it, and what truly happened. */
export interface DrawnBox {
  readonly chance: Drawn
  readonly box: ClosedBox
  readonly surroundings: Surroundings & { readonly swingErrorRhPercent: number }
  readonly airChangesPerDay: number
  /** Humidity inside, day by day since the start. */
  readonly truth: Float64Array
}

export interface Wanted {
  readonly days: number
  /** Straight: the leak model itself. Real: a bent isotherm that remembers, in a store with seasons of temperature. */
  readonly gel: 'straight' | 'real'
  /** From some day on the box leaks so many times more. */
  readonly loose?: { readonly day: number; readonly factor: number }
  /** Else drawn from the trade's range. */
  readonly airChangesPerDay?: number
  /** Else drawn too: boxes of one room stand in one air and are filled from one sack. */
  readonly room?: DrawnRoom
}

/** An invented room, and the gel its boxes are filled with. */
export interface DrawnRoom {
  readonly surroundings: Surroundings & { readonly swingErrorRhPercent: number }
  readonly startedOn: number
  readonly air: Float64Array
  readonly reservoir: number
}

export function drawnRoom(chance: Drawn, stated: Stated, days: number): DrawnRoom {
  const reservoir = chance.within(stated.reservoirGPerKgPercent)
  const startedOn = chance.whole(18_000, 18_365)
  const mean = chance.between(45, 62)
  const [half, from] = chance.happens(0.5) ? [8, 'written' as const] : [3, 'logger' as const]
  const surroundings = {
    meanRhPercent: { low: mean - half, nominal: mean, high: mean + half },
    swingRhPercent: chance.between(4, 12),
    swingErrorRhPercent: stated.allowance.swingErrorRhPercent[from],
    highestOn: 220,
    from,
  }
  const air = roomAir(surroundings, stated.allowance, { from: startedOn, count: days }, chance)
  return { surroundings, startedOn, air, reservoir }
}

/** A box drawn from what is stated: every number from its range, room and weather with it. */
export function drawnBox(seed: number, stated: Stated, wanted: Wanted): DrawnBox {
  const chance = drawn(seed)
  const { days, gel, loose } = wanted
  const volumeL = Math.exp(chance.between(Math.log(3), Math.log(60)))
  const gelKg = volumeL * Math.exp(chance.between(Math.log(0.01), Math.log(0.05)))
  const airChangesPerDay = wanted.airChangesPerDay ?? chance.byFactor(stated.airChangesPerDay)
  const { surroundings, startedOn, air, reservoir } = wanted.room ?? drawnRoom(chance, stated, days)
  const startRhPercent = { low: 2, nominal: 5, high: 8 }
  const start = Math.max(0.2, chance.within(startRhPercent))
  const leak = (day: number) => airChangesPerDay * (loose && day >= loose.day ? loose.factor : 1)
  const truth =
    gel === 'straight'
      ? straightCourse({ volumeL, gelKg, reservoir, start, leak }, air)
      : realCourse(
          {
            volumeL,
            gelKg,
            leak,
            startRhPercent: start,
            gel: chance.happens(0.5) ? potentialGel : tothGel,
            hysteresis: 0.15,
            temperatureC: storeWarmth(
              { meanC: 20, swingC: chance.between(2, 6), warmestOn: 205 },
              { from: startedOn, count: days },
              chance.normal,
            ),
          },
          air,
        )
  const box: ClosedBox = {
    name: `TW-${seed}`,
    model: null,
    room: null,
    volumeL,
    gelKg,
    reservoirGPerKgPercent: stated.reservoirGPerKgPercent,
    airChangesPerDay: null,
    temperatureC: 20,
    startedOn,
    startRhPercent,
    limitRhPercent: 15,
  }
  return { chance, box, surroundings, airChangesPerDay, truth }
}

interface Straight {
  readonly volumeL: number
  readonly gelKg: number
  readonly reservoir: number
  readonly start: number
  readonly leak: (day: number) => number
}

/** The balance of water day by day, room and box straight through each day. */
function straightCourse(
  { volumeL, gelKg, reservoir, start, leak }: Straight,
  air: Float64Array,
): Float64Array {
  const airHolds = ((volumeL / 1000) * saturationGPerM3) / 100
  let inside = start
  return Float64Array.from(air, (outside, day) => {
    const before = inside
    const pace = (leak(day) * airHolds) / (airHolds + gelKg * reservoir)
    inside = outside + (inside - outside) * Math.exp(-pace)
    return before
  })
}

/** A logger in the box from its first day to this one, a mean a day, as good as data sheets say. */
export function logged({ box, truth, chance }: DrawnBox, stated: Stated, days: number): readonly Sighting[] {
  const from = box.startedOn
  return loggerReads(
    truth,
    { from, firstDay: from, lastDay: from + days },
    {
      errorRhPercent: 3,
      floorRhPercent: 1,
      driftRhPercentPerYear: stated.allowance.driftRhPercentPerYear,
      wanderRhPercent: stated.allowance.wanderRhPercent,
    },
    chance,
  )
}

/** A strip read on rounds four times a year. */
export function walkedBy(
  { box, truth, chance }: DrawnBox,
  stated: Stated,
  days: number,
): readonly Sighting[] {
  const from = box.startedOn
  return stripReads(
    truth,
    { from, firstDay: from + 5, lastDay: from + days, everyDays: 91 },
    { errorRhPercent: 5, readingRhPercent: stated.allowance.stripReadingRhPercent },
    chance,
  )
}
