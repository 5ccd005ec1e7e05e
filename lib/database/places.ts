import type { Kysely } from 'kysely'
import { given } from '../base/outcome.ts'
import type { Reads, Writes, Written } from '../services/ports.ts'
import type { Box, BoxDetail, Room } from '../services/store-tables.ts'
import { add, change, slices, type Hand, type New } from './hand.ts'
import { fromJson, kept } from './kept-row.ts'
import type { BoxRow, RoomRow, Tables } from './tables.ts'

const room = (row: RoomRow): Room => ({
  ...kept(row),
  projectId: row.project_id,
  name: row.name,
  rhPercent: { low: row.rh_low, high: row.rh_high },
  temperatureC: { low: row.t_low, high: row.t_high },
})

const box = (row: BoxRow): Box => ({
  ...kept(row),
  projectId: row.project_id,
  name: row.name,
  room: row.room,
  detail: fromJson<BoxDetail>(row.detail),
})

export function roomReads(db: Kysely<Tables>): Reads['rooms'] {
  return {
    ofProject: async (projectId) =>
      (await db.selectFrom('room').selectAll().where('project_id', '=', projectId).orderBy('name').execute()).map(room),
  }
}

export function boxReads(db: Kysely<Tables>): Reads['boxes'] {
  return {
    ofProject: async (projectId) =>
      (await db.selectFrom('box').selectAll().where('project_id', '=', projectId).orderBy('name').execute()).map(box),
  }
}

interface Place {
  readonly name: string
  readonly version: number | null
}

/** A place is known by its name in the project: new ones are added, known ones changed where their version still holds. */
async function keep<Table extends 'room' | 'box', Given extends Place>(
  hand: Hand,
  table: Table,
  projectId: string,
  places: readonly Given[],
  columns: (place: Given) => New<Table>,
): Promise<readonly Written[]> {
  const added = await add(hand, table, places.map(columns), ['project_id', 'name'] as never)
  const ids = new Map(added.map(({ id, name }) => [name, id]))
  const results: Written[] = []
  for (const slice of slices(places, 1000)) {
    const known = await hand.db
      .selectFrom(table as 'room')
      .select(['id', 'name'])
      .where('project_id', '=', projectId)
      .where('name', 'in', slice.map(({ name }) => name))
      .execute()
    const byName = new Map(known.map(({ id, name }) => [name, id]))
    for (const place of slice) {
      const id = byName.get(place.name)!
      const isNew = ids.get(place.name) === id
      results.push(isNew ? given({ id }) : await change(hand, table, { id, version: place.version }, columns(place)))
    }
  }
  return results
}

export function roomWrites(hand: Hand): Writes['rooms'] {
  return {
    ...roomReads(hand.db),
    keep: (projectId, rooms) =>
      keep(hand, 'room', projectId, rooms, ({ name, rhPercent, temperatureC }) => ({
        project_id: projectId,
        name,
        rh_low: rhPercent.low,
        rh_high: rhPercent.high,
        t_low: temperatureC.low,
        t_high: temperatureC.high,
      })),
  }
}

export function boxWrites(hand: Hand): Writes['boxes'] {
  return {
    ...boxReads(hand.db),
    keep: (projectId, boxes) =>
      keep(hand, 'box', projectId, boxes, ({ name, room: stands, detail }) => ({
        project_id: projectId,
        name,
        room: stands,
        detail: JSON.stringify(detail),
      })),
  }
}
