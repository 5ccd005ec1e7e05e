import type { LookNext } from '../engine/plan.ts'
import { listWords } from './list.ts'

const parts: Readonly<Record<string, string>> = {
  storage: 'how it is kept',
  urgency: 'how soon',
  cautions: 'whether anybody must be called',
  objections: 'what may be done to it',
  surface: 'what the surface is taken for',
  matters: 'what there is to explain',
  requests: 'what is first asked of a laboratory',
}

/** What the answer could change: `It could change how it is kept and how soon.` */
export function settleWords({ wouldSettle }: Pick<LookNext, 'wouldSettle'>): string {
  return wouldSettle.length === 0
    ? ''
    : `It could change ${listWords(wouldSettle.map((part) => parts[part] ?? part))}.`
}

const numbers = ['No', 'One', 'Two', 'Three'] as const

/** How much asking is left, this question counted: in words, for an answer may open or close others. */
export function leftWords(questions: number): string {
  if (questions <= 1) return 'This is the last question for now.'
  const more = numbers[questions - 1]
  return more === undefined
    ? 'A few more would settle most of it; stop whenever you like.'
    : `${more} more after this would settle most of it.`
}

/** When nothing is asked: said aloud, so that nobody takes it for a fault. */
export const nothingLeftWords = 'Nothing that a look could tell would change the plan now.'
