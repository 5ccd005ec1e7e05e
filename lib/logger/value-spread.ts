import type { Spread } from './profile.ts'

/** Sums over single values, from which several are put together. */
export interface ValueSums {
  readonly count: number
  readonly sum: number
  /** Of the squares of how far each lies from `about`. */
  readonly squares: number
  readonly about: number
  readonly min: number
  readonly max: number
}

/** What the values from one place up to, not with, another add up to; what is no number is passed over. */
export function valueSums(values: Float32Array, from: number, to: number, about: number): ValueSums {
  let [sum, squares, min, max] = [0, 0, Infinity, -Infinity]
  for (let i = from; i < to; i += 1) {
    const value = values[i]!
    const off = value - about
    sum += value
    squares += off * off
    if (value < min) min = value
    if (value > max) max = value
  }
  if (!Number.isNaN(sum)) return { count: to - from, sum, squares, about, min, max }
  const numbers = values.slice(from, to).filter((value) => !Number.isNaN(value))
  return numbers.length === 0
    ? { count: 0, sum: 0, squares: 0, about, min: Infinity, max: -Infinity }
    : valueSums(numbers, 0, numbers.length, about)
}

/** Lowest, highest, mean and spread of all that was added up; null where that is nothing. All are about one value. */
export function spreadOfSums(parts: readonly ValueSums[]): Spread | null {
  const about = parts[0]?.about ?? 0
  let [count, sum, squares, min, max] = [0, 0, 0, Infinity, -Infinity]
  for (const part of parts) {
    count += part.count
    sum += part.sum
    squares += part.squares
    min = Math.min(min, part.min)
    max = Math.max(max, part.max)
  }
  if (count === 0) return null
  const mean = sum / count
  const left = Math.max(0, squares - count * (mean - about) ** 2)
  return {
    min: Math.round(min * 100) / 100,
    max: Math.round(max * 100) / 100,
    mean,
    sdPopulation: Math.sqrt(left / count),
    sdSample: count > 1 ? Math.sqrt(left / (count - 1)) : null,
  }
}
