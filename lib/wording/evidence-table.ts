import { hiddenShare } from '../evidence/depth.ts'
import { grades, odds, type Band } from '../evidence/grades.ts'
import type { Failure, Grade, Group, Matter, Odds } from '../knowledge/evidence.ts'
import type { Cell, Knowledge } from '../knowledge/knowledge.ts'
import { capital } from './capital.ts'
import { fieldLabel, valueLabel } from './fact.ts'
import { chanceWords } from './interpretation.ts'
import { cellWords } from './rule.ts'

export const gradeOrder = ['typical', 'frequent', 'occasional', 'rare', 'excluded'] as const satisfies Grade[]
export const oddsOrder = ['usual', 'common', 'uncommon', 'seldom', 'exceptional'] as const satisfies Odds[]

/** One in how many, no finer than a person would say it. */
function oneIn(share: number): string {
  const many = 1 / share
  const step = many < 20 ? 1 : 10 ** Math.floor(Math.log10(many))
  return `1 in ${(Math.round(many / step) * step).toLocaleString('en-GB')}`
}

function shareWords(share: number): string {
  if (share < 0.3) return oneIn(share)
  if (share > 0.7 && share < 0.8) return '3 in 4'
  if (share > 0.42 && share < 0.58) return 'half'
  return `${Math.round(10 * share)} in 10`
}

function betweenWords([low, , high]: Band): string {
  const tens = (share: number) => `${Math.round(10 * share)} in 10`
  const [from, to] = low >= 0.3 ? [tens(low), tens(high)] : [oneIn(low), oneIn(high)]
  return `${from} to ${to}`
}

/** How often a thing is so where the explanation is the true one: `about half (3 in 10 to 6 in 10)`. */
export const gradeMeans = (grade: Grade): string =>
  `about ${shareWords(grades[grade][1])} (${betweenWords(grades[grade])})`

/** How common an explanation is beside a usual one, before anybody has looked closer. */
export function oddsMeans(word: Odds): string {
  const [low, middle, high] = odds[word]
  if (middle === 1) return 'the measure for the others'
  return `about ${oneIn(middle)} of a usual one (${oneIn(low)} to ${oneIn(high)})`
}

/** What raises a matter, each as its field and value read: `White metal sheen`. */
export const raisesWords = ({ about }: Matter, knowledge: Knowledge): readonly string[] =>
  about.map(({ field, value }) => capital(valueLabel(field, value, knowledge)))

/** Conditions that hold together: `Material: bronze or brass; Burial ground: sea bed`. */
export const circumstanceWords = (cells: readonly Cell[], knowledge: Knowledge): string =>
  cells.map((cell) => `${fieldLabel(cell.fact, knowledge)}: ${cellWords(cell, knowledge)}`).join('; ')

/** Who or what answers a group. */
export function byWords({ by }: Pick<Group, 'by'>, knowledge: Knowledge): string {
  if (by === 'eye') return 'By eye'
  if (by === 'record') return 'Stands in the record'
  return knowledge.methods[by]?.label ?? by
}

const greek = { a: 'α', b: 'β' } as const

/** `Sn La1` as it is written: `Sn Lα1`. */
const lineName = (line: string) =>
  line.replace(/([KLM])([ab])/, (_, shell: string, row: keyof typeof greek) => `${shell}${greek[row]}`)

/** How often a method goes wrong in that way. */
export function failureOften({ how }: Failure, knowledge: Knowledge): string {
  if ('grade' in how) return `${how.grade}: ${gradeMeans(how.grade)}`
  const { line, through, crustUm } = how.depth
  const matrix = knowledge.matrices[through]?.label.toLowerCase() ?? through
  const share = hiddenShare(how.depth, knowledge)
  const often = share === 0 ? 'never' : share === 1 ? 'always' : chanceWords(share)
  return `as often as the line ${lineName(line)} does not come out through ${crustUm[0]} to ${crustUm[1]} µm of ${matrix}: ${often}`
}

/** What a failed look shows, whatever is true. */
export function failureShows({ as }: Failure, { states, rest }: Group): string {
  return states.find(({ id }) => id === as)?.says ?? rest.says
}
