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

const lowest = waterValidC.from * 100
const size = (waterValidC.to - waterValidC.from) * 100 + 1

export function moistureOf({ rhPercent, temperatureC }: Series): MoistureSummary | null {
  // Pressure and water of saturated air by hundredths of a degree, computed when first met: a log holds few temperatures and
  // many readings.
  const saturated = new Float64Array(2 * size)
  let [readings, sumPa, sumWater] = [0, 0, 0]
  let [minPa, maxPa, minWater, maxWater] = [Infinity, -Infinity, Infinity, -Infinity]
  for (let i = 0; i < rhPercent.length; i += 1) {
    const scaled = temperatureC[i]! * 100
    // What is no number fails this too.
    if (!(scaled >= lowest && scaled < lowest + size - 1)) continue
    const place = ((scaled + (0.5 - lowest)) | 0) * 2
    if (saturated[place] === 0) {
      const celsius = (place / 2 + lowest) / 100
      saturated[place] = saturationOverWaterPa(celsius) / 100
      saturated[place + 1] = absoluteHumidityGPerM3(celsius, saturated[place])
    }
    const pa = rhPercent[i]! * saturated[place]!
    const grams = rhPercent[i]! * saturated[place + 1]!
    readings += 1
    sumPa += pa
    sumWater += grams
    if (pa < minPa) minPa = pa
    if (pa > maxPa) maxPa = pa
    if (grams < minWater) minWater = grams
    if (grams > maxWater) maxWater = grams
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
