import type { BetweenLaws } from '../climate/gel-warmed.ts'
import type { HumidityAccount } from '../climate/humidity-account.ts'
import {
  degreesWords,
  emptyRows,
  mindName,
  percentWords,
  surfacePart,
  type ToldRow,
} from './humidity-parts.ts'

/** An answer: in a line, then number by number, then what has to be said with it. */
export interface ToldAnswer {
  readonly headline: string
  readonly rows: readonly ToldRow[]
  readonly lines: readonly string[]
}

/** What the air of a room wets. */
export function roomHeadline({ dewPointC, frostPointC }: HumidityAccount): string {
  if (frostPointC !== null)
    return `Anything at ${degreesWords(frostPointC)} or colder gathers frost in this air.`
  return dewPointC === null
    ? 'This air is too dry to wet anything.'
    : `Anything at ${degreesWords(dewPointC)} or colder gets wet in this air.`
}

const short = (rhPercent: number) => (rhPercent > 100 ? 'more than it can hold' : percentWords(rhPercent))

function gelText(gel: BetweenLaws | null): string {
  if (gel === null) return 'not known: the laws hold from 5 to 40 °C, and for gel that stands at 40 % or less'
  const [low, high] = [percentWords(gel.lowPercent), percentWords(gel.highPercent)]
  if (gel.laws === 1) return `${low}, by the one published law that reaches there`
  return low === high
    ? `${low}, by two published laws`
    : `between ${low} and ${high}: two published laws disagree about the way it goes`
}

/** What becomes of the air of a room, of a box without gel and of a box with gel. */
export function changeAnswer(
  { asked, after }: HumidityAccount,
  gelRhPercent: number,
  gel: BetweenLaws | null,
): ToldAnswer | null {
  if (after === null || asked.toTemperatureC === null) return null
  return {
    headline: `At ${degreesWords(asked.toTemperatureC)} the room is at ${short(after.ventedPercent)}, a closed box that held the same air at ${short(after.sealedPercent)}.`,
    rows: [
      ...emptyRows(after),
      { name: `A closed box with much dry gel, at ${percentWords(gelRhPercent)} before`, text: gelText(gel) },
    ],
    lines: [
      'Much gel means five grams to the litre or more, and it takes some hours to settle. Wood, card and paper in the room or the box give and take water too.',
    ],
  }
}

/** What happens on a colder or warmer thing in a room. */
export function surfaceAnswer(account: HumidityAccount): ToldAnswer | null {
  const part = surfacePart(account)
  const { surface } = account
  if (part === null || surface === null) return null
  return {
    headline:
      surface.gathers === 'none'
        ? `It stays dry: the air at its surface is at ${percentWords(surface.rhPercent)}.`
        : `${surface.gathers === 'dew' ? 'Dew' : 'Frost'} gathers on it.`,
    rows: part.rows.filter(({ name }) => name !== mindName),
    lines: part.rows.flatMap(({ name, text }) => (name === mindName ? [text] : [])),
  }
}
