import type { IsoDate } from '../base/calendar.ts'
import { dayWords } from './day.ts'
import { countWords, listWords } from './list.ts'

interface Moved {
  readonly days: number
  readonly needsHumidity: boolean
  readonly to: IsoDate | null
}

export function movementsSentence(movements: readonly Moved[]): string {
  if (movements.length === 0) return 'No find was taken out.'
  const needing = movements.filter(({ needsHumidity }) => needsHumidity)
  const days = needing.reduce((sum, one) => sum + one.days, 0)
  const still = movements.filter(({ to }) => to === null).length
  const outside =
    needing.length === 0
      ? 'none of them asks for a humidity'
      : `${countWords(days, 'day')} outside of their boxes for ${needing.length === 1 ? 'the one that asks' : `the ${needing.length} that ask`} for a humidity`
  const times = movements.length === 1 ? 'once' : countWords(movements.length, 'time')
  return `Finds were taken out ${times}: ${outside}${still === 0 ? '' : `; ${still} still out`}.`
}

interface Events {
  readonly water: readonly unknown[]
  readonly lids: readonly { readonly notSeatedOn: readonly IsoDate[] }[]
}

export function eventsSentence({ water, lids }: Events): string {
  const loose = lids.filter(({ notSeatedOn }) => notSeatedOn.length > 0).length
  const came =
    water.length === 0
      ? 'No water came in'
      : `Water came in ${water.length === 1 ? 'once' : countWords(water.length, 'time')}`
  return `${came}; ${loose === 0 ? 'no lid was found loose' : `the lids of ${countWords(loose, 'box', 'boxes')} were found not seated`}.`
}

const causeWords = { flood: 'flood', leak: 'a leak', condensation: 'condensation', rain: 'rain' } as const

interface Water {
  readonly on: IsoDate
  readonly room: string
  readonly cause: keyof typeof causeWords
  readonly boxes: readonly string[] | null
  readonly note: string
}

/** `3 March 2026, Metal store, by a leak: it reached TW-B01 and TW-B02. The pipe over shelf C.` */
export function waterLine({ on, room, cause, boxes: reached, note }: Water): string {
  const which =
    reached === null
      ? 'nobody wrote which boxes it reached'
      : reached.length === 0
        ? 'it reached no box'
        : `it reached ${listWords(reached)}`
  return `${dayWords(on)}, ${room}, by ${causeWords[cause]}: ${which}.${note === '' ? '' : ` ${note}`}`
}

/** Openings and the water of tubs, as far as somebody wrote them. */
export function tendedLines(
  opened: number,
  tubs: { readonly tubs: number; readonly waterChanges: number },
): readonly string[] {
  const lids =
    opened === 0 ? [] : [`Lids were opened ${countWords(opened, 'time')}, as far as somebody wrote it.`]
  if (tubs.tubs === 0) return lids
  const changed = tubs.waterChanges === 0 ? 'not once' : countWords(tubs.waterChanges, 'time')
  return [
    ...lids,
    `In ${countWords(tubs.tubs, 'tub')} of wet finds the water was changed ${changed}, as far as somebody wrote it.`,
  ]
}
