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

/** Saturation by hundredths of a degree, computed when first met: a log holds few temperatures and many readings. */
function saturationByHundredth() {
  const lowest = waterValidC.from * 100
  const size = (waterValidC.to - waterValidC.from) * 100 + 1
  return { pressure: new Float64Array(size), water: new Float64Array(size), lowest, size }
}

export function moistureOf({ rhPercent, temperatureC }: Series): MoistureSummary | null {
  const { pressure, water, lowest, size } = saturationByHundredth()
  let [readings, sumPa, sumWater] = [0, 0, 0]
  let [minPa, maxPa, minWater, maxWater] = [Infinity, -Infinity, Infinity, -Infinity]
  for (let i = 0; i < rhPercent.length; i += 1) {
    const place = Math.round(temperatureC[i]! * 100) - lowest
    // Also what is no number fails this.
    if (!(place >= 0 && place < size)) continue
    if (pressure[place] === 0) {
      const celsius = (place + lowest) / 100
      pressure[place] = saturationOverWaterPa(celsius)
      water[place] = absoluteHumidityGPerM3(celsius, pressure[place])
    }
    const share = rhPercent[i]! / 100
    const [pa, grams] = [share * pressure[place]!, share * water[place]!]
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
