import { narrows, type Ruler } from '../../lib/papers/ruler.ts'
import type { BoxLine } from '../../lib/services/show-store.ts'
import type { Standing } from '../../lib/services/standing.ts'
import { bandMark } from '../../lib/wording/band.ts'
import { countWords } from '../../lib/wording/list.ts'

const numbersNamed = 3

/** A box on the ruler: a bar for each humidity its finds ask for, what they share as the outline, what it likely holds now. */
export function boxRuler(
  { needs, outlook }: Pick<BoxLine, 'needs' | 'outlook'>,
  finds: readonly Standing[],
): Ruler {
  const asking = finds.filter(
    ({ line }) => line.keep !== 'wet' && line.rhPercent !== null && narrows(line.rhPercent),
  )
  const groups = Map.groupBy(asking, ({ line }) => bandMark(line.rhPercent!))
  const bars = [...groups.values()]
    .map((group) => ({ name: nameOf(group), limit: group[0]!.line.rhPercent, preference: null }))
    .toSorted((a, b) => a.limit!.max - b.limit!.max)
  const quarrels = finds
    .filter(({ line }) => line.keep !== 'wet' && line.conflict !== null)
    .map(({ line }) => ({
      name: `${line.findNumber}, whose parts disagree`,
      limit: line.interimRhPercent,
      preference: null,
    }))
  return {
    bars: [...bars, ...quarrels],
    shared: needs,
    gap: gapOf(bars),
    holding: null,
    now: outlook?.nowRhPercent.p50 ?? null,
  }
}

function nameOf(group: readonly Standing[]): string {
  const numbers = group.map(({ line }) => line.findNumber)
  if (numbers.length <= numbersNamed) return numbers.join(', ')
  return countWords(numbers.length, 'find')
}

/** Where two bars do not meet: from the lowest ceiling to the highest floor. */
function gapOf(bars: Ruler['bars']): Ruler['gap'] {
  const limits = bars.flatMap(({ name, limit }) => (limit === null ? [] : [{ name, limit }]))
  const low = limits.toSorted((a, b) => a.limit.max - b.limit.max)[0]
  const high = limits.toSorted((a, b) => b.limit.min - a.limit.min)[0]
  if (low === undefined || high === undefined || low.limit.max >= high.limit.min) return null
  return { between: [low.name, high.name], from: low.limit.max, to: high.limit.min }
}
