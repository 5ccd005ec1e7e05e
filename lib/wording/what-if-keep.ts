import type { Range } from '../base/range.ts'
import { numberWords } from './band.ts'
import { airWords } from './box-outlook.ts'
import { gelCautionWords } from './gel.ts'
import { airChangesFromWords } from './store-place.ts'
import { aboutKilogramWords, roundWords } from './what-if-figures.ts'

interface Keep {
  readonly box: string
  readonly limitRhPercent: number
  readonly days: number
  readonly gelKg: { readonly nominal: number | null; readonly nineInTen: number | null }
  readonly holdsKg: number | null
  readonly bearsRhPercent: number | null
  readonly startRhPercent: number
  readonly airChangesPerDay: Range
  readonly airChangesFrom: keyof typeof airChangesFromWords
  readonly surroundings: {
    readonly meanRhPercent: Range
    readonly from: 'logger' | 'written' | 'assumed'
  }
  readonly cautions: readonly (keyof typeof gelCautionWords)[]
}

/** The answer: how much dry gel, and how that compares with what the box holds. */
export function keepWords({ gelKg, limitRhPercent, startRhPercent, holdsKg }: Keep): readonly string[] {
  const { nominal, nineInTen } = gelKg
  if (nominal === null)
    return [
      startRhPercent >= limitRhPercent
        ? `No amount of gel does it: dried gel begins at about ${numberWords(startRhPercent)} %.`
        : 'No amount of gel does it.',
    ]
  if (nineInTen === 0) return ['No gel is needed: the room is no damper than that.']
  const sure =
    nineInTen === null
      ? 'none is sure to be enough'
      : `${aboutKilogramWords(nineInTen)} to hold in nine cases of ten`
  const lines = [`About ${aboutKilogramWords(nominal)} of dry gel; ${sure}.`]
  if (holdsKg !== null) lines.push(`It holds ${holdsKg === 0 ? 'none' : aboutKilogramWords(holdsKg)} now.`)
  return lines
}

/** What one must know beside the answer. */
export function keepCareLines({ cautions, limitRhPercent, bearsRhPercent }: Keep): readonly string[] {
  const bears =
    bearsRhPercent !== null && bearsRhPercent < 100 && limitRhPercent > bearsRhPercent
      ? [
          `Its finds bear ${numberWords(bearsRhPercent)} % at most: ${numberWords(limitRhPercent)} % is too much for them.`,
        ]
      : []
  return [...bears, ...cautions.map((caution) => gelCautionWords[caution])]
}

const roomFrom = {
  logger: 'by its own logger',
  written: 'as written',
  assumed: 'only supposed',
} as const

/** What the answer rests on. */
export function keepRestsLines({
  airChangesPerDay,
  airChangesFrom,
  surroundings,
  startRhPercent,
}: Keep): readonly string[] {
  const { low, high } = airChangesPerDay
  const { meanRhPercent: room, from } = surroundings
  return [
    `One filling begun today, with gel dried to about ${numberWords(startRhPercent)} %. The air of the box changes ${airWords(low)} to ${airWords(high)} times a day, ${airChangesFromWords[airChangesFrom]}; that of the room has ${roundWords(room.low)} to ${roundWords(room.high)} % over the year, ${roomFrom[from]}.`,
  ]
}

export const cannotKeepWords = {
  tub: 'It is a tub of water: no gel goes in.',
  'no-volume':
    'Nobody has written how large it is. Its volume, or its length, width and height, would settle that.',
} as const

/** The question itself, for paper. */
export const keepAskedWords = ({
  keep,
  limit,
  months,
}: Readonly<Record<'keep' | 'limit' | 'months', string>>): string =>
  `Box ${keep} kept under ${limit} % for ${months} months:`
