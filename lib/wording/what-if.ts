import type { Quantiles } from '../base/range.ts'
import { amountWords, lastsWords, likelyWords, type Amount } from './what-if-figures.ts'

interface Upkeep {
  readonly renewalsPerYear: Quantiles
  readonly kgPerYear: Quantiles
}

interface Bought {
  readonly before: Upkeep
  readonly after: Upkeep
  readonly saved: Upkeep
}

/** Fewer renewals than this a year are none that anybody would notice. */
const fewest = 0.05
/** A saving below this share of what is used is hardly one. */
const hardlyShare = 0.02
const hardlyKg = 0.02

/** What the boxes ask for in a year as they are. */
export function upkeepWords({ renewalsPerYear, kgPerYear }: Upkeep, boxes: number): string {
  if (renewalsPerYear.p90 < fewest)
    return boxes === 1
      ? 'It never comes to its limit, so its gel needs no renewal.'
      : 'None of them comes to its limit, so no gel needs renewal.'
  const year = `About ${amountWords(renewalsPerYear.p50, 'renewals')} renewals a year${likely(renewalsPerYear, 'renewals')}`
  const gel = `with ${amountWords(kgPerYear.p50, 'gel')} of dry gel${likely(kgPerYear, 'gel')}`
  const all = `${year}; ${gel}.`
  return boxes === 1 ? `A filling lasts ${lastsSpread(renewalsPerYear)}. ${all}` : all
}

const likely = ({ p10, p90 }: Quantiles, of: Amount) => likelyWords(p10, p90, of)

function lastsSpread({ p10, p50, p90 }: Quantiles): string {
  const [short, middle, long] = [lastsWords(p90), lastsWords(p50), lastsWords(p10)]
  if (short === long) return `about ${middle}`
  const [number, unit] = short.split(' ')
  const from = unit !== undefined && long.endsWith(` ${unit}`) ? number : short
  return `about ${middle}, likely between ${from} and ${long}`
}

/** What a change buys, the first thing to be read: `About 14 renewals a year fewer, likely between 9 and 20.` */
export function boughtWords(bought: Bought): string {
  const { renewalsPerYear: renewals, kgPerYear: kg } = bought.saved
  return `${renewalsSaved(renewals)} ${gelSaved(kg, bought.before.kgPerYear, renewals)}`
}

function renewalsSaved(saved: Quantiles): string {
  if (isNothing(saved, fewest)) return 'Nothing changes in how often gel is renewed.'
  return `${differenceWords(saved, 'renewals')}.`
}

function gelSaved(saved: Quantiles, before: Quantiles, renewals: Quantiles): string {
  const hardly = Math.max(hardlyKg, hardlyShare * before.p50)
  if (isNothing(saved, hardly)) {
    return isNothing(renewals, fewest)
      ? 'The gel that is used stays the same.'
      : 'Hardly a gram of gel is saved by it: the same water leaks in, and each filling is as much larger as it lasts longer.'
  }
  return `${differenceWords(saved, 'gel')}.`
}

const isNothing = ({ p10, p90 }: Quantiles, below: number) => Math.abs(p10) < below && Math.abs(p90) < below

const difference = {
  renewals: { less: 'renewals a year fewer', more: 'renewals a year more', edge: fewest },
  gel: { less: 'of dry gel a year less', more: 'of dry gel a year more', edge: hardlyKg / 4 },
} as const

/** More or fewer a year, with the range; where both may be, both are said. */
function differenceWords({ p10, p50, p90 }: Quantiles, of: Amount): string {
  const { less, more, edge } = difference[of]
  const size = (value: number) => amountWords(value, of)
  const say = (value: number, words: string) =>
    `${size(value)} ${size(value) === '1' ? words.replace('renewals', 'renewal') : words}`
  if (p10 < -edge && p90 > edge) return `Anything from ${say(-p10, more)} to ${say(p90, less)}`
  if (p50 < 0) return `About ${say(-p50, more)}${likelyWords(Math.max(0, -p90), -p10, of)}`
  return `About ${say(p50, less)}${likelyWords(Math.max(0, p10), p90, of)}`
}

/** Of one box: how long a filling lasts now and then. */
export function lastsThenWords({ before, after }: Bought): string {
  if (before.renewalsPerYear.p90 < fewest) return ''
  if (after.renewalsPerYear.p90 < fewest) return 'It would never come to its limit.'
  return `A filling would last ${lastsSpread(after.renewalsPerYear)}; now ${lastsSpread(before.renewalsPerYear)}.`
}
