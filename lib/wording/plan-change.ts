import type { PlanChange, Storage, Urgency } from '../engine/plan.ts'
import { bandWords } from './band.ts'
import { wetOrDryWords } from './keep.ts'
import { urgencyWords } from './marks.ts'

const inWords = {
  keep: ({ code }) => `${wetOrDryWords(code as Storage['keep'])}.`,
  storage: ({ rhPercent }) =>
    rhPercent === null || rhPercent === undefined
      ? 'No one humidity for all of it.'
      : rhPercent.min <= 0 && rhPercent.max >= 100
        ? 'Nothing would limit its humidity.'
        : `Relative humidity: ${bandWords(rhPercent)}.`,
  urgency: ({ code }) => `See to it: ${urgencyWords[code as Urgency].label.toLowerCase()}.`,
  cautions: ({ text }) => text,
  objections: ({ text }) => text,
  handling: ({ text }) => text,
  packing: ({ text }) => text,
  referrals: ({ text }) => text,
} as const satisfies Record<PlanChange['part'], (change: PlanChange) => string>

/** One thing that the plan would say then and does not say now, as a sentence. */
export const planChangeWords = (change: PlanChange): string => inWords[change.part](change)

/** All of it, each once; for an explanation on which nothing in the plan hangs there is nothing to say. */
export function planChangesWords(changes: readonly PlanChange[]): readonly string[] {
  return [...new Set(changes.map(planChangeWords))].filter((text) => text !== '')
}
