import { narrows, type Ruler } from '../../lib/papers/ruler.ts'
import { bandMark } from '../../lib/wording/band.ts'
import type { BoxShown } from './store-of.ts'

const barsShown = 4

/** A box on the ruler: a bar for each humidity its finds ask for, and what the box is meant to hold as the outline. */
export function boxRuler({ held, finds }: Pick<BoxShown, 'held' | 'finds'>): Ruler {
  const asked = finds.flatMap(({ line }) =>
    line.keep !== 'wet' && line.rhPercent !== null && narrows(line.rhPercent) ? [line.rhPercent] : [],
  )
  const bands = [...new Map(asked.map((band) => [bandMark(band), band])).values()]
  const bars = bands
    .toSorted((a, b) => a.max - b.max)
    .slice(0, barsShown)
    .map((band) => ({ name: `finds at ${bandMark(band)}`, limit: band, preference: null }))
  return { bars, shared: held, gap: null, holding: null, now: null }
}
