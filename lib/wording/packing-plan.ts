import type { Heed, Nowhere, PackProposal, Stays } from '../boxes/pack-proposal.ts'
import { bandWords, numberWords, temperatureWords } from './band.ts'
import { kilogramWords } from './box-gel.ts'
import { countWords } from './list.ts'

/** Why a find goes into no box, and what to do about it. */
export function nowhereWords(why: Nowhere): string {
  switch (why.code) {
    case 'stopped':
      return 'Nobody moves it until the competent body has cleared it.'
    case 'no-one-band':
      return why.holdingRhPercent === null
        ? 'No one humidity suits its parts. A conservator decides where it stands.'
        : `No one humidity suits its parts. A conservator decides where it stands; until then it is held at ${bandWords(why.holdingRhPercent)}, by itself.`
    case 'band-narrower':
      return `It bears ${numberWords(why.widthPercent)} % between dry and damp, and no box is planned for less than ${numberWords(why.narrowestPercent)} %. Ask a conservator.`
    case 'drier-than-gel':
      return `It wants ${numberWords(why.maxPercent)} % or below. A box with fresh gel begins at ${numberWords(why.driestPercent)} %, which leaves too little. Ask a conservator.`
    case 'too-long':
      return `In its bag a side of it measures ${why.sideMm} mm, ${why.byMm} mm more than the box that comes nearest has inside. It wants a longer box.`
    case 'too-big':
      return `In its bag it takes ${numberWords(why.volumeL)} l, and the largest box that suits it has room for ${numberWords(why.mostL)} l. It wants a larger box.`
    case 'too-heavy':
      return `It weighs ${kilogramWords(why.massKg)}, and the strongest box that suits it carries ${kilogramWords(why.mostKg)}.`
    case 'no-tub':
      return 'It is kept wet, and there is no tub.'
    case 'no-room-for-temperature':
      return `It is kept at ${temperatureWords(why)}, and no box that suits it stands in such a room.`
    case 'no-tight-box':
      return 'No room has its humidity, and every box that is large enough lets too much air through to hold it.'
    case 'no-box-alone':
      return 'It wants a box of its own, and none is empty.'
    case 'no-box-left':
      return 'Every box that suits it is full, or stays closed.'
    case 'no-box':
      return 'There is no box for it whose size is written.'
  }
}

/** The heading over finds that have the same reason, each with its own figures below. */
export const nowhereHeadings: Readonly<Record<Nowhere['code'], string>> = {
  stopped: 'Nobody touches them',
  'no-one-band': 'No one humidity suits their parts',
  'band-narrower': 'Their band is narrower than a box holds',
  'drier-than-gel': 'They want drier air than gel gives',
  'too-long': 'Too long for every box',
  'too-big': 'Too big for every box',
  'too-heavy': 'Too heavy for every box',
  'no-tub': 'No tub',
  'no-room-for-temperature': 'No room at their temperature',
  'no-tight-box': 'No box is tight enough',
  'no-box-alone': 'No empty box for what lies alone',
  'no-box-left': 'Every box that suits them is full or stays closed',
  'no-box': 'No box whose size is written',
}

/** What to see to as a find is put into its box; the shortest list that says it. */
export function heedLines(heed: readonly Heed[]): readonly string[] {
  const lines: string[] = []
  if (heed.includes('dry-first')) lines.push('Dry it in the open first; nothing goes into a box wet.')
  if (heed.includes('ask-first')) lines.push('Ask the conservator before it is moved.')
  if (heed.includes('size-supposed') || heed.includes('try-size')) lines.push('Try whether it fits.')
  if (heed.includes('room-temperature')) lines.push('See whether the room is cool or mild enough for it.')
  return lines
}

/** Why a find is left where it is, whatever else moves. */
export const staysWords: Readonly<Record<Stays['why'], string>> = {
  stopped: 'A stop stands on it: nobody touches it.',
  'beside-a-stop': 'A stop stands on something in its box: nobody opens the box.',
  'no-one-band': 'A conservator decides where it goes; nothing is put beside it.',
  'well-there': 'It is well where it is; nothing is put beside it.',
}

interface Told {
  readonly proposal: Pick<PackProposal, 'used' | 'atLeast' | 'gelKg' | 'moves' | 'nowhere'>
  readonly usedNow: number
  readonly provedFewest: boolean
}

/** What the proposal comes to, in sentences. */
export function packingLines({ proposal, usedNow, provedFewest }: Told): readonly string[] {
  const { used, atLeast, gelKg, moves, nowhere } = proposal
  const many = countWords(used, 'box', 'boxes')
  const boxes = used === usedNow ? `${many} in use, as many as now.` : `${many} in use instead of ${usedNow}.`
  const bound = provedFewest
    ? 'No packing of these finds needs fewer.'
    : `No packing of these finds needs fewer than ${atLeast}.`
  const gel =
    gelKg > 0
      ? `To keep them dry for a year would take about ${kilogramWords(gelKg)} of dry gel.`
      : 'They need no gel.'
  const moved = moves.length === 0 ? 'Nothing need be moved.' : `${countWords(moves.length, 'find')} to move.`
  const left =
    nowhere.length === 0
      ? []
      : [`${countWords(nowhere.length, 'find')} for which there is no box, with the reason below.`]
  return [`${boxes} ${bound}`, gel, moved, ...left]
}
