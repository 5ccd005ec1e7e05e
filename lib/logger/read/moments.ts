import { civilText, msPerDay, msPerMinute } from './civil.ts'
import { clockSeen, guessClock, type ClockGuess } from './clock-evidence.ts'
import type { ZoneHint } from './heading-block.ts'
import type { LogAnswers, LogQuestion } from './log-answers.ts'
import type { LogForm } from './log-form.ts'
import { usualStep } from './order-evidence.ts'
import type { ProblemBook } from './problem-book.ts'
import { eachRun } from './runs.ts'
import { lineOf, type Store } from './store.ts'
import { changesOf, fixedOffset, fixedZone, offsetName, zoneBetween, type Zone } from './zone.ts'
import { walkZone } from './zone-walk.ts'

export interface MomentsDecided {
  readonly timeZone: LogForm['timeZone']
  readonly asks: readonly LogQuestion[]
  /** Readings left out because no clock of the zone ever showed their stamp. */
  readonly skipped: number
  /** All stamps of a store were moved by one and the same time, so that their steps are what they were. */
  readonly shiftedOnly: boolean
}

interface Stretch {
  readonly store: Store
  readonly from: number
  readonly to: number
  /** NaN: the stamps do not say it. */
  readonly offsetMinutes: number
}

function stretchesOf(store: Store): readonly Stretch[] {
  const stretches: Stretch[] = []
  eachRun(store.offsets, store.count, (from, to, offsetMinutes) => {
    const turned = store.reversed ? { from: store.count - to, to: store.count - from } : { from, to }
    stretches.push({ store, ...turned, offsetMinutes })
  })
  return store.reversed ? stretches.toReversed() : stretches
}

function rangeOf(stretches: readonly Stretch[]): readonly [number, number] {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (const { store, from, to } of stretches) {
    for (let at = from; at < to; at++) {
      const ms = store.civilMs[at]!
      if (ms < low) low = ms
      if (ms > high) high = ms
    }
  }
  return [low, high]
}

const size = ({ from, to }: Stretch) => to - from
const largest = (stretches: readonly Stretch[]) => stretches.reduce((a, b) => (size(b) > size(a) ? b : a))

function examples({ store, from, to }: Stretch): LogQuestion['examples'] {
  return [from, from + 1, to - 1]
    .filter((place, at, all) => place >= from && place < to && all.indexOf(place) === at)
    .map((place) => ({ line: lineOf(store, place), text: civilText(store.civilMs[place]!) }))
}

function question(
  local: readonly Stretch[],
  guess: ClockGuess,
  hint: ZoneHint | null,
  notAZone: boolean,
): LogQuestion {
  const because = {
    changed: 'hour-skipped-or-repeated',
    fixed: 'no-hour-skipped',
  } as const
  return {
    about: 'time-zone',
    answers: guess.zones,
    proposed: guess.zones.length === 1 ? guess.zones[0]! : null,
    because: notAZone
      ? 'not-a-zone'
      : guess.clock
        ? because[guess.clock]
        : hint
          ? 'named-in-heading'
          : 'cannot-tell',
    clock: guess.clock,
    examples: [...(hint ? [{ line: hint.line, text: hint.found }] : []), ...examples(largest(local))],
  }
}

/** The zone for stamps that do not say theirs, with what was asked and how it was found. */
function zoneFor(
  local: readonly Stretch[],
  answers: LogAnswers,
  hint: ZoneHint | null,
  book: ProblemBook,
): { readonly zone: Zone; readonly how: LogForm['timeZone']['how']; readonly ask: LogQuestion | null } {
  const [low, high] = rangeOf(local)
  const main = largest(local)
  const usual = usualStep(main.store.civilMs.subarray(main.from, main.to), size(main))
  if (!(high >= low)) return { zone: fixedZone('UTC', 0), how: 'assumed', ask: null }
  const named = answers.timeZone
  const lookUp = (name: string | null) =>
    name === null ? null : zoneBetween(name, low - msPerDay, high + msPerDay)
  // What the file says of its own clock counts for more than a zone of many files, but not than an offset given for it.
  const overruled = named !== null && fixedOffset(named) !== null
  const inHeading = overruled ? null : lookUp(hint?.zone ?? null)
  const zone = inHeading ?? lookUp(named)
  if (named !== null && !zone) book.note('unknown-time-zone', null, named)
  if (inHeading && named !== null && inHeading.name !== named)
    book.note('zone-said-in-file', hint!.line, hint!.found)
  if (!zone) {
    const guess = guessClock(main.store.civilMs, main.from, main.to, usual)
    const ask = question(local, guess, hint, named !== null)
    return { zone: lookUp(ask.proposed) ?? fixedZone('UTC', 0), how: 'assumed', ask }
  }
  const how = inHeading ? 'in-heading' : 'answered'
  const changes = changesOf(zone)
  if (clockSeen(main.store.civilMs, main.from, main.to, changes, usual) !== 'fixed')
    return { zone, how, ask: null }
  // The clock went on as it was set when the logger was started.
  const first = main.store.civilMs.subarray(main.from, main.to).find((ms) => !Number.isNaN(ms))!
  const offset = changes.findLast(({ civilMs }) => civilMs <= first)?.after ?? changes[0]!.before
  const kept = fixedZone(offsetName(offset / msPerMinute), offset / msPerMinute)
  book.note('clock-not-changed', lineOf(main.store, main.from), `${zone.name} → ${kept.name}`)
  return { zone: kept, how: 'clock-not-changed', ask: null }
}

function convert(stretch: Stretch, zone: Zone, book: ProblemBook): number {
  const { store, from, to, offsetMinutes } = stretch
  const ms = store.civilMs
  if (!Number.isNaN(offsetMinutes)) {
    const by = offsetMinutes * msPerMinute
    if (by !== 0) for (let at = from; at < to; at++) ms[at] = ms[at]! - by
    return 0
  }
  if (zone.from.length === 1) {
    const by = zone.offset[0]!
    if (by !== 0) for (let at = from; at < to; at++) ms[at] = ms[at]! - by
    return 0
  }
  const usual = usualStep(ms.subarray(from, to), to - from)
  const walked = walkZone(ms, from, to, zone, usual)
  if (walked.skipped > 0) {
    const line = lineOf(store, walked.firstSkipped)
    book.note('skipped-by-clock-change', line, civilText(walked.firstSkippedMs), null, walked.skipped)
  }
  if (walked.toldTwice > 0) {
    const place = walked.firstToldTwice
    book.note('hour-told-twice', lineOf(store, place), `${civilText(ms[place]!)} UTC`, null, walked.toldTwice)
  }
  return walked.skipped
}

/** Turns the stamps of all stores from what the clock showed into moments, in place. */
export function decideMoments(
  stores: readonly Store[],
  answers: LogAnswers,
  hint: ZoneHint | null,
  book: ProblemBook,
): MomentsDecided {
  const stretches = stores.flatMap(stretchesOf)
  const local = stretches.filter(({ offsetMinutes }) => Number.isNaN(offsetMinutes))
  const told = stretches.filter(({ offsetMinutes }) => !Number.isNaN(offsetMinutes))
  if (local.length > 0 && told.length > 0) {
    const count = (all: readonly Stretch[]) => all.reduce((sum, stretch) => sum + size(stretch), 0)
    const fewer = count(local) < count(told) ? local : told
    const { store, from } = fewer[0]!
    book.note('offsets-mixed', lineOf(store, from), civilText(store.civilMs[from]!), null, count(fewer))
  }
  const chosen = local.length === 0 ? null : zoneFor(local, answers, hint, book)
  const zone = chosen?.zone ?? fixedZone('UTC', 0)
  let skipped = 0
  for (const stretch of stretches) skipped += convert(stretch, zone, book)
  return {
    timeZone: chosen
      ? { zone: zone.name, how: chosen.how }
      : { zone: offsetName(told[0]?.offsetMinutes ?? 0), how: 'in-stamps' },
    asks: chosen?.ask ? [chosen.ask] : [],
    skipped,
    shiftedOnly: stretches.length === stores.length && zone.from.length === 1,
  }
}
