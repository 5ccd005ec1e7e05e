import type { Meaning, Request } from '../engine/plan.ts'
import type { Harm, Knowledge, Method } from '../knowledge/knowledge.ts'
import { countWords } from './list.ts'
import { knownWords } from './marks.ts'

export const harmWords: Readonly<Record<Harm, string>> = {
  none: 'Nothing: it is neither touched nor sampled.',
  touches: 'It is touched, and nothing is taken.',
  'loose-powder': 'Takes powder that has come loose, which does not come back.',
  'micro-sample': 'Takes a speck of it, which does not come back.',
  cut: 'Takes a piece cut from it, which does not come back.',
}

export const leaveWords = 'The owner must have agreed in writing.'

export const ifAgreedWords =
  'It takes a sample. It stands this far up because it would tell much more than any look, and only if a conservator agrees.'

/** A span of work: `20 minutes`, `an hour and a half` is too fine, so hours come in halves. */
function spanWords(minutes: number): string {
  if (minutes < 90) return countWords(Math.round(minutes), 'minute')
  const halves = Math.round(minutes / 30) / 2
  return `${halves.toLocaleString('en-GB')} hours`
}

/** How long it takes: once to set up, then each object; and how well that is known. */
export function timeWords({ minutes }: Pick<Method, 'minutes'>): string {
  const setUp = minutes.setUp > 0 ? `, after ${spanWords(minutes.setUp)} once to set up` : ''
  const how = minutes.known === 'read' ? '' : ` (${knownWords[minutes.known].label})`
  return `About ${spanWords(minutes.each)}${setUp}${how}`
}

/** Answers to one question put to a method: one of them will come. */
export interface AnswerTable {
  readonly component: string
  readonly matter: string
  readonly asks: string
  /** What is looked at: "Elements of the skin"; empty where today's knowledge no longer says. */
  readonly label: string
  readonly answers: readonly Meaning[]
}

/** What each answer would mean, parted into what is asked: of each matter of each part, group by group. */
export function answerTables(
  { means }: Pick<Request, 'means'>,
  knowledge: Knowledge,
): readonly AnswerTable[] {
  const tables = Map.groupBy(means, ({ component, matter, group }) => {
    const written = knowledge.matters[matter]?.groups.find(({ id }) => id === group)
    return JSON.stringify([component, matter, written?.label ?? ''])
  })
  return [...tables].map(([key, answers]) => {
    const [component, matter, label] = JSON.parse(key) as [string, string, string]
    return { component, matter, asks: knowledge.matters[matter]?.asks ?? '', label, answers }
  })
}
