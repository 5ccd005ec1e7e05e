import type { IsoDate } from '../base/calendar.ts'
import type { DoseMethod } from '../logger/beyond.ts'
import type { PercentileMethod } from '../logger/percentiles.ts'
import type { ColumnAnswer, ColumnUse, LogAnswers } from '../logger/read/log-answers.ts'
import type { LogAsked } from '../services/tell-log.ts'
import { textOption, WrongCall, type Call } from './command.ts'
import { numberOptions } from './number-options.ts'

const percent = { from: 0, to: 100, unit: '%' } as const

const numbers = {
  'limit-rh-percent': percent,
  'low-limit-rh-percent': percent,
  'sensor-error-rh-percent': { from: 0, to: 50, unit: '%' },
  'floor-rh-percent': percent,
} as const

const words = {
  format: ['text', 'json'],
  'date-order': ['day-first', 'month-first', 'year-first'],
  'temperature-unit': ['celsius', 'fahrenheit'],
  'humidity-scale': ['percent', 'fraction'],
  'percent-method': ['linear', 'inverse', 'hazen', 'weibull'] satisfies PercentileMethod[],
  'dose-method': ['rectangle', 'trapezoid'] satisfies DoseMethod[],
} as const

const uses = ['stamp', 'date', 'time', 'temperature', 'humidity', 'channel', 'not-read'] satisfies ColumnUse[]

export const loggerOptions = Object.fromEntries(
  [...Object.keys(numbers), ...Object.keys(words), 'time-zone', 'columns'].map((name) => [
    name,
    { type: 'string' as const },
  ]),
)

/** What a call says of its file, and what is asked of the readings. */
export interface LoggerCall {
  readonly format: 'text' | 'json'
  readonly answers: LogAnswers
  readonly asked: Omit<LogAsked, 'maxRhPercent'> & { readonly maxRhPercent: number | null }
}

const dayMs = 86_400_000

/** Every option, or every fault in them at once. */
export function loggerCall(call: Call, today: IsoDate): LoggerCall {
  const { values, wrong: wrongNumbers } = numberOptions(call, numbers)
  const wrong = [...wrongNumbers]
  const word = <Name extends keyof typeof words>(name: Name): (typeof words)[Name][number] | null => {
    const given = textOption(call, name)
    if (given === null) return null
    const chosen = words[name].find((choice) => choice === given)
    if (chosen === undefined) wrong.push(`--${name} is one of ${words[name].join(', ')}, not "${given}".`)
    return chosen ?? null
  }
  const columns = columnsOf(textOption(call, 'columns'), wrong)
  const [low, high] = [values['low-limit-rh-percent'], values['limit-rh-percent']]
  if (low !== null && high !== null && low >= high)
    wrong.push('--low-limit-rh-percent lies above --limit-rh-percent; nothing could be within both.')
  const chosen: LoggerCall = {
    format: word('format') ?? 'text',
    answers: {
      timeZone: textOption(call, 'time-zone'),
      dateOrder: word('date-order'),
      temperatureUnit: word('temperature-unit'),
      humidityScale: word('humidity-scale'),
      columns,
      // Somewhere the day has begun already: only what no clock on earth can show is told as lying ahead.
      receivedAtMs: Date.parse(today) + 2 * dayMs,
    },
    asked: {
      maxRhPercent: high,
      minRhPercent: low,
      sensorErrorRhPercent: values['sensor-error-rh-percent'],
      floorRhPercent: values['floor-rh-percent'],
      percentiles: [7, 50, 93],
      percentileMethod: word('percent-method') ?? 'linear',
      doseMethod: word('dose-method') ?? 'rectangle',
    },
  }
  if (wrong.length > 0) throw new WrongCall(wrong.join('\n'))
  return chosen
}

function columnsOf(given: string | null, wrong: string[]): readonly ColumnAnswer[] | null {
  if (given === null) return null
  return given.split(',').flatMap((name, column) => {
    const use = uses.find((one) => one === name.trim())
    if (use === undefined)
      wrong.push(`--columns names each column in order by one of ${uses.join(', ')}; not "${name}".`)
    return use === undefined ? [] : [{ column, use }]
  })
}
