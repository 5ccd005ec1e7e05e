import type { Storage } from '../engine/plan.ts'
import { bandMark, bandWords } from './band.ts'

type Kept = Pick<Storage, 'keep' | 'rhPercent' | 'conflict'>

/** How a find is kept, in the least words: `keep wet`, `≤ 12 %`, `parts disagree`. */
export function keepWords({
  keep,
  rhPercent,
  conflict,
}: Omit<Kept, 'conflict'> & { readonly conflict: object | null }): string {
  if (keep === 'wet') return 'keep wet'
  if (conflict !== null) return 'parts disagree'
  if (rhPercent === null) return 'no advice'
  return bandMark(rhPercent) === 'any' ? 'any humidity' : bandMark(rhPercent)
}

/** The same as a sentence. */
export function keepSentence({ keep, rhPercent, conflict }: Kept): string {
  if (keep === 'wet') return 'Keep it wet. No storage humidity is given for a find that is kept in water.'
  if (conflict !== null)
    return 'Its parts ask for different humidities. No one humidity suits it; a conservator decides.'
  if (rhPercent === null) return 'We have no advice on one humidity for it.'
  if (rhPercent.min <= 0 && rhPercent.max >= 100) return 'Nothing limits its humidity.'
  return `Relative humidity: ${bandWords(rhPercent)}.`
}

const wetOrDry = { wet: 'Keep it wet', dry: 'Keep it dry', 'as-found': 'Keep it as it was found' } as const

export function wetOrDryWords(keep: Storage['keep']): string {
  return wetOrDry[keep]
}
