import type { Excursion } from './excursions.ts'
import type { Series } from './series.ts'

/**
 * The reading within a limit that lies nearest to it [%]: the one of which it is least sure that it was. Null where none was
 * within it. What lies at the floor of the logger is no reading that could be near anything above it.
 */
export function nearestWithin(
  { rhPercent }: Series,
  limitRhPercent: number,
  side: Excursion['kind'],
  floorRhPercent = -Infinity,
): number | null {
  const line = Math.fround(limitRhPercent)
  const floor = Math.fround(floorRhPercent)
  let nearest = side === 'above' ? -Infinity : Infinity
  for (let i = 0; i < rhPercent.length; i += 1) {
    const rh = rhPercent[i]!
    if (side === 'above' ? rh <= line && rh > nearest && rh > floor : rh >= line && rh < nearest) nearest = rh
  }
  return Number.isFinite(nearest) ? Math.round(nearest * 100) / 100 : null
}
