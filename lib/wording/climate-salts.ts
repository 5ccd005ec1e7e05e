import { beyondPointsPercent, correctedRhPercent } from '../climate/fixed-points-correction.ts'
import type { CorrectionBySources } from '../climate/fixed-points-sources.ts'
import type { Salt } from '../climate/fixed-points.ts'
import { capital } from './capital.ts'
import type { ToldAnswer } from './climate-room.ts'
import { percentWords } from './humidity-parts.ts'
import { beyondPointsWords, correctionWords, fixedPointWords } from './humidity-salts.ts'

const tenths = (value: number) =>
  `${value.toLocaleString('en-GB', { minimumFractionDigits: 1, maximumFractionDigits: 1 })} %`

/** `Lithium chloride`, as it stands in a list to choose from. */
export const saltLabel = (salt: Salt): string => capital(salt.replaceAll('-', ' '))

/** What no check over salts takes away: figures of the knowledge, in percentage points. */
export interface LeftOver {
  readonly hysteresisPercent: number
  readonly driftAYearPercent: number
}

function nowHeadline({ correction }: CorrectionBySources, readRhPercent: number): string {
  const corrected = correctedRhPercent(correction, readRhPercent)
  const reads = `When it reads ${percentWords(readRhPercent)}`
  if (corrected < 0 || corrected > 100)
    return `${reads}, the correction does not reach there: it would give ${tenths(corrected)}.`
  const guess = beyondPointsPercent(correction, readRhPercent) > 0 ? ', as a guess,' : ''
  return `${reads}, the air is${guess} at about ${tenths(corrected)}.`
}

/** What a logger held against salts really reads, and how far that may be trusted. */
export function saltsAnswer(found: CorrectionBySources, readRhPercent: number, left: LeftOver): ToldAnswer {
  const { correction, points, byHandbook } = found
  return {
    headline: nowHeadline(found, readRhPercent),
    rows: [
      { name: 'Correction', text: correctionWords(correction) },
      ...points.map((point) => ({ name: saltLabel(point.salt), text: fixedPointWords(point) })),
      {
        name: 'By the handbook alone',
        text:
          byHandbook === null
            ? 'it does not know these salts at that temperature'
            : `it would be ${tenths(correctedRhPercent(byHandbook, readRhPercent))}`,
      },
      {
        name: 'How far to trust it',
        text:
          beyondPointsWords(correction, readRhPercent) ??
          (correction.fromRhPercent === correction.toRhPercent
            ? 'At that one reading. Check it over a second salt, on the other side of what the boxes are kept at.'
            : 'It lies between the two salts, where the correction holds.'),
      },
      {
        name: 'What no salt takes away',
        text: `about ${left.hysteresisPercent} points, for a sensor remembers damper or drier air, and up to ${left.driftAYearPercent} points of drift a year; vapours of solvents and acids do more`,
      },
    ],
    lines: [],
  }
}
