import type { Kysely } from 'kysely'
import type { IsoDate } from '../base/calendar.ts'
import type { DiaryEntry, DiaryQuery } from '../services/diary.ts'
import type { Reads, Writes } from '../services/ports.ts'
import { add, slices, type Hand } from './hand.ts'
import { author, fromJson, kept, type AuthorColumns } from './kept-row.ts'
import type { DiaryRow } from './store-rows.ts'
import type { Tables } from './tables.ts'

const entry = (row: DiaryRow & AuthorColumns) =>
  ({
    ...kept(row),
    projectId: row.project_id,
    kind: row.kind,
    box: row.box === '' ? null : row.box,
    room: row.room === '' ? null : row.room,
    findId: row.find_id,
    on: row.on_day as IsoDate,
    atMs: row.at_ms === 0 ? null : row.at_ms,
    given: fromJson(row.given),
    by: author(row),
  }) as DiaryEntry

const namesAtOnce = 1000

/** A list of names in slices the engines take; one open slice where nothing narrows. */
const slicesOf = (names: readonly string[] | undefined): readonly (readonly string[] | null)[] =>
  names === undefined ? [null] : slices([...new Set(names)], namesAtOnce)

export function diaryReads(db: Kysely<Tables>): Reads['diary'] {
  function matching(query: DiaryQuery) {
    let rows = db
      .selectFrom('diary_entry')
      .innerJoin('person', 'person.id', 'diary_entry.person_id')
      .innerJoin('device', 'device.id', 'diary_entry.device_id')
      .selectAll('diary_entry')
      .select(['person.name as person_name', 'person.role as person_role', 'device.name as device_name'])
      .where('diary_entry.project_id', '=', query.projectId)
    if (query.kinds) rows = rows.where('diary_entry.kind', 'in', [...query.kinds])
    if (query.from !== undefined) rows = rows.where('diary_entry.on_day', '>=', query.from)
    if (query.to !== undefined) rows = rows.where('diary_entry.on_day', '<=', query.to)
    return rows
      .orderBy('diary_entry.on_day')
      .orderBy('diary_entry.at_ms')
      .orderBy('diary_entry.created_at')
      .orderBy('diary_entry.place')
      .orderBy('diary_entry.id')
  }
  return {
    async list(query) {
      const found: DiaryEntry[] = []
      for (const boxes of slicesOf(query.boxes)) {
        for (const rooms of slicesOf(query.rooms)) {
          for (const findIds of slicesOf(query.findIds)) {
            let rows = matching(query)
            if (boxes) rows = rows.where('diary_entry.box', 'in', [...boxes])
            if (rooms) rows = rows.where('diary_entry.room', 'in', [...rooms])
            if (findIds) rows = rows.where('diary_entry.find_id', 'in', [...findIds])
            found.push(...(await rows.execute()).map(entry))
          }
        }
      }
      return found
    },
  }
}

export function diaryWrites(hand: Hand): Writes['diary'] {
  return {
    ...diaryReads(hand.db),
    async add(projectId, entries) {
      const rows = entries.map((one, place) => ({
        project_id: projectId,
        kind: one.kind,
        box: one.box ?? '',
        room: one.room ?? '',
        find_id: one.findId,
        on_day: one.on,
        at_ms: one.atMs ?? 0,
        place,
        given: JSON.stringify(one.given),
        content_hash: one.contentHash,
      }))
      return (await add(hand, 'diary_entry', rows, ['project_id', 'content_hash'])).map(({ id }) => id)
    },
  }
}
