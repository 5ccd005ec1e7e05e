import type { Cell } from '../knowledge/knowledge.ts'
import type { Dimension } from './dimension.ts'

/**
 * What is known of one fact: only atoms `within`, and, where several may hold at once, at least one of each of `hits`.
 * That much is closed under *and* and under *not* of any cell, so regions can be subtracted from each other exactly.
 */
export interface Constraint {
  readonly within: bigint
  readonly hits: readonly bigint[]
}

/** A region of all that a decision may meet: one constraint for each of its facts. */
export interface Box {
  readonly facts: readonly Constraint[]
}

export function wholeBox(dimensions: readonly Dimension[]): Box {
  return { facts: dimensions.map(({ all }) => ({ within: all, hits: [] })) }
}

/** The same without the worlds in which somebody looked at a fact in vain. */
export function toldBox(dimensions: readonly Dimension[]): Box {
  return { facts: dimensions.map(({ all, unknown }) => ({ within: all & ~unknown, hits: [] })) }
}

/** The part of `box` where the cell holds for certain, or null where there is none. */
export function where(box: Box, cell: Cell, dimensions: readonly Dimension[]): Box | null {
  return narrowed(box, cell, dimensions, true)
}

/** The part of `box` where the cell does not hold for certain. */
export function whereNot(box: Box, cell: Cell, dimensions: readonly Dimension[]): Box | null {
  return narrowed(box, cell, dimensions, false)
}

export function whereAll(box: Box, cells: readonly Cell[], dimensions: readonly Dimension[]): Box | null {
  return cells.reduce<Box | null>((left, cell) => (left === null ? null : where(left, cell, dimensions)), box)
}

/** `box` without the region of `cells`, as boxes that do not overlap. */
export function subtract(box: Box, cells: readonly Cell[], dimensions: readonly Dimension[]): Box[] {
  if (whereAll(box, cells, dimensions) === null) return [box]
  const left: Box[] = []
  let inside: Box | null = box
  for (const cell of cells) {
    if (inside === null) break
    const outside = whereNot(inside, cell, dimensions)
    if (outside !== null) left.push(outside)
    inside = where(inside, cell, dimensions)
  }
  return left
}

/** `boxes` without all of the regions; null where that takes more than `most` boxes. */
export function remainder(
  boxes: readonly Box[],
  regions: readonly (readonly Cell[])[],
  dimensions: readonly Dimension[],
  most: number,
): readonly Box[] | null {
  let left = boxes
  for (const cells of regions) {
    left = left.flatMap((box) => subtract(box, cells, dimensions))
    if (left.length > most) return null
  }
  return left
}

function narrowed(box: Box, cell: Cell, dimensions: readonly Dimension[], holds: boolean): Box | null {
  const index = dimensions.findIndex(({ fact }) => fact === cell.fact)
  const dimension = dimensions[index]
  const before = box.facts[index]
  if (dimension === undefined || before === undefined) return holds ? box : null
  const after = constrain(before, cell, dimension, holds)
  return possible(after, dimension) ? { facts: box.facts.with(index, after) } : null
}

function constrain(before: Constraint, cell: Cell, dimension: Dimension, holds: boolean): Constraint {
  // A fact that could not be told settles no *none of these*, so unknown counts among the barred.
  const barring = 'none' in cell
  const mask = barring ? dimension.mask(cell) | dimension.unknown : dimension.mask(cell)
  const mustMiss = barring === holds
  if (mustMiss) return { ...before, within: before.within & ~mask }
  if (!dimension.many) return { ...before, within: before.within & mask }
  return { ...before, hits: withHit(before.hits, mask) }
}

/** A wider hit adds nothing to a narrower one. */
function withHit(hits: readonly bigint[], mask: bigint): readonly bigint[] {
  if (hits.some((hit) => (hit & ~mask) === 0n)) return hits
  return [...hits.filter((hit) => (mask & ~hit) !== 0n), mask]
}

/** Whether any world is left: what is not barred hits all that must be hit; `unknown` only ever stands alone. */
export function possible({ within, hits }: Constraint, { many, mayBeEmpty, unknown }: Dimension): boolean {
  if (!many) return within !== 0n
  const told = within & ~unknown
  const byTold = (told !== 0n || mayBeEmpty) && hits.every((hit) => (hit & told) !== 0n)
  return byTold || ((within & unknown) !== 0n && hits.every((hit) => (hit & unknown) !== 0n))
}
