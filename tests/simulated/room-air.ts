import type { Surroundings } from '../../lib/boxes/box.ts'
import type { Drawn } from './chance-drawn.ts'

export interface Weather {
  readonly weatherRhPercent: number
  readonly weatherDays: number
}

/** Humidity of an invented room, day by day: a yearly course drawn from what is stated of it, and weather upon it. */
export function roomAir(
  surroundings: Surroundings & { readonly swingErrorRhPercent: number },
  { weatherRhPercent, weatherDays }: Weather,
  days: { readonly from: number; readonly count: number },
  chance: Drawn,
): Float64Array {
  const mean = chance.within(surroundings.meanRhPercent)
  const cosine = surroundings.swingRhPercent + (chance.normal() * surroundings.swingErrorRhPercent) / 2
  const sine = (chance.normal() * surroundings.swingErrorRhPercent) / 2
  const kept = Math.exp(-1 / weatherDays)
  let weather = weatherRhPercent * chance.normal()
  return Float64Array.from({ length: days.count }, (_, at) => {
    const angle = (2 * Math.PI * (days.from + at - surroundings.highestOn)) / 365.25
    weather = kept * weather + Math.sqrt(1 - kept ** 2) * weatherRhPercent * chance.normal()
    return Math.min(97, Math.max(3, mean + cosine * Math.cos(angle) + sine * Math.sin(angle) + weather))
  })
}
