import type { Interpretation, Plan, Request } from '../engine/plan.ts'

/** How much of what is open an analysis is expected to settle. */
export type Gain = 'none' | 'little' | 'good-part' | 'most'

/** What is open about a matter [bit]: none where one explanation is certain. */
function openBits(rivals: readonly Pick<Interpretation, 'probability'>[]): number {
  return rivals.reduce(
    (sum, { probability }) => (probability > 0 ? sum - probability * Math.log2(probability) : sum),
    0,
  )
}

/** From which share of what is open each word is used; a house rule. */
const from = { mostShare: 0.5, goodPartShare: 0.2, littleShare: 0.02 } as const

/**
 * The share that an analysis is expected to settle of all the matters that it is asked about; null where no matter hangs
 * on it, or the plan did not work out what its answers would mean.
 */
export function gainOf(
  { gainBits, means }: Pick<Request, 'gainBits' | 'means'>,
  interpretations: Plan['interpretations'],
): Gain | null {
  if (gainBits === null || means.length === 0) return null
  const asked = new Set(means.map(({ component, matter }) => `${matter} of ${component}`))
  const open = openBits(
    interpretations.filter(({ component, matter }) => asked.has(`${matter} of ${component}`)),
  )
  const share = open > 0 ? gainBits / open : 0
  if (share >= from.mostShare) return 'most'
  if (share >= from.goodPartShare) return 'good-part'
  return share >= from.littleShare ? 'little' : 'none'
}

/** What it would settle: the rest of that sentence. */
export const gainWords: Readonly<Record<Gain, string>> = {
  none: 'hardly anything of the question',
  little: 'a little of the question',
  'good-part': 'a good part of the question',
  most: 'most of the question',
}
