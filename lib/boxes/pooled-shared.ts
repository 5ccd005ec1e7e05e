import type { ClosedBox, Range, Surroundings } from './box.ts'
import { logSpreadOf, momentsOf, rangeOfSpread, spreadOf } from './learn-spread.ts'

/** Beyond this a room says nothing of a leak at all. */
const mostShared = 0.5
/** Of what a box's own readings leave unsure, at least this part is its own and not what all boxes share. */
const leastOwn = 0.1

/**
 * How far all boxes of a room may be off together [of the logarithm]: their gel takes up more or less than was thought, their
 * room is damper or drier.
 */
function sharedSpread(
  { reservoirGPerKgPercent, startRhPercent }: ClosedBox,
  { meanRhPercent }: Surroundings,
): number {
  const gel = momentsOf(spreadOf(reservoirGPerKgPercent))
  const room = momentsOf(spreadOf(meanRhPercent))
  const gap = Math.max(1, room.mean - startRhPercent.nominal)
  return Math.min(mostShared, Math.hypot(gel.deviation / gel.mean, room.deviation / gap))
}

const variance = (range: Range) => momentsOf(logSpreadOf(range)).deviation ** 2

/**
 * What others say of a box, widened by as much as its own readings are off together with theirs: the gel and the room they
 * share must not count twice. Where nothing was read in it, nothing is taken off.
 */
export function asFromElsewhere(
  others: Range,
  box: ClosedBox,
  surroundings: Surroundings,
  own: { readonly alone: Range; readonly before: Range },
): Range {
  const shared = sharedSpread(box, surroundings) ** 2
  const told = variance(others)
  const ofReadings = 1 / variance(own.alone) - 1 / variance(own.before)
  if (!(ofReadings > 0)) return others
  const ofOthers = Math.max(leastOwn * told, told - shared)
  const ofOwn = Math.max(leastOwn / ofReadings, 1 / ofReadings - shared)
  const both = shared + 1 / (1 / ofOwn + 1 / ofOthers)
  const added = 1 / both - 1 / (shared + ofOwn)
  // Wider than before anything was known it need not become.
  const widest = variance(own.before)
  const times = Math.max(1, Math.sqrt(Math.min(widest, added > 0 ? 1 / added : widest) / told))
  const { nominal, below, above } = logSpreadOf(others)
  const wider = rangeOfSpread({ nominal, below: below * times, above: above * times })
  return { low: Math.exp(wider.low), nominal: Math.exp(wider.nominal), high: Math.exp(wider.high) }
}
