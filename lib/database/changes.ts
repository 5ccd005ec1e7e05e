import type { Kysely } from 'kysely'
import type { Actor, Change, Touched } from '../services/kept.ts'
import type { Reads } from '../services/ports.ts'
import { fresh, type Hand } from './hand.ts'
import { author, fromJson } from './kept-row.ts'
import type { Tables } from './tables.ts'

export function changeReads(db: Kysely<Tables>): Reads['changes'] {
  return {
    async latest(limit) {
      const rows = await db
        .selectFrom('change')
        .selectAll()
        .orderBy('created_at', 'desc')
        .orderBy('id', 'desc')
        .limit(limit)
        .execute()
      return rows.map((row): Change => ({
        id: row.id,
        at: row.created_at,
        what: row.what,
        by: author(row),
        touched: fromJson<readonly Touched[]>(row.touched),
      }))
    },
  }
}

/** The trail keeps names as they were at the time, whatever becomes of the person's own row. */
export async function writeTrail(hand: Hand, what: string, by: Actor): Promise<void> {
  if (hand.touched.size === 0) return
  await hand.db
    .insertInto('change')
    .values({
      ...fresh(hand),
      what,
      person_name: by.name,
      person_role: by.role,
      device_name: by.device,
      touched: JSON.stringify([...hand.touched.values()]),
    })
    .execute()
}
