import type { Point, Score } from '../evidence/score.ts'
import { countWords } from './list.ts'

/** `never`, `3 in 100`, `about 7 in 10`, `always`: no finer than a person would say it. */
export function shareWords(share: number): string {
  if (share === 0) return 'never'
  if (share === 1) return 'always'
  if (share < 0.095 || share > 0.95)
    return `about ${Math.min(99, Math.max(1, Math.round(100 * share)))} in 100`
  return `about ${Math.round(10 * share)} in 10`
}

export interface Counted {
  readonly identified: number
  readonly enough: number
}

/** Why nothing is shown yet, and how many are still needed. */
export function tooFewWords({ identified, enough }: Counted): string {
  const known =
    identified === 0 ? 'Nothing has been found out yet' : `${countWords(identified, 'answer')} known so far`
  return `${known}; ${enough - identified} more are needed. With fewer than ${enough}, chance alone would make the tool look good or bad, so nothing is shown before.`
}

/** Whether what came out lies where it should, within what chance leaves open. */
export type Fit = 'fits' | 'more' | 'less'

export const fitOf = ({ stated, range: [low, high] }: Pick<Point, 'stated' | 'range'>): Fit =>
  stated < low ? 'more' : stated > high ? 'less' : 'fits'

export const fitWords: Readonly<Record<Fit, string>> = {
  fits: 'as said, as far as chance lets one tell',
  more: 'more often than said',
  less: 'less often than said',
}

export const cameTrueOf = ({ cameTrue, forecasts }: Point): number => Math.round(cameTrue * forecasts)

/** `When the tool said about 7 in 10, it was so in about 6 in 10 (11 of 18 times).` */
export function pointWords(point: Point): string {
  const { stated, cameTrue, forecasts } = point
  const so =
    cameTrue === 0 || cameTrue === 1 ? `${shareWords(cameTrue)} was so` : `was so in ${shareWords(cameTrue)}`
  const fit = fitOf(point)
  const more = fit === 'fits' ? '' : `, ${fitWords[fit]}`
  return `When the tool said ${shareWords(stated)}, it ${so} (${cameTrueOf(point)} of ${countWords(forecasts, 'time')})${more}.`
}

/** The whole diagram in a sentence. */
export function reliabilityWords({ reliability }: Score): string {
  const off = reliability.filter((point) => fitOf(point) !== 'fits').length
  if (off === 0) return 'What came out is what was said, as far as chance lets one tell.'
  return `In ${off} of ${countWords(reliability.length, 'group')} it came out otherwise than was said, by more than chance.`
}

export function leaderWords({ leaderTrue, identified }: Score): string {
  return `The explanation in front was the true one ${Math.round(leaderTrue * identified)} times in ${identified}.`
}

export function noneOfTheseCountWords({ noneOfThese }: Score): string | null {
  if (noneOfThese === 0) return null
  return `${countWords(noneOfThese, 'answer')} turned out to be nothing that the evidence base lists; there it could not be right.`
}

/** How far off, 0 to 2, with two places: more would be noise. */
export const missWords = (miss: number): string => miss.toFixed(2)

export const missMeans =
  'How far off is reckoned from all explanations of a matter together: 0 is always sure and right, 2 always sure and wrong.'

/** From this share of a guesser's miss on, a difference is not worth the word. A house rule. */
const hardly = 0.95

/** The tool beside somebody who holds all explanations of a matter for equally likely. */
export function guesserWords({ brier, brierOfGuessing }: Score): string {
  const share = brier / brierOfGuessing
  if (share > 1) return 'Somebody who only guesses would have been nearer to the truth.'
  if (share > hardly) return 'Somebody who only guesses would have been about as near to the truth.'
  return `It was off by ${shareWords(share)} of what somebody who only guesses is off by.`
}
