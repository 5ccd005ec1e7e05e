import type { Known } from '../../lib/knowledge/knowledge.ts'

export const knowns = ['read', 'second-hand', 'common-practice', 'memory'] as const satisfies readonly Known[]

export function countsByKnown(things: readonly { readonly known: Known }[]): Readonly<Record<Known, number>> {
  const counts: Record<Known, number> = { read: 0, 'second-hand': 0, 'common-practice': 0, memory: 0 }
  for (const { known } of things) counts[known] += 1
  return counts
}
