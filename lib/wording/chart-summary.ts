import type { Bucket } from '../logger/buckets.ts'
import { numberWords } from './band.ts'
import { rhWords } from './chart-reading.ts'
import { instantDayWords, instantWords, lastingWords } from './chart-time.ts'
import { countWords } from './list.ts'

interface Span {
  readonly fromMs: number
  readonly toMs: number
}

interface Told {
  readonly zone: string
  readonly buckets: readonly Bucket[]
  readonly above: readonly Span[]
  readonly gaps: readonly Span[]
  readonly ground: { readonly limitRhPercent: number | null; readonly floorRhPercent: number | null }
}

const lasted = ({ fromMs, toMs }: Span) => toMs - fromMs
const total = (spans: readonly Span[]) => spans.reduce((sum, span) => sum + lasted(span), 0)

/** What a stretch of readings says, in facts: its range, the time above the limit, the worst with its date, what is missing. */
export function viewSummary({ zone, buckets, above, gaps, ground }: Told): readonly string[] {
  const read = buckets.filter(({ maxRhPercent }) => maxRhPercent !== null)
  if (read.length === 0) return ['Nothing was read in this stretch.']
  const { limitRhPercent: limit, floorRhPercent: floor } = ground
  const lowest = Math.min(...read.map(({ minRhPercent }) => minRhPercent ?? Infinity))
  const worst = read.reduce((high, one) => ((one.maxRhPercent ?? 0) > (high.maxRhPercent ?? 0) ? one : high))
  const highest = worst.maxRhPercent ?? 0
  const range =
    highest === lowest || (floor !== null && highest <= floor)
      ? `Read: ${rhWords(lowest, highest, floor)}.`
      : `Read: ${rhWords(lowest, highest, floor)}; the highest on ${momentOf(worst, zone)}.`
  const lines = [range]
  if (limit !== null) lines.push(aboveWords(above, limit, zone))
  if (gaps.length > 0)
    lines.push(`No readings for ${lastingWords(total(gaps))}, in ${countWords(gaps.length, 'gap')}.`)
  return lines
}

/** A stretch of many readings has a day, a short one a time too. */
const momentOf = (stretch: Span, zone: string) =>
  lasted(stretch) > 3_600_000 ? instantDayWords(stretch.fromMs, zone) : instantWords(stretch.fromMs, zone)

function aboveWords(above: readonly Span[], limit: number, zone: string): string {
  if (above.length === 0) return `Never above ${numberWords(limit)} %.`
  const hours = `Above ${numberWords(limit)} % for ${lastingWords(total(above))}`
  const longest = above.reduce((long, one) => (lasted(one) > lasted(long) ? one : long))
  const since = instantDayWords(longest.fromMs, zone)
  if (above.length === 1) return `${hours}, from ${since}.`
  return `${hours}, in ${above.length} runs; the longest ${lastingWords(lasted(longest))}, from ${since}.`
}
