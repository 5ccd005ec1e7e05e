import { changesOf, zoneBetween, type ClockChange } from './zone.ts'

/** What the stamps show of a clock: that it was changed in spring and autumn, that it was not, or nothing. */
export type ClockSeen = 'changed' | 'fixed' | null

interface Counts {
  followed: number
  ignored: number
  /** How much of the hour in question was passed at the usual step [ms]. */
  passed: number
}

/** One step from reading to reading across a change of the clocks. */
function judge(before: number, now: number, change: ClockChange, usual: number, counts: Counts): void {
  const step = now - before
  const start = Math.min(change.civilMs, change.civilMs + change.byMs)
  const end = Math.max(change.civilMs, change.civilMs + change.byMs)
  const low = Math.min(before, now)
  const high = Math.max(before, now)
  if (!(low < end && high >= start)) return
  const slack = Math.min(usual * 0.2, Math.abs(change.byMs) * 0.25)
  if (Math.abs(step - usual - change.byMs) <= slack) {
    // Over the hour that no clock shows, or back by the hour that is shown twice.
    if (change.byMs < 0 || (before < start && now >= end)) counts.followed++
    counts.passed = 0
  } else if (Math.abs(step - usual) <= slack) {
    // A clock left alone passes the whole hour, once and without a break.
    counts.passed += Math.min(high, end) - Math.max(low, start)
    if (now >= end && counts.passed >= end - start) counts.ignored++
  } else counts.passed = 0
}

function quietAround(
  now: number,
  at: number,
  changes: readonly ClockChange[],
  width: number,
): readonly [number, number] {
  const own = changes[at]!.civilMs
  if (now > own) return [own + width, (changes[at + 1]?.civilMs ?? Number.POSITIVE_INFINITY) - width]
  return [(changes[at - 1]?.civilMs ?? Number.NEGATIVE_INFINITY) + width, own - width]
}

/**
 * What the steps of readings, in their order, tell of the clock, under the changes of one zone. Only readings at a steady step
 * can tell.
 */
export function clockSeen(
  civilMs: Float64Array,
  from: number,
  to: number,
  changes: readonly ClockChange[],
  usual: number | null,
): ClockSeen {
  if (usual === null || changes.length === 0) return null
  const width = Math.abs(changes[0]!.byMs) + 2 * usual
  const perChange = changes.map((): Counts => ({ followed: 0, ignored: 0, passed: 0 }))
  let at = 0
  let before = Number.NaN
  // Far from any change there is nothing to judge.
  let quietFrom = Number.POSITIVE_INFINITY
  let quietTo = Number.NEGATIVE_INFINITY
  for (let place = from; place < to; place++) {
    const now = civilMs[place]!
    if (now > quietFrom && now < quietTo) {
      before = now
      continue
    }
    if (Number.isNaN(now)) continue
    while (at < changes.length - 1 && now > changes[at]!.civilMs + width) at++
    while (at > 0 && now < changes[at]!.civilMs - width && now <= changes[at - 1]!.civilMs + width) at--
    if (Math.abs(now - changes[at]!.civilMs) <= width) judge(before, now, changes[at]!, usual, perChange[at]!)
    else [quietFrom, quietTo] = quietAround(now, at, changes, width)
    before = now
  }
  const followed = perChange.filter((counts) => counts.followed > 0).length
  const ignored = perChange.filter((counts) => counts.ignored > 0 && counts.followed === 0).length
  if (followed > 0) return ignored === 0 ? 'changed' : null
  return ignored > 0 ? 'fixed' : null
}

/** One zone for each way of changing clocks that loggers are likely to have followed; the names stand for their neighbours. */
const ways = [
  'Europe/London',
  'Europe/Berlin',
  'Europe/Athens',
  'America/New_York',
  'America/Santiago',
  'Australia/Sydney',
  'Pacific/Auckland',
]

export interface ClockGuess {
  readonly clock: ClockSeen
  /** Zones whose changes the stamps follow. */
  readonly zones: readonly string[]
}

/** What the stamps tell of the clock where nobody said which zone it stood in. */
export function guessClock(
  civilMs: Float64Array,
  from: number,
  to: number,
  usual: number | null,
): ClockGuess {
  let first = Number.POSITIVE_INFINITY
  let last = Number.NEGATIVE_INFINITY
  for (let at = from; at < to; at++) {
    const ms = civilMs[at]!
    if (ms < first) first = ms
    if (ms > last) last = ms
  }
  if (usual === null || !(last > first)) return { clock: null, zones: [] }
  const day = 86_400_000
  const seen = ways.map((name) => {
    const zone = zoneBetween(name, first - day, last + day)
    return { name, clock: zone ? clockSeen(civilMs, from, to, changesOf(zone), usual) : null }
  })
  const followed = seen.filter(({ clock }) => clock === 'changed').map(({ name }) => name)
  if (followed.length > 0) return { clock: 'changed', zones: followed }
  return { clock: seen.some(({ clock }) => clock === 'fixed') ? 'fixed' : null, zones: [] }
}
