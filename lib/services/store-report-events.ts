import { daysBetween, type IsoDate } from '../base/calendar.ts'
import type { FloodCause } from '../record/store-diary.ts'
import { narrows } from '../papers/ruler.ts'
import type { DiaryEntry } from './diary.ts'
import type { Standing } from './standing.ts'
import type { StoreData } from './store-data.ts'

interface Span {
  readonly from: IsoDate
  readonly to: IsoDate
}

/** Water that came into a room; boxes null: nobody wrote which it reached, so all of the room. */
export interface WaterEvent {
  readonly on: IsoDate
  readonly room: string
  readonly cause: FloodCause
  readonly boxes: readonly string[] | null
  readonly note: string
}

/** Lids that were found not seated, or stood open, by box. */
export interface LidEvents {
  readonly box: string
  readonly room: string
  readonly notSeatedOn: readonly IsoDate[]
  readonly opened: number
  /** Minutes open, of those openings of which somebody wrote it. */
  readonly minutesOpen: number
}

export interface Movement {
  readonly findId: string
  readonly findNumber: string
  readonly object: string
  readonly box: string | null
  readonly from: IsoDate
  /** Null: out still at the end of the period. */
  readonly to: IsoDate | null
  readonly where: string
  readonly why: string
  /** Days of the period on which it was out, in air that nobody recorded. */
  readonly days: number
  /** It asks for a humidity, so that all of that time counts as outside of it. */
  readonly needsHumidity: boolean
}

const within = ({ from, to }: Span, on: IsoDate) => on >= from && on <= to

export const waterOf = (floods: readonly DiaryEntry<'flood'>[], period: Span): readonly WaterEvent[] =>
  floods
    .filter(({ on }) => within(period, on))
    .map(({ on, room, given }) => ({
      on,
      room: room ?? '',
      cause: given.cause,
      boxes: given.boxes ?? null,
      note: given.note ?? '',
    }))

/** Lids seen on rounds and by themselves; those never found loose nor opened are left out. */
export function lidsOf({ boxes, diary }: StoreData, period: Span): readonly LidEvents[] {
  return boxes.flatMap(({ given: { box, room = '' } }): LidEvents[] => {
    const entries = (diary.get(box) ?? []).filter(({ on }) => within(period, on))
    const seen = entries.flatMap((entry) =>
      entry.kind === 'lid' || entry.kind === 'round' ? [{ on: entry.on, lid: entry.given.lid }] : [],
    )
    const notSeatedOn = seen.filter(({ lid }) => lid === 'not-seated').map(({ on }) => on)
    const opened = entries.flatMap((entry) =>
      entry.kind === 'lid' && entry.given.lid === 'opened' ? [entry.given.minutes ?? 0] : [],
    )
    if (notSeatedOn.length === 0 && opened.length === 0) return []
    const minutesOpen = opened.reduce((sum, minutes) => sum + minutes, 0)
    return [{ box, room, notSeatedOn: [...new Set(notSeatedOn)], opened: opened.length, minutesOpen }]
  })
}

/** Finds that were out at some time of the period, those out longest first. */
export function movementsOf(
  { outings }: StoreData,
  standings: ReadonlyMap<string, Standing>,
  period: Span,
): readonly Movement[] {
  const all = [...outings].flatMap(([findId, own]) =>
    own
      .filter(({ from, to }) => from <= period.to && (to === null || to >= period.from))
      .map(({ from, to, box, where, why }): Movement => {
        const line = standings.get(findId)?.line
        const first = from < period.from ? period.from : from
        const last = to === null || to > period.to ? period.to : to
        return {
          findId,
          findNumber: line?.findNumber ?? '',
          object: line?.object ?? '',
          box,
          from,
          to: to === null || to > period.to ? null : to,
          where,
          why,
          days: daysBetween(first, last),
          needsHumidity:
            line !== undefined && line.keep !== 'wet' && (line.rhPercent === null || narrows(line.rhPercent)),
        }
      }),
  )
  return all.toSorted((a, b) => b.days - a.days)
}

/** Tubs of wet finds: how many there are, and how often their water was changed. */
export function tubsOf({ boxes, diary }: StoreData, period: Span) {
  const tubs = boxes.filter(({ given }) => given.kind === 'tub').map(({ given }) => given.box)
  const changes = tubs.reduce(
    (sum, tub) =>
      sum +
      (diary.get(tub) ?? []).filter(({ kind, on }) => kind === 'water-change' && within(period, on)).length,
    0,
  )
  return { tubs: tubs.length, waterChanges: changes }
}
