import type { Sighting } from '../boxes/box.ts'
import { numberWords } from './band.ts'
import { instantDayWords } from './chart-time.ts'

interface FanDay {
  readonly at: number
  readonly eight: readonly [number, number]
  readonly half: readonly [number, number]
  readonly middle: number
}

export const between = ([low, high]: readonly [number, number]): string =>
  numberWords(low) === numberWords(high)
    ? `${numberWords(low)} %`
    : `${numberWords(low)} to ${numberWords(high)} %`

/** One day of the forecast, said. */
export function fanDayWords({ at, eight, half, middle }: FanDay): string {
  return `${instantDayWords(at, 'UTC')}: about ${numberWords(middle)} %; as likely as not ${between(half)}; eight times in ten ${between(eight)}`
}

interface Seen {
  readonly at: number
  readonly by: Sighting['kind']
  readonly between: readonly [number, number] | null
}

const seen: Readonly<Record<Sighting['kind'], string>> = {
  logger: 'read by a logger',
  'below-range': 'drier than the logger can read',
  strip: 'read on a strip',
  'gel-spent': 'gel of the colour of spent gel',
  'lid-loose': 'lid found loose, and seated then',
}

/** What was seen of a box on a day. */
export function seenWords({ at, by, between: within }: Seen): string {
  const day = `${instantDayWords(at, 'UTC')}: ${seen[by]}`
  return within === null
    ? day
    : `${day}, ${by === 'below-range' ? `below ${numberWords(within[1])} %` : between(within)}`
}

export function seenKindWords(by: Sighting['kind']): string {
  return seen[by]
}
