import type { Spread } from './profile.ts'

/** Lowest, highest, mean and spread of single values; what is no number is passed over. Null where there is none. */
export function spreadOfValues(values: Float32Array): Spread | null {
  const start = values.find((value) => !Number.isNaN(value))
  if (start === undefined) return null
  // Differences from a value among them keep the sum of squares from drowning in the mean.
  let [count, sum, squares, min, max] = [0, 0, 0, start, start]
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i]!
    const off = value - start
    if (Number.isNaN(off)) continue
    count += 1
    sum += off
    squares += off * off
    if (value < min) min = value
    if (value > max) max = value
  }
  const left = Math.max(0, squares - (sum * sum) / count)
  return {
    min: hundredths(min),
    max: hundredths(max),
    mean: start + sum / count,
    sdPopulation: Math.sqrt(left / count),
    sdSample: count > 1 ? Math.sqrt(left / (count - 1)) : null,
  }
}

const hundredths = (value: number) => Math.round(value * 100) / 100
