import type { Figure, Knowledge } from '../knowledge/knowledge.ts'
import type { Excursion } from '../logger/excursions.ts'
import type { FlatFloor } from '../logger/flat-floor.ts'
import type { LogForm } from '../logger/read/log-form.ts'
import type { NoSeasonalBand, SeasonalBand } from '../logger/seasonal-band.ts'
import type { SensorError } from '../logger/sensor-error.ts'
import type { LogStatistics } from '../logger/statistics.ts'
import { numberWords } from './band.ts'
import { instantWords, lastingWords, stretchWords } from './chart-time.ts'
import { shortCitation } from './citation.ts'
import { figureWords } from './figure.ts'
import { countWords } from './list.ts'
import { limitLines, shareWords, type NearLimit } from './logger-limits.ts'
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

const percent = (value: number) => `${numberWords(value)} %`
const degrees = (value: number) => `${numberWords(value)} °C`

/** When it was read, and what is missing. */
function spanWords(statistics: LogStatistics, zone: string): string {
  const { readings, fromMs, toMs, intervalMs, gaps, coveragePercent } = statistics
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

function courseLines({ humidity }: LogStatistics, zone: string): readonly string[] {
  if (!humidity) return []
  const atMost = humidity.atMost ? 'at most ' : ''
  const [low, , high] = humidity.percentiles
  const most =
    low?.percent === 7 && high?.percent === 93
      ? `; seven readings in a hundred lie at ${percent(low.rhPercent)} or below, seven at ${percent(high.rhPercent)} or above`
      : ''
  const { day, greatestChange: change } = humidity
  return [
    `Mean ${atMost}${percent(humidity.mean)}, from ${atMost}${percent(humidity.min)} to ${percent(humidity.max)}${most}.`,
    ...(day && day.highest.toMs !== day.lowest.toMs
      ? [
          `The dampest 24 hours had ${percent(day.highest.rhPercent)} in the mean, up to ${instantWords(day.highest.toMs, zone)}; the driest ${percent(day.lowest.rhPercent)}.`,
        ]
      : []),
    ...(change && change.fromRhPercent !== change.toRhPercent
      ? [
          `The greatest change within 24 hours went from ${percent(change.fromRhPercent)} to ${percent(change.toRhPercent)}, ${stretchWords(change.fromMs, change.toMs, zone)}.`,
        ]
      : []),
  ]
}

function airLines({ temperatureC, moisture }: LogStatistics): readonly string[] {
  if (!temperatureC) return ['No temperature was read.']
  const { mean, min, max } = temperatureC
  const celsius =
    min === max
      ? `Temperature ${degrees(min)} throughout`
      : `Temperature ${degrees(mean)} in the mean, from ${degrees(min)} to ${degrees(max)}`
  if (!moisture) return [`${celsius}.`]
  const { absoluteHumidityGPerM3, dewPointC, frostPointC } = moisture
  const point =
    frostPointC.mean !== null
      ? `; frost would form at ${degrees(frostPointC.mean)}`
      : dewPointC.mean === null
        ? ''
        : `; dew would form at ${degrees(dewPointC.mean)}`
  return [
    `${celsius}; ${numberWords(absoluteHumidityGPerM3.mean)} g of water in a cubic metre of air${point}.`,
  ]
}

function seasonalLines(seasonal: LogInWords['seasonal']): readonly string[] {
  if (!seasonal.ok) {
    const { problems } = seasonal
    if (problems.because === 'too-short') return []
    return [`No seasonal band: only ${numberWords(problems.coveragePercent)} % of the time was read.`]
  }
  const { lowRhPercent, highRhPercent } = seasonal.value
  return [
    `About its seasonal level it swings from ${numberWords(lowRhPercent)} to +${numberWords(highRhPercent)} %. That is told for organic materials, by a standard known from memory; it says nothing of metal that is kept dry.`,
  ]
}

function floorWords({ atRhPercent, share, from }: FlatFloor): string {
  const how = from === 'register' ? 'as was said of it' : 'as its flat line shows'
  return `This logger reads nothing below ${percent(atRhPercent)}, ${how}: ${shareWords(100 * share)} of its readings lie there, and the air was as dry as that or drier.`
}

/** One sensor's readings in plain words, a statement each. */
export function logLines(told: LogInWords, zone: string): readonly string[] {
  const { statistics, excursions, error, floor } = told
  const { above, below } = statistics.humidity ?? { above: null, below: null }
  return [
    spanWords(statistics, zone),
    ...(told.countsDoubtful ? ['So much is missing that the hours and counts below hardly stand.'] : []),
    ...(floor ? [floorWords(floor)] : []),
    ...(above
      ? limitLines({ side: 'above', beyond: above, excursions, near: told.overLimit, error }, zone)
      : []),
    ...(below
      ? limitLines({ side: 'below', beyond: below, excursions, near: told.underLimit, error }, zone)
      : []),
    ...courseLines(statistics, zone),
    ...airLines(statistics),
    ...seasonalLines(told.seasonal),
    ...(statistics.implausible > 0
      ? [`${countWords(statistics.implausible, 'value')} can be no humidity and were left out.`]
      : []),
  ]
}

/** The same for a terminal. */
export function logText(told: LogInWords, zone: string): string {
  return logLines(told, zone)
    .map((line) => wrap('  ', line))
    .join('\n')
}

/** How the moments of a file were understood, where nobody said it. */
export function zoneSaid({ timeZone: { zone, how } }: Pick<LogForm, 'timeZone'>): string {
  switch (how) {
    case 'in-stamps':
      return 'Its stamps name their own distance from UTC.'
    case 'in-heading':
      return `Read by the clock its heading names, ${zone}.`
    case 'answered':
      return `Read by the clock of ${zone}, as told.`
    case 'clock-not-changed':
      return `Read as ${zone}: its clock was left alone when others were changed. Give --time-zone where that is wrong.`
    case 'assumed':
      return `It names no time zone and none was given: read as ${zone}. Give --time-zone, as Europe/London, where that is wrong.`
  }
}

/** That a limit was taken where none was given, and whose it is. */
export function limitTakenWords(figure: Figure, knowledge: Knowledge): string {
  const work = knowledge.works[figure.source.work]
  const whose = work === undefined ? '' : `; ${shortCitation(work)}`
  return `No limit was given: held against ${figureWords(figure, knowledge)}. ${figure.says}${whose}.`
}
