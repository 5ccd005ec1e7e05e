import type { IsoDate } from '../base/calendar.ts'
import { dayWords } from './day.ts'
import { countWords } from './list.ts'

export const wettingWords = {
  flood: 'water came in from outside',
  leak: 'a pipe, tank or roof leaked',
  rain: 'rain came in',
  condensation: 'water settled out of the air',
} as const

type How = keyof typeof wettingWords

const made: Readonly<Record<How, string>> = {
  flood: 'a flood',
  leak: 'a leak',
  rain: 'rain',
  condensation: 'condensation',
}

/** Goes into the notes of a record that nobody wrote from the find itself. */
export function carriedOnWords(how: How, on: IsoDate, recordedOn: IsoDate | undefined): string {
  const before = recordedOn === undefined ? 'as recorded before' : `as recorded on ${dayWords(recordedOn)}`
  return `Made wet by ${made[how]} on ${dayWords(on)}. All else is carried over ${before}; nobody has looked at the find since.`
}

export function floodEnteredWords({
  wetted,
  inWater,
  lookedAtSince,
}: {
  readonly wetted: readonly string[]
  readonly inWater: number
  readonly lookedAtSince: readonly string[]
}): readonly string[] {
  const many = (count: number) => (count === 1 ? 'is' : 'are')
  return [
    `${countWords(wetted.length, 'find')} ${many(wetted.length)} recorded as wet and planned anew.`,
    ...(inWater === 0
      ? []
      : [`${countWords(inWater, 'find')} lay in water before: nothing changes for them.`]),
    ...(lookedAtSince.length === 0
      ? []
      : [
          `${countWords(lookedAtSince.length, 'find')} ${many(lookedAtSince.length)} left as recorded since: ${lookedAtSince.join(', ')}.`,
        ]),
  ]
}
