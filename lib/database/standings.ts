import { sql, type Kysely } from 'kysely'
import type { IsoDate } from '../base/calendar.ts'
import { folded } from '../base/fold.ts'
import { bandOfKey } from '../services/band-key.ts'
import { noDay, urgencyOfRank, urgencyRank, type BandCount, type FindQuery } from '../services/find-query.ts'
import type { Reads, Writes } from '../services/ports.ts'
import type { FindLine, Standing } from '../services/standing.ts'
import { find, selectFinds } from './finds.ts'
import { add, noteChanged, slices, type Hand } from './hand.ts'
import { fromJson } from './kept-row.ts'
import type { StandingRow, Tables } from './tables.ts'

const standing = (row: StandingRow): Standing => ({
  findId: row.find_id,
  projectId: row.project_id,
  recordId: row.record_id,
  knowledge: row.knowledge,
  asOf: row.as_of as IsoDate,
  line: fromJson<FindLine>(row.line),
  band: row.band,
  search: row.search,
  sortKey: row.sort_key,
})

const columns = (one: Standing) => ({
  project_id: one.projectId,
  record_id: one.recordId,
  knowledge: one.knowledge,
  as_of: one.asOf,
  urgency: urgencyRank(one.line.urgency),
  due_on: one.line.dueOn ?? noDay,
  inspect_on: one.line.inspectOn,
  stops: one.line.stops.length,
  keep: one.line.keep,
  band: one.band,
  box: one.line.box,
  search: one.search,
  sort_key: one.sortKey,
  line: JSON.stringify(one.line),
})

/** `%`, `_` and the sign itself stand for themselves. */
const pattern = (word: string) => `%${word.replace(/[!%_]/g, '!$&')}%`

function matching(db: Kysely<Tables>, query: FindQuery) {
  let finds = db.selectFrom('standing').where('project_id', '=', query.projectId)
  if (query.urgency) finds = finds.where('urgency', 'in', query.urgency.map(urgencyRank))
  if (query.band !== undefined) finds = finds.where('band', '=', query.band)
  if (query.boxes) finds = finds.where('box', 'in', [...query.boxes])
  if (query.stopsOnly === true) finds = finds.where('stops', '>', 0)
  if (query.findIds) finds = finds.where('find_id', 'in', [...query.findIds])
  for (const word of folded(query.search ?? '')
    .split(' ')
    .filter(Boolean)) {
    finds = finds.where(({ ref }) => sql<boolean>`${ref('search')} like ${pattern(word)} escape '!'`)
  }
  return finds
}

function after(db: Kysely<Tables>, query: FindQuery) {
  const finds = matching(db, query)
  const place = query.after
  if (!place) return finds
  return finds.where(({ or, and, eb }) => {
    const number = or([
      eb('sort_key', '>', place.sortKey),
      and([eb('sort_key', '=', place.sortKey), eb('find_id', '>', place.findId)]),
    ])
    if (query.order === 'number') return number
    const day = or([eb('due_on', '>', place.dueOn), and([eb('due_on', '=', place.dueOn), number])])
    return or([eb('urgency', '>', place.urgency), and([eb('urgency', '=', place.urgency), day])])
  })
}

export function standingReads(db: Kysely<Tables>): Reads['standings'] {
  return {
    async outOfDate(projectId, asOf, knowledge, limit) {
      const rows = await selectFinds(db)
        .innerJoin('standing', 'standing.find_id', 'find.id')
        .where('standing.project_id', '=', projectId)
        .where((either) =>
          either.or([either('standing.as_of', '<>', asOf), either('standing.knowledge', '<>', knowledge)]),
        )
        .orderBy('find.id')
        .limit(limit)
        .execute()
      return rows.map(find)
    },
    async list(query) {
      const finds = after(db, query).selectAll().limit(query.limit)
      const sorted = query.order === 'urgency' ? finds.orderBy('urgency').orderBy('due_on') : finds
      return (await sorted.orderBy('sort_key').orderBy('find_id').execute()).map(standing)
    },
    async count(query) {
      const { finds } = await matching(db, query)
        .select(({ fn }) => fn.countAll<number>().as('finds'))
        .executeTakeFirstOrThrow()
      return finds
    },
    async byUrgency(projectId) {
      const rows = await db
        .selectFrom('standing')
        .select(({ fn }) => [
          'urgency',
          fn.countAll<number>().as('finds'),
          fn.sum<string | number>('stops').as('stops'),
        ])
        .where('project_id', '=', projectId)
        .groupBy('urgency')
        .orderBy('urgency')
        .execute()
      return rows.map(({ urgency, finds, stops }) => ({
        urgency: urgencyOfRank(urgency),
        finds,
        stops: Number(stops),
      }))
    },
    async byBand(projectId) {
      const rows = await db
        .selectFrom('standing')
        .select(({ fn }) => ['band', fn.countAll<number>().as('finds'), fn.min('urgency').as('urgency')])
        .where('project_id', '=', projectId)
        .groupBy('band')
        .orderBy('urgency')
        .orderBy('band')
        .execute()
      return rows.map(({ band, finds, urgency }): BandCount => ({
        band,
        rhPercent: bandOfKey(band),
        finds,
        mostPressing: urgencyOfRank(urgency),
      }))
    },
  }
}

export function standingWrites(hand: Hand): Writes['standings'] {
  return {
    ...standingReads(hand.db),
    async outdate(projectId) {
      await hand.db.updateTable('standing').set({ as_of: '' }).where('project_id', '=', projectId).execute()
    },
    async keep(standings) {
      for (const slice of slices(standings, 1000)) {
        const rows = slice.map((one) => ({ find_id: one.findId, ...columns(one) }))
        const added = new Set((await add(hand, 'standing', rows, ['find_id'])).map(({ find_id }) => find_id))
        for (const one of slice.filter(({ findId }) => !added.has(findId))) {
          await hand.db
            .updateTable('standing')
            .set({ ...columns(one), updated_at: hand.at, person_id: hand.personId, device_id: hand.deviceId })
            .set((column) => ({ version: column('version', '+', 1) }))
            .where('find_id', '=', one.findId)
            .execute()
          noteChanged(hand, 'standing', one.findId)
        }
      }
    },
  }
}
