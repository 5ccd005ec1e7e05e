import type { Sighting } from '../../lib/boxes/box.ts'
import type { Drawn } from './chance-drawn.ts'

export interface Sensor {
  readonly errorRhPercent: number
  readonly floorRhPercent: number
  readonly driftRhPercentPerYear: number
  readonly wanderRhPercent: number
}

/** What a logger reports of the truth, a mean a day: an offset of its own, drift, and a wander that lasts for days. */
export function loggerReads(
  truth: Float64Array,
  { from, firstDay, lastDay, serial }: { from: number; firstDay: number; lastDay: number; serial?: string },
  sensor: Sensor,
  chance: Drawn,
): readonly Sighting[] {
  const { errorRhPercent, floorRhPercent } = sensor
  let offset = (chance.normal() * errorRhPercent) / 2
  const kept = Math.exp(-1 / 3.5)
  let wander = sensor.wanderRhPercent * chance.normal()
  return Array.from({ length: lastDay - firstDay + 1 }, (_, at): Sighting => {
    const on = firstDay + at
    offset += (sensor.driftRhPercentPerYear * chance.normal()) / Math.sqrt(365.25)
    wander = kept * wander + Math.sqrt(1 - kept ** 2) * sensor.wanderRhPercent * chance.normal()
    const rhPercent = truth[on - from]! + offset + wander
    const whose = serial === undefined ? {} : { serial }
    return rhPercent <= floorRhPercent
      ? { kind: 'below-range', on, floorRhPercent, errorRhPercent, ...whose }
      : { kind: 'logger', on, rhPercent, errorRhPercent, ...whose }
  })
}

/** A strip with fields five percent wide, as somebody reads it through the lid every so many days. */
export function stripReads(
  truth: Float64Array,
  {
    from,
    firstDay,
    lastDay,
    everyDays,
  }: { from: number; firstDay: number; lastDay: number; everyDays: number },
  { errorRhPercent, readingRhPercent }: { errorRhPercent: number; readingRhPercent: number },
  chance: Drawn,
): readonly Sighting[] {
  const offset = (chance.normal() * errorRhPercent) / 2
  const sightings: Sighting[] = []
  for (let on = firstDay; on <= lastDay; on += everyDays) {
    const seen = truth[on - from]! + offset + readingRhPercent * chance.normal()
    const lowRhPercent = Math.max(0, 5 * Math.floor(seen / 5))
    sightings.push({ kind: 'strip', on, lowRhPercent, highRhPercent: lowRhPercent + 5, errorRhPercent })
  }
  return sightings
}
