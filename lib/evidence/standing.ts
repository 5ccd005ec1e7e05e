/** How a matter stands, for the words it is told in. */
export type Standing = 'settled' | 'probable' | 'likelier' | 'open'

/**
 * From here on nothing more is asked: one in twenty is as sure as words for how often something is can make anybody, and
 * the bands of the words are wider than what another look could add. A house rule.
 */
export const certain = 0.95

interface Standable {
  readonly probability: number
  readonly range: readonly [low: number, high: number]
}

/**
 * Of rivals in order, likeliest first. Settled: as good as certain, and something was measured; eyes alone, however sure,
 * make it probable. Probable: likelier than not, and in eight of ten mappings ahead of all that any other reaches. Likelier:
 * ahead, and neither lies within what the words leave open for the other. Else it is open: they cannot be told apart yet.
 */
export function standingOf([leader, ...others]: readonly Standable[], measured: boolean): Standing {
  if (!leader) return 'open'
  if (leader.probability >= certain) return measured ? 'settled' : 'probable'
  // No range ends below its own probability: where this fails, so do both that follow, and most ranges need no reckoning.
  if (others.some(({ probability }) => leader.range[0] <= probability)) return 'open'
  const clear = others.every(({ range }) => leader.range[0] > range[1])
  if (clear && leader.probability > 0.5) return 'probable'
  return others.every(({ range }) => leader.probability > range[1]) ? 'likelier' : 'open'
}
