import type { ClosedBox, Quantiles, Sighting, Surroundings } from './box.ts'

/** Why a box's own readings say little of its leak. */
export type SaysLittle =
  | 'no-sightings'
  /** Every reading lies below what the logger can report. */
  | 'below-range'
  /** The time between first and last sighting is too short for the box to have moved. */
  | 'too-short'
  /** It moved less than sensor and strip may be wrong. */
  | 'error-exceeds-change'
  /** It stands at the level of its room: any leaky box would. */
  | 'at-room-level'

interface Told {
  readonly box: ClosedBox
  readonly surroundings: Surroundings
  readonly since: readonly Sighting[]
  readonly inside: Quantiles
}

/** A fortnight: gel and seasons move a box no faster. */
const shortDays = 14

export function whyLittle({ box, surroundings, since, inside }: Told): SaysLittle {
  if (since.length === 0) return 'no-sightings'
  if (since.every(({ kind }) => kind === 'below-range')) return 'below-range'
  const days = since.map(({ on }) => on)
  if (Math.max(...days) - Math.min(box.startedOn, ...days) < shortDays) return 'too-short'
  const lowest = surroundings.meanRhPercent.low - surroundings.swingRhPercent
  return inside.p50 >= lowest ? 'at-room-level' : 'error-exceeds-change'
}
