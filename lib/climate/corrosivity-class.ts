import type { Range } from '../base/range.ts'

/** Classes from mild to fierce with the highest rate of each; the last may have none. */
export interface ClassLimit<Name extends string> {
  readonly name: Name
  readonly to: number
}

/** Every class the range may lie in, mildest first; `beyond` where it may lie above them all. */
export interface Classes<Name extends string> {
  readonly from: Name | 'beyond'
  readonly to: Name | 'beyond'
  readonly all: readonly (Name | 'beyond')[]
}

/**
 * The class of a rate [name]: the first whose limit it does not exceed; `beyond` where it exceeds them all.
 * @param rate [unit of the limits] rate of corrosion
 * @param limits [unit of the rate] upper limits, mildest class first
 * @source lower < rate ≤ upper, as ISO 9223 counts (from memory)
 * @valid a rate of 0 or more; null otherwise
 * @agrees exact at the limits themselves, which belong to the milder class
 */
export function classOf<Name extends string>(
  rate: number,
  limits: readonly ClassLimit<Name>[],
): Name | 'beyond' | null {
  if (!(rate >= 0)) return null
  return limits.find(({ to }) => rate <= to)?.name ?? 'beyond'
}

/**
 * Every class that a rate known only so well may lie in [names]; null for a range that is none.
 * @param rate [unit of the limits] rate with its range
 * @param limits [unit of the rate] upper limits, mildest class first
 * @source classOf for both ends
 * @valid low ≤ high, both 0 or more
 * @agrees exact with classOf at both ends
 */
export function classesOf<Name extends string>(
  rate: Range,
  limits: readonly ClassLimit<Name>[],
): Classes<Name> | null {
  const from = classOf(rate.low, limits)
  const to = classOf(rate.high, limits)
  if (from === null || to === null || rate.low > rate.high) return null
  const names = [...limits.map(({ name }) => name), 'beyond' as const]
  return { from, to, all: names.slice(names.indexOf(from), names.indexOf(to) + 1) }
}
