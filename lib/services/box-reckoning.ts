import type { Quantiles, Range } from '../base/range.ts'
import type { ClosedBox, Day, Fan, Sighting, Surroundings } from '../boxes/box.ts'
import { departureOf, type Departure } from '../boxes/departure.ts'
import { forecast } from '../boxes/forecast.ts'
import { lookAheadDays } from '../boxes/forecast-limit.ts'
import { learnLeak, type LeakEstimate } from '../boxes/learn.ts'
import type { LeakPrior } from '../boxes/leak-prior.ts'
import { renewalOf, type Renewal } from '../boxes/renewal.ts'
import { dayOfNumber } from './box-sightings.ts'
import type { BoxOutlook, BoxReckoned } from './box-outlook.ts'

/** A box and everything its humidity is reckoned from. */
export interface Reckonable {
  readonly box: ClosedBox
  readonly surroundings: Surroundings
  readonly sightings: readonly Sighting[]
}

/** What does not change until the box is seen again: its leak, when it comes to its limit, whether it has left its forecast. */
export interface Learnt {
  /** As it is since it left its forecast, where it did. */
  readonly box: ClosedBox
  readonly estimate: LeakEstimate
  readonly renewal: Renewal | null
  readonly departure: Departure | null
}

/** How far the fan on a box's page reaches [d]. */
const fanDays = 400

/** On the day of the gel itself strips and loggers read what was there before it: they are no word of the new gel. */
export const sinceStart = ({ box, sightings }: Reckonable): readonly Sighting[] =>
  sightings.filter(({ on }) => Math.floor(on) > box.startedOn)

/** So many days after a departure, its readings tell best on which day it began. */
const tellingDays = [45, 60, 90]

/** A box that left its forecast; when it did so is looked for again among the readings about that time. */
function departure(
  { box, surroundings }: Reckonable,
  seen: readonly Sighting[],
  prior: LeakPrior,
): Departure | null {
  const found = departureOf(box, surroundings, seen, prior)
  if (found === null) return null
  for (const days of tellingDays) {
    const until = seen.filter(({ on }) => on <= found.sinceRange.high + days)
    if (until.length === seen.length) break
    const sharper = departureOf(box, surroundings, until, prior)
    if (sharper !== null)
      return { ...found, since: sharper.since, sinceRange: sharper.sinceRange, factor: sharper.factor }
  }
  return found
}

/** The box as it has been since it left its forecast: a leakier one, that began with what it held then. */
function sinceDeparture(
  { box, surroundings, sightings }: Reckonable,
  prior: LeakPrior,
  { since, factor }: Departure,
): { readonly from: Reckonable; readonly prior: LeakPrior } | null {
  const startRhPercent = heldOn(sightings, since)
  if (startRhPercent === null) return null
  const { low, nominal, high } = prior.airChangesPerDay
  const airChangesPerDay = {
    low: low * factor.low,
    nominal: nominal * factor.nominal,
    high: high * factor.high,
  }
  const began = { ...box, startedOn: Math.floor(since), startRhPercent }
  return { from: { box: began, surroundings, sightings }, prior: { ...prior, airChangesPerDay } }
}

/** What was last read of the box before a day, as a range; null where nothing was. */
function heldOn(sightings: readonly Sighting[], day: Day): Range | null {
  const last = sightings.findLast(({ kind, on }) => on <= day + 1 && (kind === 'logger' || kind === 'strip'))
  if (last?.kind === 'logger') {
    const { rhPercent: nominal, errorRhPercent: error } = last
    return { low: Math.max(0, nominal - error), nominal, high: Math.min(100, nominal + error) }
  }
  if (last?.kind !== 'strip') return null
  const { lowRhPercent: low, highRhPercent: high } = last
  return { low, nominal: (low + high) / 2, high }
}

export function learnBox(of: Reckonable, ofPrior: LeakPrior, today: Day): Learnt {
  const left = departure(of, sinceStart(of), ofPrior)
  const { from, prior } = (left && sinceDeparture(of, ofPrior, left)) ?? { from: of, prior: ofPrior }
  const { box, surroundings } = from
  const estimate = learnLeak(box, surroundings, sinceStart(from), prior)
  // From when it was last seen, so that a date that has passed is told as it was, and need not be reckoned anew each day.
  const days = lookAheadDays + Math.max(0, today - estimate.asOf)
  return {
    box,
    estimate,
    renewal: renewalOf(box, surroundings, estimate, { from: estimate.asOf, days }),
    departure: left,
  }
}

function airChangesFrom({ sightings, saysLittle, from }: LeakEstimate): BoxOutlook['airChangesFrom'] {
  if (!saysLittle && sightings.logger > 0) return 'logger'
  if (!saysLittle && sightings.rounds > 0) return 'rounds'
  switch (from) {
    case 'written':
      return 'written'
    case 'trade':
      return 'assumed'
    case 'earlier-gel':
      return 'earlier-gel'
    default:
      return 'like-boxes'
  }
}

const dayOrNull = (day: Day | null) => (day === null ? null : dayOfNumber(day))

function renewOn({ renewBy, crossing }: Renewal): BoxOutlook['renewOn'] {
  const { p10, p50, p90 } = crossing
  return { early: dayOrNull(renewBy ?? p10), likely: dayOrNull(p50), late: dayOrNull(p90) }
}

function daysToLimit({ crossing }: Renewal, today: Day): BoxOutlook['daysToLimit'] {
  const left = (day: Day | null) => (day === null ? null : Math.max(0, Math.round((day - today) * 10) / 10))
  return { p10: left(crossing.p10), p50: left(crossing.p50), p90: left(crossing.p90) }
}

const tenths = (value: number) => Math.round(value * 10) / 10

/** What is likely of a box today and from today on. */
export function outlookOf({ surroundings }: Reckonable, learnt: Learnt, today: Day): BoxReckoned {
  const { box, estimate, renewal, departure: left } = learnt
  const now = forecast(box, surroundings, estimate, { from: today, days: 0 })
  const nowRhPercent: Quantiles = {
    p10: tenths(now.p10[0]!),
    p50: tenths(now.p50[0]!),
    p90: tenths(now.p90[0]!),
  }
  let fan: Fan | null = null
  return {
    airChangesPerDay: estimate.airChangesPerDay,
    airChangesFrom: airChangesFrom(estimate),
    surroundings,
    // Long to reckon and seen on one page only.
    get fan() {
      return (fan ??= forecast(box, surroundings, estimate, { from: today, days: fanDays }))
    },
    nowRhPercent,
    limitRhPercent: box.limitRhPercent,
    daysToLimit: renewal && daysToLimit(renewal, today),
    renewOn: renewal && renewOn(renewal),
    departedSince: left && dayOfNumber(left.since),
    modelDoubtful: estimate.modelMayNotHold !== null,
    misfit: estimate.modelMayNotHold,
    littleBecause: estimate.littleBecause,
    renewalBecause: renewal && { because: renewal.because, guardRhPercent: renewal.guardRhPercent },
    closed: box,
    estimate,
    renewal,
    departure: left,
  }
}
