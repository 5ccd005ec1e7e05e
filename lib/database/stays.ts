import type { Kysely } from 'kysely'
import type { IsoDate } from '../base/calendar.ts'
import type { Reads, Writes } from '../services/ports.ts'
import type { FindStay } from '../services/stays.ts'
import { add, noteRemoved, slices, type Hand } from './hand.ts'
import type { StayRow } from './store-rows.ts'
import type { Tables } from './tables.ts'

const idsAtOnce = 1000

const dayOrNull = (day: string) => (day === '' ? null : (day as IsoDate))

const stay = (row: Pick<StayRow, 'find_id' | 'box' | 'from_day' | 'to_day'>): FindStay => ({
  findId: row.find_id,
  box: row.box,
  from: dayOrNull(row.from_day),
  to: dayOrNull(row.to_day),
})

export function stayReads(db: Kysely<Tables>): Reads['stays'] {
  const all = db.selectFrom('stay').select(['find_id', 'box', 'from_day', 'to_day'])
  return {
    async inBoxes(projectId, boxes) {
      const found: FindStay[] = []
      for (const slice of slices(boxes, idsAtOnce)) {
        const rows = all
          .where('project_id', '=', projectId)
          .where('box', 'in', [...slice])
          .orderBy('from_day')
          .orderBy('find_id')
        found.push(...(await rows.execute()).map(stay))
      }
      return found
    },
    async ofFinds(findIds) {
      const found: FindStay[] = []
      for (const slice of slices(findIds, idsAtOnce)) {
        const rows = all
          .where('find_id', 'in', [...slice])
          .orderBy('find_id')
          .orderBy('place')
        found.push(...(await rows.execute()).map(stay))
      }
      return found
    },
  }
}

export function stayWrites(hand: Hand): Writes['stays'] {
  const reads = stayReads(hand.db)
  return {
    ...reads,
    async keep(projectId, findIds, stays) {
      const wanted = Map.groupBy(stays, ({ findId }) => findId)
      const there = Map.groupBy(await reads.ofFinds(findIds), ({ findId }) => findId)
      const same = (findId: string) =>
        JSON.stringify(wanted.get(findId) ?? []) === JSON.stringify(there.get(findId) ?? [])
      const other = findIds.filter((findId) => !same(findId))
      for (const slice of slices(
        other.filter((findId) => there.has(findId)),
        idsAtOnce,
      )) {
        const gone = await hand.db
          .deleteFrom('stay')
          .where('find_id', 'in', [...slice])
          .returning('id')
          .execute()
        noteRemoved(
          hand,
          'stay',
          gone.map(({ id }) => id),
        )
      }
      const rows = other.flatMap((findId) =>
        (wanted.get(findId) ?? []).map(({ box, from, to }, place) => ({
          project_id: projectId,
          find_id: findId,
          place,
          box,
          from_day: from ?? '',
          to_day: to ?? '',
        })),
      )
      if (rows.length > 0) await add(hand, 'stay', rows)
    },
  }
}
