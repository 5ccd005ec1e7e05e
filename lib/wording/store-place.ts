import type { Surroundings } from '../boxes/box.ts'
import type { RoomGiven } from '../record/places.ts'
import { numberWords } from './band.ts'
import { capital } from './capital.ts'
import { countWords } from './list.ts'

/** How a room is run, and how that is known. */
export function surroundingsWords({ meanRhPercent, swingRhPercent, from }: Surroundings): string {
  const mean = `about ${numberWords(meanRhPercent.nominal)} %`
  const swing = swingRhPercent < 1 ? '' : `, ${numberWords(swingRhPercent)} % up and down over the year`
  const known = {
    logger: 'by its own logger',
    written: 'as written',
    assumed: 'supposed, for nobody has written it and no logger has read it',
  }[from]
  return `Room air ${mean}${swing}, ${known}.`
}

/** `28 to 42 %, 17 to 21 °C.`; what nobody has written is said. */
export function roomClimateWords({ rh_low, rh_high, t_low, t_high }: Omit<RoomGiven, 'room'>): string {
  const span = (low: number | undefined, high: number | undefined, unit: string, what: string) => {
    if (low === undefined && high === undefined) return `${what} not written`
    if (low === undefined) return `up to ${numberWords(high!)} ${unit}`
    return high === undefined
      ? `from ${numberWords(low)} ${unit}`
      : `${numberWords(low)} to ${numberWords(high)} ${unit}`
  }
  return `${capital(span(rh_low, rh_high, '%', 'humidity'))}, ${span(t_low, t_high, '°C', 'temperature')}.`
}

interface Counted {
  readonly boxes: number
  readonly finds: number
  readonly tubs: number
  readonly tubsPast: number
}

const small = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
]

/** Small numbers as words, as one says them: `nine tubs`. */
export function fewWords(count: number, one: string, many = `${one}s`): string {
  return `${small[count] ?? count.toLocaleString('en-GB')} ${count === 1 ? one : many}`
}

/** What stands in a store or room: `40 boxes with 312 finds; nine tubs, two past their days`. */
export function standsWords({ boxes, finds, tubs, tubsPast }: Counted): string {
  const past =
    tubsPast === 0 ? '' : `, ${small[tubsPast] ?? tubsPast} past ${tubsPast === 1 ? 'its' : 'their'} days`
  if (boxes === 0 && tubs > 0) return `${fewWords(tubs, 'tub')} with ${countWords(finds, 'find')}${past}`
  const dry = `${countWords(boxes, 'box', 'boxes')} with ${countWords(finds, 'find')}`
  if (tubs === 0) return dry
  return `${dry}; ${fewWords(tubs, 'tub')}${past}`
}

/** What the air exchange of a box rests on. */
export const airChangesFromWords = {
  logger: 'learnt from its own logger',
  rounds: 'learnt from strips read in it',
  'earlier-gel': 'learnt in it before its gel was last renewed',
  'like-boxes': 'as other boxes of its model do',
  written: 'as written',
  assumed: 'supposed: nobody has measured a box like it here',
} as const
