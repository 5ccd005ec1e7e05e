import type { Known, Rule } from './knowledge.ts'

/** How a thing is known, best first. */
export const knowns = ['read', 'second-hand', 'common-practice', 'memory'] as const satisfies readonly Known[]

export type CountsByKnown = Readonly<Record<Known, number>>

export function countsByKnown(things: readonly { readonly known: Known }[]): CountsByKnown {
  const counts: Record<Known, number> = { read: 0, 'second-hand': 0, 'common-practice': 0, memory: 0 }
  for (const { known } of things) counts[known] += 1
  return counts
}

/** A rule is known as its best support is; null where nothing supports it. */
export function knownOfRule({ sources }: Pick<Rule, 'sources'>): Known | null {
  const support = sources.filter(({ says }) => says === 'supports').map(({ known }) => known)
  return knowns.find((known) => support.includes(known)) ?? null
}
