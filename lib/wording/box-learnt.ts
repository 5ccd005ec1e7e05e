import type { SaysLittle } from '../boxes/learn-little.ts'
import type { Misfit } from '../boxes/learn-misfit.ts'
import type { Renewal } from '../boxes/renewal.ts'
import { numberWords } from './band.ts'

/** Why the readings of a box say little of how leaky it is. */
export const littleWords: Readonly<Record<SaysLittle, string>> = {
  'no-sightings': 'Nothing was read in it since its gel was renewed.',
  'below-range': 'All that was read lies below what the logger can report: dry, nobody knows how dry.',
  'too-short': 'It was read for too short a time: gel and seasons move a box no faster.',
  'error-exceeds-change': 'It changed less than logger or strip may be wrong.',
  'at-room-level':
    'It stands as damp as its room, which any leaky box would: renew its gel, then read it again.',
}

/** What does not fit where a box strays from the reckoning. */
export const misfitWords: Readonly<Record<Misfit, string>> = {
  strays:
    'Its readings are told better by gel that takes up less the damper it gets, or by warm and cold seasons, than by the plain reckoning.',
  unexplained:
    'Its readings leap more than logger and weather explain. Was the logger moved, the lid opened, the gel changed and not noted?',
  'leak-out-of-range':
    'It would have to be far leakier or far tighter than such boxes are. Are volume and gel written down right?',
}

/** What set the day on which the gel is to be renewed. */
export function renewalBecauseWords({
  because,
  guardRhPercent,
}: Pick<Renewal, 'because' | 'guardRhPercent'>): string | null {
  switch (because) {
    case 'one-in-ten':
      return 'Set for when one such box in ten would be over its limit.'
    case 'sensor-guard':
      return `Set for when it likely comes within ${numberWords(guardRhPercent ?? 0)} % of its limit, by which logger or strip may be wrong.`
    case 'over-already':
      return 'It is more likely over its limit than not.'
    case null:
      return null
  }
}
