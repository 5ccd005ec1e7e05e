import { numberWords } from './band.ts'
import { listWords } from './list.ts'
import { aboutKilogramWords } from './what-if-figures.ts'

/** What a drier room comes to: `about 45 % instead of 55 %, the year round`. */
export function drierMeans(byPercent: number, roomNow: number | null): string {
  if (byPercent === 0)
    return roomNow === null
      ? 'As they are. A minus makes them damper.'
      : `About ${numberWords(roomNow)} %, as it is. A minus makes it damper.`
  const then = roomNow === null ? null : Math.min(100, Math.max(0, roomNow - byPercent))
  if (then !== null && roomNow !== null)
    return `About ${numberWords(then)} % instead of ${numberWords(roomNow)} %; summer and winter apart as they are.`
  const size = numberWords(Math.abs(byPercent))
  return byPercent > 0 ? `Each ${size} points below what it is.` : `Each ${size} points damper than it is.`
}

export function leakMeans(lessPercent: number): string {
  if (lessPercent === 0) return 'Lids as they are.'
  if (lessPercent === 50) return 'Half of what leaks in now.'
  return `${numberWords(100 - lessPercent)} % of what leaks in now.`
}

export function gelMeans(times: number, nowKg: number | null): string {
  if (times === 1) return nowKg === null ? 'As much as now.' : `${aboutKilogramWords(nowKg)}, as now.`
  if (nowKg !== null) return `${aboutKilogramWords(nowKg * times)} instead of ${aboutKilogramWords(nowKg)}.`
  return times > 1 ? 'Each filling larger.' : 'Each filling smaller.'
}

interface Change {
  readonly drierByPercent: number
  readonly leakLessPercent: number
  readonly gelTimes: number
  readonly film: object | null
}

/** What was tried, for paper: `Tried: rooms 10 points drier and 50 % less air let in.` */
export function triedWords({ drierByPercent, leakLessPercent, gelTimes, film }: Change): string {
  const points = numberWords(Math.abs(drierByPercent))
  const tried = [
    ...(drierByPercent === 0
      ? []
      : [`air ${points} points ${drierByPercent > 0 ? 'drier' : 'damper'} all year`]),
    ...(leakLessPercent === 0 ? [] : [`${numberWords(leakLessPercent)} % less air let in`]),
    ...(gelTimes === 1 ? [] : [`${numberWords(gelTimes)} times as much gel`]),
    ...(film === null ? [] : ['packs of another film']),
  ]
  return tried.length === 0 ? 'As it is, nothing tried.' : `Tried: ${listWords(tried)}.`
}
