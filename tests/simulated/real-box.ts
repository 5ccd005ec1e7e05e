import { saturationAbsoluteHumidityGPerM3 } from '../../lib/climate/humidity.ts'
import type { RealGel } from './real-gel.ts'

export interface RealBox {
  readonly volumeL: number
  readonly gelKg: number
  /** Air changes a day, day by day. */
  readonly leak: (day: number) => number
  readonly startRhPercent: number
  readonly gel: RealGel
  /** By how much of its humidity gel that gives water off stands drier than gel that takes it up, holding the same [one]. */
  readonly hysteresis: number
  /** Temperature of room and box, day by day [°C]. */
  readonly temperatureC: Float64Array
}

/** A box that is not what the leak model takes it for: bent isotherm, seasons of temperature, a gel that remembers. */
export function realCourse(box: RealBox, air: Float64Array): Float64Array {
  const { volumeL, gelKg, leak, gel, hysteresis, temperatureC } = box
  let water = gel.holdsGPerKg(box.startRhPercent, temperatureC[0]!)
  let wet = 1
  const over = (day: number) => gel.rhPercent(water, temperatureC[day]!) * (1 - hysteresis * (1 - wet))
  return Float64Array.from(air, (outside, day) => {
    const now = over(day)
    const passes =
      (volumeL / 1000) * leak(day) * saturationAbsoluteHumidityGPerM3(temperatureC[day]!, 'water')
    const taken = (passes * (outside - now)) / 100 / gelKg
    // From one branch to the other within three percent of what the gel holds.
    wet = Math.min(1, Math.max(0, wet + taken / (0.03 * water)))
    water = Math.max(1, water + taken)
    return now
  })
}

/** A store that is warmer in summer, with warmer and cooler weeks. */
export function storeWarmth(
  { meanC, swingC, warmestOn }: { meanC: number; swingC: number; warmestOn: number },
  days: { readonly from: number; readonly count: number },
  normal: () => number,
): Float64Array {
  let week = normal()
  return Float64Array.from({ length: days.count }, (_, at) => {
    week = Math.exp(-1 / 7) * week + Math.sqrt(1 - Math.exp(-2 / 7)) * normal()
    return meanC + swingC * Math.cos((2 * Math.PI * (days.from + at - warmestOn)) / 365.25) + week
  })
}
