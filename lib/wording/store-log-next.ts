import type { LogNext } from '../boxes/log-next.ts'
import { countWords } from './list.ts'
import { chanceWords } from './logger-limits.ts'

/** Why a logger would tell more in this box than in another, strongest first. */
export function logNextWords(next: LogNext): string {
  const { reasons, findsAtRisk } = next
  const finds = findsAtRisk === 0 ? '' : `; ${countWords(findsAtRisk, 'find')} depend on it`
  return `${reasons.map((reason) => reasonWords[reason](next)).join('; ')}${finds}`
}

const reasonWords: Readonly<Record<LogNext['reasons'][number], (next: LogNext) => string>> = {
  'may-be-over': ({ overNow }) =>
    overNow >= 0.9
      ? 'it very likely stands over its limit, and nobody knows how far or since when'
      : `it may stand over its limit and nobody would know, ${chanceWords(overNow)} today`,
  'date-is-wide': ({ spreadDays, spreadDaysAfter }) =>
    `its renewal is known only within ${lengthWords(spreadDays)}, after three months of a logger within ${lengthWords(spreadDaysAfter)}`,
  'never-read': () => 'nothing was ever read in it',
  'teaches-others': ({ othersTaught }) =>
    `${countWords(othersTaught, 'other')} of its model in the room would be known better too`,
}

const lengthWords = (days: number): string =>
  days < 60 ? countWords(Math.round(days), 'day') : countWords(Math.round(days / 30.4), 'month')
