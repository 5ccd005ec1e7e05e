import type { Kysely } from 'kysely'
import { given } from '../base/outcome.ts'
import type { BoxGiven, RoomGiven } from '../record/places.ts'
import type { Box, Room, ToKeep } from '../services/places.ts'
import type { Reads, Writes, Written } from '../services/ports.ts'
import { add, change, slices, type Hand } from './hand.ts'
import { fromJson, kept } from './kept-row.ts'
import type { PlaceRow, Tables } from './tables.ts'

type PlaceTable = 'room' | 'box'

const place = <Given>(row: PlaceRow) => ({
  ...kept(row),
  projectId: row.project_id,
  given: fromJson<Given>(row.given),
})

async function ofProject(
  db: Kysely<Tables>,
  table: PlaceTable,
  projectId: string,
): Promise<readonly PlaceRow[]> {
  return db.selectFrom(table).selectAll().where('project_id', '=', projectId).orderBy('name').execute()
}

export function roomReads(db: Kysely<Tables>): Reads['rooms'] {
  return {
    ofProject: async (id) => (await ofProject(db, 'room', id)).map((row): Room => place<RoomGiven>(row)),
  }
}

export function boxReads(db: Kysely<Tables>): Reads['boxes'] {
  return {
    ofProject: async (id) => (await ofProject(db, 'box', id)).map((row): Box => place<BoxGiven>(row)),
    async byId(id) {
      const row = await db.selectFrom('box').selectAll().where('id', '=', id).executeTakeFirst()
      return row ? place<BoxGiven>(row) : null
    },
  }
}

/** A place is known by its name in the project: new ones are added, known ones changed where their version still holds. */
async function keep<Given>(
  hand: Hand,
  table: PlaceTable,
  projectId: string,
  places: readonly ToKeep<Given>[],
  nameOf: (given: Given) => string,
): Promise<readonly Written[]> {
  const columns = ({ given: told }: ToKeep<Given>) => ({
    project_id: projectId,
    name: nameOf(told),
    given: JSON.stringify(told),
  })
  const added = new Set(
    (await add(hand, table, places.map(columns), ['project_id', 'name'])).map(({ id }) => id),
  )
  const ids = new Map<string, string>()
  for (const slice of slices(places.map(columns), 1000)) {
    const names = slice.map(({ name }) => name)
    const known = hand.db
      .selectFrom(table)
      .select(['id', 'name'])
      .where('project_id', '=', projectId)
      .where('name', 'in', names)
    for (const { id, name } of await known.execute()) ids.set(name, id)
  }
  const results: Written[] = []
  for (const one of places) {
    const id = ids.get(nameOf(one.given))!
    results.push(
      added.has(id) ? given({ id }) : await change(hand, table, { id, version: one.version }, columns(one)),
    )
  }
  return results
}

export function roomWrites(hand: Hand): Writes['rooms'] {
  return {
    ...roomReads(hand.db),
    keep: (projectId, rooms) => keep(hand, 'room', projectId, rooms, ({ room }) => room),
  }
}

export function boxWrites(hand: Hand): Writes['boxes'] {
  return {
    ...boxReads(hand.db),
    keep: (projectId, boxes) => keep(hand, 'box', projectId, boxes, ({ box }) => box),
  }
}
