import type { PlanChange } from '../engine/plan.ts'
import { probabilities } from '../evidence/joint.ts'
import type { Raised } from '../evidence/raised.ts'
import type { Supposed } from './supposed.ts'

/**
 * How much of a find's plan depends on what a thing turns out to be. Two explanations are drawn, each as often as it is
 * probable: how far apart would the plans be that they call for? All the way where one changes how the find is kept, how
 * soon, or what it is warned of; half as far where only handling, packing or a referral differs. So nothing hangs on an
 * answer that is certain, or that changes the plan one way whatever it is. The halves and the times are a house rule.
 */
const far: Readonly<Record<PlanChange['part'], number>> = {
  keep: 1,
  storage: 1,
  urgency: 1,
  cautions: 1,
  objections: 1,
  handling: 0.5,
  packing: 0.5,
  referrals: 0.5,
}

/** A bit on which all of the plan hangs counts this many times one on which nothing does. */
export const mostStakes = 3

const keyOf = ({ part, code, rhPercent }: PlanChange) =>
  `${part} ${code} ${rhPercent ? `${rhPercent.min}-${rhPercent.max}` : ''}`

const keysOf = (changes: readonly PlanChange[]): ReadonlyMap<string, number> =>
  new Map(changes.map((change) => [keyOf(change), far[change.part]]))

/** How far two sets of changes are apart: as far as what only one of them has. */
export function apart(a: ReadonlyMap<string, number>, b: ReadonlyMap<string, number>): number {
  let most = 0
  for (const [key, how] of a) if (!b.has(key)) most = Math.max(most, how)
  for (const [key, how] of b) if (!a.has(key)) most = Math.max(most, how)
  return most
}

/** Pairs of explanations and how likely they are drawn, each counted as far as they are apart. */
function expectedApart({ matter, joint }: Raised, howFar: (a: number, b: number) => number): number {
  const probable = probabilities(joint.weights, matter.rivals.length)
  let expected = 0
  for (let a = 0; a < probable.length; a++)
    for (let b = a + 1; b < probable.length; b++) expected += 2 * probable[a]! * probable[b]! * howFar(a, b)
  return expected
}

/** From 1, where nothing hangs on it. */
export function stakesOf(raised: Raised, supposed: Pick<Supposed, 'changes'>): number {
  const { matter, component } = raised
  const changes = matter.rivals.map(({ id }) => keysOf(supposed.changes(component, matter.id, id)))
  return 1 + (mostStakes - 1) * expectedApart(raised, (a, b) => apart(changes[a]!, changes[b]!))
}

/**
 * More than this the stakes cannot be, without any plan being made again: explanations of which the record would state the
 * same change the plan alike.
 */
export function stakesAtMost(raised: Raised): number {
  const stated = raised.matter.rivals.map(({ settled }) => JSON.stringify(settled))
  return 1 + (mostStakes - 1) * expectedApart(raised, (a, b) => (stated[a] === stated[b] ? 0 : 1))
}
