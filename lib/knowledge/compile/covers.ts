import type { Domain } from '../domains.ts'
import type { Cell, Interval } from '../knowledge.ts'
import type { Domains } from './cells.ts'

/** Whether the first conditions hold wherever the second ones do; where that cannot be told from the cells alone, no. */
export function covers(first: readonly Cell[], second: readonly Cell[], domains: Domains): boolean {
  return first.every((cell) =>
    second.some((other) => other.fact === cell.fact && follows(cell, other, domains.get(cell.fact))),
  )
}

function follows(cell: Cell, from: Cell, domain: Domain | undefined): boolean {
  if ('interval' in cell) return 'interval' in from && inside(from.interval, cell.interval)
  if ('interval' in from) return false
  if ('any' in cell) return 'any' in from && from.any.every((value) => cell.any.includes(value))
  if ('none' in from) return cell.none.every((value) => from.none.includes(value))
  // One value only: being one of these is being none of those.
  const single = domain?.kind === 'values' && !domain.many
  return single && from.any.every((value) => !cell.none.includes(value))
}

/** An interval whose figures are not there has no ends and tells nothing. */
function inside(inner: Interval, outer: Interval): boolean {
  const ends = [outer.from, outer.above, outer.to, outer.below]
  return ends.some((end) => end !== undefined) && lowInside(inner, outer) && highInside(inner, outer)
}

function lowInside(inner: Interval, outer: Interval): boolean {
  const wanted = outer.from ?? outer.above
  if (wanted === undefined) return true
  const given = inner.from ?? inner.above
  if (given === undefined) return false
  return given > wanted || (given === wanted && (outer.from !== undefined || inner.above !== undefined))
}

function highInside(inner: Interval, outer: Interval): boolean {
  const wanted = outer.to ?? outer.below
  if (wanted === undefined) return true
  const given = inner.to ?? inner.below
  if (given === undefined) return false
  return given < wanted || (given === wanted && (outer.to !== undefined || inner.below !== undefined))
}
