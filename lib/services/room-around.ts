import type { Surroundings } from '../boxes/box.ts'
import type { Figures } from '../boxes/figure-value.ts'
import { assumedRoom } from '../boxes/leak-figures.ts'
import { surroundingsOf } from '../boxes/surroundings.ts'
import { correctedRhPercent } from '../climate/fixed-points-correction.ts'
import type { Series } from '../logger/series.ts'
import { correctionOf, daysStood } from './box-sightings.ts'
import type { StoreData } from './store-data.ts'

const dayMs = 86_400_000

/** What loggers read in a room itself, a value a day; null where none stood there. */
function roomSeries(data: StoreData, room: string): Series | null {
  const days = daysStood(data, { room })
    .filter(({ day }) => !day.atFloor)
    .map(({ logger, day }) => {
      const line = correctionOf(logger)
      return {
        atMs: Date.parse(day.day) + dayMs / 2,
        rh: line === null ? day.meanRhPercent : correctedRhPercent(line, day.meanRhPercent),
        temperature: day.meanTemperatureC ?? Number.NaN,
      }
    })
    .toSorted((a, b) => a.atMs - b.atMs)
    // Two loggers in one room on one day: the first in the register speaks.
    .filter((one, at, all) => at === 0 || one.atMs !== all[at - 1]!.atMs)
  if (days.length === 0) return null
  return {
    atMs: Float64Array.from(days, ({ atMs }) => atMs),
    rhPercent: Float32Array.from(days, ({ rh }) => rh),
    temperatureC: Float32Array.from(days, ({ temperature }) => temperature),
  }
}

/** The yearly course of humidity around the boxes of a room, from the best that is known of it. */
export function surroundingsOfRoom(data: StoreData, name: string, knowledge: Figures): Surroundings {
  const room = data.rooms.find(({ given }) => given.room === name)?.given
  return surroundingsOf(
    {
      series: name === '' ? null : roomSeries(data, name),
      rhLowPercent: room?.rh_low ?? null,
      rhHighPercent: room?.rh_high ?? null,
    },
    assumedRoom(knowledge),
  )
}
