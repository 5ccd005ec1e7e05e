import type { LookNext } from '../engine/plan.ts'
import { listWords } from './list.ts'

const parts: Readonly<Record<string, string>> = {
  storage: 'how it is kept',
  urgency: 'how soon',
  cautions: 'whether anybody must be called',
  objections: 'what may be done to it',
  surface: 'what the surface is taken for',
}

/** What the answer could change: `It could change how it is kept and how soon.` */
export function settleWords({ wouldSettle }: LookNext): string {
  return wouldSettle.length === 0
    ? ''
    : `It could change ${listWords(wouldSettle.map((part) => parts[part] ?? part))}.`
}
