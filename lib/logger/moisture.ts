import { dewPointC, frostPointC } from '../climate/dew-point.ts'
import { absoluteHumidityGPerM3 } from '../climate/humidity.ts'
import { saturationOverWaterPa, waterValidC } from '../climate/saturation.ts'
import type { Series } from './series.ts'

/**
 * Water in the air, from readings with humidity and temperature. Humidities are turned into vapour pressure before anything is
 * averaged: a mean of relative humidities at several temperatures means nothing.
 */
export interface MoistureSummary {
  readonly readings: number
  readonly absoluteHumidityGPerM3: { readonly min: number; readonly max: number; readonly mean: number }
  /** Of the least, the greatest and the mean vapour pressure, over liquid water; null for air without any vapour. */
  readonly dewPointC: Points
  /** The same over ice, where it lies below freezing; else null. */
  readonly frostPointC: Points
}

interface Points {
  readonly min: number | null
  readonly max: number | null
  readonly mean: number | null
}

/** Temperatures are told apart by hundredths of a degree. */
const lowest = waterValidC.from * 100
const size = (waterValidC.to - waterValidC.from) * 100 + 1

/** Humidities by temperature: a log holds millions of readings and few temperatures, and saturation is reckoned once for each. */
function byTemperature({ rhPercent, temperatureC }: Series) {
  const counts = new Float64Array(size)
  const sums = new Float64Array(size)
  const lows = new Float32Array(size).fill(Infinity)
  const highs = new Float32Array(size).fill(-Infinity)
  for (let i = 0; i < rhPercent.length; i += 1) {
    const scaled = temperatureC[i]! * 100
    // What is no number fails this too.
    if (!(scaled >= lowest && scaled < lowest + size - 1)) continue
    const place = (scaled + (0.5 - lowest)) | 0
    const rh = rhPercent[i]!
    counts[place]! += 1
    sums[place]! += rh
    if (rh < lows[place]!) lows[place] = rh
    if (rh > highs[place]!) highs[place] = rh
  }
  return { counts, sums, lows, highs }
}

export function moistureOf(series: Series): MoistureSummary | null {
  const { counts, sums, lows, highs } = byTemperature(series)
  let [readings, sumPa, sumWater] = [0, 0, 0]
  let [minPa, maxPa, minWater, maxWater] = [Infinity, -Infinity, Infinity, -Infinity]
  for (let place = 0; place < size; place += 1) {
    if (counts[place] === 0) continue
    const celsius = (place + lowest) / 100
    const pa = saturationOverWaterPa(celsius) / 100
    const water = absoluteHumidityGPerM3(celsius, pa)
    readings += counts[place]!
    sumPa += sums[place]! * pa
    sumWater += sums[place]! * water
    minPa = Math.min(minPa, lows[place]! * pa)
    maxPa = Math.max(maxPa, highs[place]! * pa)
    minWater = Math.min(minWater, lows[place]! * water)
    maxWater = Math.max(maxWater, highs[place]! * water)
  }
  if (readings === 0) return null
  const points = (point: (vapourPa: number) => number): Points => {
    const told = (pa: number) => {
      const celsius = point(pa)
      return Number.isNaN(celsius) ? null : celsius
    }
    return { min: told(minPa), max: told(maxPa), mean: told(sumPa / readings) }
  }
  return {
    readings,
    absoluteHumidityGPerM3: { min: minWater, max: maxWater, mean: sumWater / readings },
    dewPointC: points(dewPointC),
    frostPointC: points(frostPointC),
  }
}
