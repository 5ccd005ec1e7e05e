import type { Beyond } from '../logger/beyond.ts'
import type { Excursion } from '../logger/excursions.ts'
import type { SensorError } from '../logger/sensor-error.ts'
import { numberWords } from './band.ts'
import { hoursWords } from './box-excursion.ts'
import { instantWords } from './chart-time.ts'
import { countWords } from './list.ts'

/** A reading within a limit, and the chance that it was beyond it. */
export interface NearLimit {
  readonly readRhPercent: number
  readonly limitRhPercent: number
  readonly chance: number
}

const percent = (value: number) => `${numberWords(value)} %`

/** `9 % chance`, `less than 1 % chance`: a chance is never told as none or as certain. */
export function chanceWords(chance: number): string {
  const whole = Math.round(100 * chance)
  if (whole < 1) return 'less than 1 % chance'
  return whole > 99 ? 'more than 99 % chance' : `${whole} % chance`
}

/** `9 % chance that a reading of 13 % was really over 15 %`. */
export const nearLimitWords = (
  { readRhPercent, limitRhPercent, chance }: NearLimit,
  side: 'over' | 'under',
): string =>
  `${chanceWords(chance)} that a reading of ${percent(readRhPercent)} was really ${side} ${percent(limitRhPercent)}`

/** What was read against one end of the band. */
export interface AgainstLimit {
  readonly side: Excursion['kind']
  readonly beyond: Beyond
  readonly excursions: readonly Excursion[]
  readonly near: NearLimit | null
  readonly error: SensorError
}

/** How long, how often and how far beyond a limit, and how sure that is; a statement each. */
export function limitLines(against: AgainstLimit, zone: string): readonly string[] {
  const { side, beyond, near, error } = against
  const { least, most } = beyond.hoursWithError
  return [
    `${beyondWords(against, zone)}${cannotTellWords(beyond)}`,
    ...(most > 0
      ? [
          `A sensor that is off by ${percent(error.rhPercent)} may make that anything from ${noneOr(least)} to ${noneOr(most)}.`,
        ]
      : []),
    ...(near && near.chance >= leastTold
      ? [`${nearLimitWords(near, side === 'above' ? 'over' : 'under')}.`]
      : []),
  ]
}

/** A chance smaller than this is not told [one]. */
const leastTold = 0.005

function beyondWords({ side, beyond, excursions, error }: AgainstLimit, zone: string): string {
  const limit = percent(beyond.limitRhPercent)
  const worst = worstOf(excursions, side)
  if (worst === undefined) {
    const surely = beyond.hoursWithError.most === 0 && beyond.hoursCannotTell === 0
    return `Never ${side} ${limit}${surely ? `, not even if the sensor is off by ${percent(error.rhPercent)}` : ''}.`
  }
  const { longest } = beyond
  const often =
    beyond.excursions === 1 || !longest
      ? 'at one time'
      : `at ${countWords(beyond.excursions, 'time')}, the longest ${hoursWords(longest.hours)}`
  const until = worst.brokenOff ? ', and still so when the readings end or break off' : ''
  return `${hoursWords(beyond.hours)} ${side} ${limit}, ${shareWords(beyond.percentOfTime)} of the time, ${often}; worst ${percent(worst.worstRhPercent)} on ${instantWords(worst.worstAtMs, zone)}${until}. In all ${doseWords(beyond.doseRhPercentHours)} beyond it.`
}

/** What lay beyond a limit times how long. */
const doseWords = (percentHours: number) =>
  `${percentHours < 100 ? numberWords(percentHours) : Math.round(percentHours).toLocaleString('en-GB')} %·h`

function cannotTellWords({ hoursCannotTell }: Beyond): string {
  return hoursCannotTell > 0
    ? ` For ${hoursWords(hoursCannotTell)} nobody can tell: the logger does not read so low.`
    : ''
}

const noneOr = (hours: number) => (hours === 0 ? 'nothing' : hoursWords(hours))

export const shareWords = (value: number) =>
  value > 0 && value < 1 ? 'less than 1 %' : `${Math.round(value)} %`

function worstOf(excursions: readonly Excursion[], kind: Excursion['kind']): Excursion | undefined {
  const sign = kind === 'above' ? 1 : -1
  return excursions
    .filter((one) => one.kind === kind)
    .toSorted((a, b) => sign * (b.worstRhPercent - a.worstRhPercent) || a.fromMs - b.fromMs)[0]
}
