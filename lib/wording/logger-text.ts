import type { Excursion } from '../logger/excursions.ts'
import type { LogForm } from '../logger/read/log-form.ts'
import type { Beyond } from '../logger/beyond.ts'
import type { LogStatistics } from '../logger/statistics.ts'
import type { FlatFloor } from '../logger/flat-floor.ts'
import type { NoSeasonalBand, SeasonalBand } from '../logger/seasonal-band.ts'
import type { SensorError } from '../logger/sensor-error.ts'
import type { Figure, Knowledge } from '../knowledge/knowledge.ts'
import { numberWords } from './band.ts'
import { hoursWords } from './box-excursion.ts'
import { instantWords, lastingWords, stretchWords } from './chart-time.ts'
import { shortCitation } from './citation.ts'
import { figureWords } from './figure.ts'
import { countWords } from './list.ts'
import { wrap } from './wrap.ts'

/** What the readings of one sensor say, as far as words are made of it. */
export interface LogInWords {
  readonly statistics: LogStatistics
  readonly excursions: readonly Excursion[]
  readonly floor: FlatFloor | null
  readonly error: SensorError
  readonly overLimit: NearLimit | null
  readonly underLimit: NearLimit | null
  readonly seasonal:
    | { readonly ok: true; readonly value: SeasonalBand }
    | { readonly ok: false; readonly problems: NoSeasonalBand }
  readonly countsDoubtful: boolean
}

interface NearLimit {
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
) =>
  `${chanceWords(chance)} that a reading of ${percent(readRhPercent)} was really ${side} ${percent(limitRhPercent)}`

/** Where the readings lie and what is missing. */
function spanWords(
  { readings, fromMs, toMs, intervalMs, gaps, coveragePercent }: LogStatistics,
  zone: string,
): string {
  if (fromMs === null || toMs === null) return 'No humidity was read.'
  const often = intervalMs > 0 ? `, one every ${lastingWords(intervalMs)}` : ''
  const when = fromMs === toMs ? instantWords(fromMs, zone) : stretchWords(fromMs, toMs, zone)
  const longest = gaps.toSorted((a, b) => b.toMs - b.fromMs - (a.toMs - a.fromMs))[0]
  const missing =
    longest === undefined
      ? 'nothing is missing'
      : `${countWords(gaps.length, 'gap')}, the longest ${lastingWords(longest.toMs - longest.fromMs)} from ${instantWords(longest.fromMs, zone)}; ${numberWords(coveragePercent)} % of the time was read`
  return `${countWords(readings, 'reading')}${often}, ${when} (${zone}); ${missing}.`
}

function beyondWords(
  beyond: Beyond,
  worst: Excursion | undefined,
  side: 'above' | 'below',
  zone: string,
): string {
  const limit = percent(beyond.limitRhPercent)
  const unknown =
    beyond.hoursCannotTell > 0
      ? ` For ${hoursWords(beyond.hoursCannotTell)} nobody can tell: the logger does not read so low.`
      : ''
  if (worst === undefined) return `Never ${side} ${limit}.${unknown}`
  const times = countWords(beyond.excursions, 'time')
  const longest =
    beyond.longest && beyond.excursions > 1 ? `, the longest ${hoursWords(beyond.longest.hours)}` : ''
  return `${hoursWords(beyond.hours)} ${side} ${limit}, ${share(beyond.percentOfTime)} of the time, in ${times}${longest}; worst ${percent(worst.worstRhPercent)} on ${instantWords(worst.worstAtMs, zone)}. Together ${numberWords(beyond.doseRhPercentHours)} % h beyond it.${unknown}`
}

const share = (value: number) => (value > 0 && value < 1 ? 'less than 1 %' : `${Math.round(value)} %`)

function errorWords(beyond: Beyond, { rhPercent }: SensorError): string {
  const { least, most } = beyond.hoursWithError
  return `A sensor that is off by ${percent(rhPercent)} may make that anything from ${least === 0 ? 'nothing' : hoursWords(least)} to ${most === 0 ? 'nothing' : hoursWords(most)}.`
}

function worstOf(excursions: readonly Excursion[], kind: Excursion['kind']): Excursion | undefined {
  const sign = kind === 'above' ? 1 : -1
  return excursions
    .filter((one) => one.kind === kind)
    .toSorted((a, b) => sign * (b.worstRhPercent - a.worstRhPercent) || a.fromMs - b.fromMs)[0]
}

function sideLines(told: LogInWords, side: 'above' | 'below', zone: string): readonly string[] {
  const beyond = side === 'above' ? told.statistics.humidity?.above : told.statistics.humidity?.below
  const near = side === 'above' ? told.overLimit : told.underLimit
  if (!beyond) return []
  return [
    beyondWords(beyond, worstOf(told.excursions, side), side, zone),
    ...(beyond.hoursWithError.most > 0 ? [errorWords(beyond, told.error)] : []),
    ...(near && near.chance >= 0.005
      ? [`${nearLimitWords(near, side === 'above' ? 'over' : 'under')}.`]
      : []),
  ]
}

function courseWords({ humidity }: LogStatistics, zone: string): readonly string[] {
  if (!humidity) return []
  const atMost = humidity.atMost ? 'at most ' : ''
  const [low, , high] = humidity.percentiles
  const most =
    low && high && low.percent === 7 && high.percent === 93
      ? `; seven readings in a hundred lie below ${percent(low.rhPercent)}, seven above ${percent(high.rhPercent)}`
      : ''
  const change = humidity.greatestChange
  return [
    `Mean ${atMost}${percent(humidity.mean)}, from ${atMost}${percent(humidity.min)} to ${percent(humidity.max)}${most}.`,
    ...(humidity.day
      ? [
          `Dampest 24 hours ${percent(humidity.day.highest.rhPercent)}, to ${instantWords(humidity.day.highest.toMs, zone)}; driest ${percent(humidity.day.lowest.rhPercent)}.`,
        ]
      : []),
    ...(change
      ? [
          `Greatest change within 24 hours: ${percent(change.fromRhPercent)} to ${percent(change.toRhPercent)}, ${stretchWords(change.fromMs, change.toMs, zone)}.`,
        ]
      : []),
  ]
}

function airWords({ temperatureC, moisture }: LogStatistics): readonly string[] {
  if (!temperatureC) return ['No temperature was read.']
  const celsius = `Temperature ${numberWords(temperatureC.mean)} °C in the mean, ${numberWords(temperatureC.min)} to ${numberWords(temperatureC.max)} °C.`
  if (!moisture) return [celsius]
  const { absoluteHumidityGPerM3: water, dewPointC, frostPointC } = moisture
  const point =
    frostPointC.mean === null
      ? dewPointC.mean === null
        ? ''
        : `; dew point ${numberWords(dewPointC.mean)} °C`
      : `; frost point ${numberWords(frostPointC.mean)} °C`
  return [celsius, `${numberWords(water.mean)} g of water in a cubic metre of air${point}.`]
}

function seasonalWords(seasonal: LogInWords['seasonal']): readonly string[] {
  if (!seasonal.ok) {
    const { problems } = seasonal
    return problems.because === 'too-short'
      ? []
      : [`No seasonal band: only ${numberWords(problems.coveragePercent)} % of the time was read.`]
  }
  const { lowRhPercent, highRhPercent } = seasonal.value
  return [
    `About its seasonal level it swings from ${numberWords(lowRhPercent)} to +${numberWords(highRhPercent)} %. That is told for organic materials, by a standard known from memory; it says nothing of metal kept dry.`,
  ]
}

function floorWords({ atRhPercent, share: part, from }: FlatFloor): string {
  const how = from === 'register' ? 'as was said of it' : 'as its flat line shows'
  return `This logger reads nothing below ${percent(atRhPercent)}, ${how}: ${share(100 * part)} of its readings lie there, and the air was as dry as that or drier.`
}

/** One sensor's readings in plain words, a statement each. */
export function logLines(told: LogInWords, zone: string): readonly string[] {
  const { statistics } = told
  return [
    spanWords(statistics, zone),
    ...(told.countsDoubtful ? ['So much is missing that hours and counts below hardly stand.'] : []),
    ...(told.floor ? [floorWords(told.floor)] : []),
    ...sideLines(told, 'above', zone),
    ...sideLines(told, 'below', zone),
    ...courseWords(statistics, zone),
    ...airWords(statistics),
    ...seasonalWords(told.seasonal),
    ...(statistics.implausible > 0
      ? [`${countWords(statistics.implausible, 'value')} can be no humidity and were left out.`]
      : []),
  ]
}

/** The same for a terminal, a statement a line. */
export function logText(told: LogInWords, zone: string): string {
  return logLines(told, zone)
    .map((line) => wrap('  ', line))
    .join('\n')
}

/** How the moments of a file were understood, where nobody said it. */
export function zoneSaid({ timeZone: { zone, how } }: LogForm): string {
  switch (how) {
    case 'in-stamps':
      return 'Its stamps name their own distance from UTC.'
    case 'in-heading':
      return `Read by the clock its heading names, ${zone}.`
    case 'answered':
      return `Read by the clock of ${zone}, as told.`
    case 'clock-not-changed':
      return `Read by ${zone}: its clock was left alone when others were changed. Give --time-zone where that is wrong.`
    case 'assumed':
      return `It names no time zone and none was given: read as ${zone}. Give --time-zone, as Europe/London, where that is wrong.`
  }
}

/** That a limit was taken where none was given, and whose it is. */
export function limitTakenWords(figure: Figure, knowledge: Knowledge): string {
  const work = knowledge.works[figure.source.work]
  const whose = work === undefined ? '' : `, ${shortCitation(work)}`
  return `No limit was given: held against ${figureWords(figure, knowledge)} (${figure.says}${whose}).`
}
