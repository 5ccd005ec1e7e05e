import type { Box, Constraint } from './box.ts'
import type { Dimension } from './dimension.ts'

/** One example out of a box, fact by fact; facts that may be anything are left out. */
export function witness(box: Box, dimensions: readonly Dimension[]): (readonly [string, string])[] {
  return dimensions.flatMap((dimension, index): (readonly [string, string])[] => {
    const text = exampleOf(box.facts[index]!, dimension)
    return text === null ? [] : [[dimension.fact, text]]
  })
}

const mostNamed = 4

function exampleOf({ within, hits }: Constraint, dimension: Dimension): string | null {
  const told = within & ~dimension.unknown
  const free = told === (dimension.all & ~dimension.unknown)
  if (dimension.many) {
    if (hits.length === 0 && free) return null
    const hit = hits.map((mask) => namesIn(mask & (told === 0n ? within : told), dimension)[0]!)
    if (hit.length > 0) return [...new Set(hit)].join(' + ')
    return namesIn(within, dimension)[0] ?? 'none'
  }
  if (free) return null
  const names = namesIn(told === 0n ? within : told, dimension)
  return names.length > mostNamed ? `${names.slice(0, mostNamed).join(' | ')} | …` : names.join(' | ')
}

function namesIn(mask: bigint, { atoms }: Dimension): string[] {
  return atoms.filter((_, index) => (mask >> BigInt(index)) % 2n === 1n)
}
