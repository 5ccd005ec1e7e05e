import { addDays, type IsoDate } from '../base/calendar.ts'
import type { DiaryEntry } from './diary.ts'
import type { KeptRecord } from './kept.ts'
import type { FindStay } from './stays.ts'

type Dated = Pick<KeptRecord, 'recordedOn' | 'record'>
type Move = Pick<DiaryEntry<'moved'>, 'on' | 'box' | 'given'>

interface Put {
  /** Null: on a day nobody wrote, before all that are dated. */
  readonly on: IsoDate | null
  readonly box: string
}

/**
 * The boxes one find lay in, by its records and by what was moved, both in the order of time. On one day a record is
 * heard before a move: it was written where the find lay, and then it was carried.
 */
export function staysOf(
  findId: string,
  records: readonly Dated[],
  moved: readonly Move[],
): readonly FindStay[] {
  const seen = records.flatMap(({ recordedOn, record }): Put[] =>
    record.box === undefined || record.box === '' ? [] : [{ on: recordedOn, box: record.box }],
  )
  const carried = moved.flatMap(({ on, box, given }): Put[] =>
    box === null || given.move === 'out' ? [] : [{ on, box }],
  )
  const puts = [...seen, ...carried].toSorted((a, b) =>
    (a.on ?? '') < (b.on ?? '') ? -1 : a.on === b.on ? 0 : 1,
  )
  const changes = puts.filter(({ box }, at) => at === 0 || box !== puts[at - 1]!.box)
  return changes.flatMap(({ on, box }, at): FindStay[] => {
    const next = changes[at + 1]
    if (next === undefined) return [{ findId, box, from: on, to: null }]
    // Without a day nobody knows until when; the newer word holds for all of the time.
    if (next.on === null || (on !== null && next.on <= on)) return []
    return [{ findId, box, from: on, to: addDays(next.on, -1) }]
  })
}

/** A time in which a find was not in its box; to null: it is out still. */
export interface Outing {
  readonly from: IsoDate
  readonly to: IsoDate | null
  readonly box: string | null
  readonly where: string
  readonly why: string
}

/** The times one find was out, by what was moved in the order of time. A move to a box ends one too. */
export function outingsOf(moved: readonly Move[]): readonly Outing[] {
  const outings: Outing[] = []
  let out: Outing | null = null
  for (const { on, box, given } of moved) {
    if (given.move !== 'out') {
      if (out !== null) outings.push({ ...out, to: on })
      out = null
    } else if (out === null) {
      const { from_box = box, where = '', why = '' } = given
      out = { from: on, to: null, box: from_box, where, why }
    }
  }
  return out === null ? outings : [...outings, out]
}
