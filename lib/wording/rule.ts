import type { Cell, Decision, Effect, Interval, Knowledge } from '../knowledge/knowledge.ts'
import { bandWords, numberWords } from './band.ts'
import { codeLabel, valueLabel } from './fact.ts'
import { countWords, listWords } from './list.ts'

/** A condition as a review table prints it. */
export function cellWords(cell: Cell, knowledge: Knowledge): string {
  if ('interval' in cell) return intervalWords(cell.interval)
  const label = (value: string) => valueLabel(cell.fact, value, knowledge)
  return 'any' in cell
    ? listWords(cell.any.map(label), 'or')
    : `not ${listWords(cell.none.map(label), 'nor')}`
}

function intervalWords(interval: Interval): string {
  const low =
    interval.from !== undefined
      ? `from ${numberWords(interval.from)}`
      : interval.above !== undefined
        ? `above ${numberWords(interval.above)}`
        : null
  const high =
    interval.to !== undefined
      ? `up to ${numberWords(interval.to)}`
      : interval.below !== undefined
        ? `below ${numberWords(interval.below)}`
        : null
  return [low, high].filter((end) => end !== null).join(', ')
}

/** What a rule gives. */
export function effectWords(effect: Effect, decision: Decision, knowledge: Knowledge): string {
  switch (effect.kind) {
    case 'answer':
      return codeLabel(effect.answer, knowledge)
    case 'band': {
      const band = { min: effect.from ?? -Infinity, max: effect.to ?? Infinity }
      if (decision.fills === 'storage.temperature') return temperatureOf(effect)
      return bandWords({ min: Math.max(band.min, 0), max: Math.min(band.max, 100) })
    }
    case 'every':
      return `look again every ${countWords(effect.days, 'day')}: ${effect.look}`
    case 'say':
      return codeLabel(effect.code, knowledge)
  }
}

function temperatureOf(effect: { readonly from?: number; readonly to?: number }): string {
  const low = effect.from === undefined ? null : `from ${numberWords(effect.from)} °C`
  const high = effect.to === undefined ? null : `up to ${numberWords(effect.to)} °C`
  return [low, high].filter((end) => end !== null).join(', ')
}

export const policyWords: Readonly<Record<Decision['policy'], string>> = {
  unique: 'One answer at most may hold.',
  strictest: 'Where several hold, the strictest is taken.',
  collect: 'Everything that holds is said.',
}

export const absentWords: Readonly<Record<Decision['absent'], string>> = {
  protective: 'Where nobody has looked, the protective side is taken and the plan says so.',
  silent: 'It speaks only on what is recorded.',
}
