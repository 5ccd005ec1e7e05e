import { addDays, type IsoDate } from '../base/calendar.ts'
import type { Sighting } from '../boxes/box.ts'
import type { LimitSpan, ReportBox, ReportGel, ReportReading } from '../papers/store-report-box.ts'
import type { BoxGiven } from '../record/places.ts'
import { limitOf } from './box-needs.ts'
import { dayOfNumber } from './box-sightings.ts'
import { gelSince } from './closed-box.ts'
import type { DiaryEntry } from './diary.ts'
import type { BoxLine } from './show-store.ts'
import type { Standing } from './standing.ts'
import type { StoreData } from './store-data.ts'
import type { AboveLimit } from './store-report-hours.ts'
import type { StoreReckoned } from './store-reckoned.ts'
import type { Outing } from './whereabouts.ts'

export type Lay = ReportBox['lay'][number]

/** Days on which each find lay in a box, without those on which it was out: on the day it left or came back it was there. */
function layOf(stays: readonly Lay[], outings: ReadonlyMap<string, readonly Outing[]>): readonly Lay[] {
  return stays.flatMap(({ findId, from, to }) =>
    (outings.get(findId) ?? []).reduce<readonly Lay[]>(
      (left, out) => left.flatMap((lay) => without(lay, out)),
      [{ findId, from, to }],
    ),
  )
}

function without({ findId, from, to }: Lay, out: Outing): readonly Lay[] {
  const ends = out.from
  const again = out.to
  const touches = (to === null || ends <= to) && (again === null || from === null || again >= from)
  if (!touches) return [{ findId, from, to }]
  const parts: Lay[] = []
  if (from === null || from <= ends) parts.push({ findId, from, to: ends })
  if (again !== null && (to === null || again <= to)) parts.push({ findId, from: again, to })
  return parts
}

/** What a box had to hold from day to day: it changes when finds come and go. */
function limitSpansOf(
  box: BoxGiven,
  stays: readonly Lay[],
  standings: ReadonlyMap<string, Standing>,
): readonly LimitSpan[] {
  const begins = new Set<IsoDate>()
  for (const { from, to } of stays) {
    if (from !== null) begins.add(from)
    if (to !== null) begins.add(addDays(to, 1))
  }
  const starts: readonly (IsoDate | null)[] = [null, ...[...begins].toSorted()]
  const spans: { from: IsoDate | null; to: IsoDate | null; limitRhPercent: number | null }[] = []
  for (const [at, from] of starts.entries()) {
    const next = starts[at + 1]
    const to = next === undefined || next === null ? null : addDays(next, -1)
    const there = stays.filter(
      (one) => (one.from ?? '') <= (from ?? '') && (one.to === null || from === null || one.to >= from),
    )
    const limitRhPercent = limitOf(
      box,
      there.flatMap(({ findId }) => standings.get(findId) ?? []),
    )
    const before = spans.at(-1)
    if (before !== undefined && before.limitRhPercent === limitRhPercent) before.to = to
    else spans.push({ from, to, limitRhPercent })
  }
  return spans
}

/** What was read of it: a logger's day with its error allowed for, a strip as it was read. */
function readingOf(sighting: Sighting): readonly ReportReading[] {
  const on = dayOfNumber(Math.floor(sighting.on))
  switch (sighting.kind) {
    case 'logger': {
      const { rhPercent, errorRhPercent: error } = sighting
      return [
        {
          on,
          by: 'logger',
          lowRhPercent: rhPercent - error,
          highRhPercent: rhPercent + error,
          slackRhPercent: 0,
        },
      ]
    }
    case 'below-range':
      return [
        {
          on,
          by: 'logger',
          lowRhPercent: 0,
          highRhPercent: sighting.floorRhPercent + sighting.errorRhPercent,
          slackRhPercent: 0,
        },
      ]
    case 'strip': {
      const { lowRhPercent, highRhPercent, errorRhPercent: slackRhPercent } = sighting
      return [{ on, by: 'strip', lowRhPercent, highRhPercent, slackRhPercent }]
    }
    default:
      return []
  }
}

/** Fillings of a box. A list of boxes tells of one too, with fewer words than who made it: told twice it counts once. */
function gelOf(box: BoxGiven, entries: readonly DiaryEntry[]): readonly ReportGel[] {
  const told = new Map<string, ReportGel>()
  for (const entry of entries) {
    if (entry.kind !== 'gel-change') continue
    const { gel_kg: gelKg, removed_kg: removedKg = null } = entry.given
    const which = `${entry.on} ${gelKg}`
    if ((told.get(which)?.removedKg ?? null) === null)
      told.set(which, { on: entry.on, gelKg, removedKg, from: 'diary' })
  }
  const { gel_conditioned_on: on, gel_kg: gelKg } = box
  const all = [...told.values()]
  if (on === undefined || gelKg === undefined || all.some((one) => one.on === on)) return all
  return [...all, { on, gelKg, removedKg: null, from: 'table' } as const].toSorted((a, b) =>
    a.on < b.on ? -1 : 1,
  )
}

interface Asked {
  readonly data: StoreData
  readonly reckoned: StoreReckoned
  readonly standings: ReadonlyMap<string, Standing>
  readonly to: IsoDate
}

/** What is reckoned today is of the gel it holds today: of a filling that came later, or nobody knows when, the year knew nothing. */
const isOfThen = (filledOn: IsoDate | null, to: IsoDate, today: IsoDate) =>
  filledOn === null ? to === today : filledOn <= to

/** A box before it is known what its loggers recorded above its limit. */
export function plainBoxOf(
  { data, reckoned, standings, to }: Asked,
  line: BoxLine,
  stays: readonly Lay[],
): Omit<ReportBox, 'above'> {
  const { given } = line.box
  const entries = data.diary.get(given.box) ?? []
  const since = gelSince(given, entries)
  const { outlook } = line
  return {
    box: given.box,
    room: line.room,
    // What is out comes back: the box is kept as it needs it.
    limits: limitSpansOf(given, stays, standings),
    lay: layOf(stays, data.outings),
    readings: (reckoned.sightings.get(given.box) ?? []).flatMap(readingOf).filter(({ on }) => on <= to),
    gel: gelOf(given, entries).filter(({ on }) => on <= to),
    renewOn: isOfThen(since, to, data.today) ? (outlook?.renewOn ?? null) : null,
  }
}

export const withAbove = (box: Omit<ReportBox, 'above'>, above: AboveLimit): ReportBox => ({ ...box, above })
