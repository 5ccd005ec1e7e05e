import type { Leaning } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { codeLabel } from './fact.ts'

/** Below this an explanation is told only as also possible: a few in a hundred. */
export const fewInHundred = 0.05

const inTen = (chance: number) => Math.min(9, Math.max(1, Math.round(10 * chance)))

const lowWords = (chance: number) => (chance < 0.05 ? 'less than 1' : String(Math.round(10 * chance)))
const highWords = (chance: number) =>
  chance >= 0.95 ? 'nearly 10' : chance < 0.05 ? 'less than 1' : String(Math.round(10 * chance))

/** Between which it may lie: `3 to 5`; nothing where both ends read the same. */
export function rangeWords([low, high]: readonly [number, number]): string {
  const [from, to] = [lowWords(low), highWords(high)]
  if (from === to) return ''
  return from === 'less than 1' && to === '1' ? '1 or less' : `${from} to ${to}`
}

/** How likely, in tenths at most, since words for how often a thing is make no finer number: `about 4 in 10`. */
export function chanceWords(chance: number): string {
  if (chance === 1) return 'certain by the record'
  if (chance === 0) return 'ruled out by the record'
  if (chance >= 0.95) return 'more than 9 in 10'
  if (chance < 0.01) return 'less than 1 in 100'
  if (chance < fewInHundred) return 'a few in 100'
  return `about ${inTen(chance)} in 10`
}

/** With its range: `about 4 in 10 (3 to 5)`, `a few in 100 (up to 1 in 10)`, `more than 9 in 10 (8 or more)`. */
export function likelyWords(chance: number, range: readonly [number, number]): string {
  const said = chanceWords(chance)
  if (chance === 0 || chance === 1) return said
  if (chance >= 0.95) return range[0] < 0.85 ? `${said} (${lowWords(range[0])} or more)` : said
  if (chance < fewInHundred) return range[1] >= 0.1 ? `${said} (up to ${highWords(range[1])} in 10)` : said
  const between = rangeWords(range)
  return between === '' ? said : `${said} (${between})`
}

/** The name of an explanation within a sentence: a small first letter, unless it is a name or a symbol. */
export function explanationName(code: string, knowledge: Knowledge): string {
  const label = codeLabel(code, knowledge)
  return /^\p{Lu}(\p{Lu}|-|$)/u.test(label) ? label : label.charAt(0).toLowerCase() + label.slice(1)
}

export const forWords: Readonly<Record<Leaning['strength'], string>> = {
  strong: 'speaks strongly for it',
  clear: 'speaks clearly for it',
  slight: 'speaks a little for it',
}

export const againstWords: Readonly<Record<Leaning['strength'], string>> = {
  strong: 'speaks strongly against it',
  clear: 'speaks clearly against it',
  slight: 'speaks a little against it',
}

/** What stands behind an explanation, beside its name: `2 for it, 1 against`; nothing where nothing does. */
export function leaningCountWords(speaksFor: number, against: number): string {
  const parts = [
    ...(speaksFor > 0 ? [`${speaksFor} for it`] : []),
    ...(against > 0 ? [`${against} against${speaksFor > 0 ? '' : ' it'}`] : []),
  ]
  return parts.join(', ')
}
