import type { Kysely } from 'kysely'
import { sortKey } from '../base/sort-key.ts'
import type { Find } from '../services/kept.ts'
import type { Reads, Writes } from '../services/ports.ts'
import { add, slices, type Hand } from './hand.ts'
import { kept } from './kept-row.ts'
import type { FindRow, Tables } from './tables.ts'

export const find = (row: FindRow & { readonly site_code: string }): Find => ({
  ...kept(row),
  projectId: row.project_id,
  siteId: row.site_id,
  siteCode: row.site_code,
  findNumber: row.find_number,
})

export function selectFinds(db: Kysely<Tables>) {
  return db
    .selectFrom('find')
    .innerJoin('site', 'site.id', 'find.site_id')
    .selectAll('find')
    .select('site.code as site_code')
}

export function findReads(db: Kysely<Tables>): Reads['finds'] {
  return {
    async byId(id) {
      const row = await selectFinds(db).where('find.id', '=', id).executeTakeFirst()
      return row ? find(row) : null
    },
    async byIds(ids) {
      const rows: Find[] = []
      for (const slice of slices(ids, 1000)) {
        rows.push(
          ...(
            await selectFinds(db)
              .where('find.id', 'in', [...slice])
              .execute()
          ).map(find),
        )
      }
      const known = new Map(rows.map((one) => [one.id, one]))
      return ids.flatMap((id) => known.get(id) ?? [])
    },
    async byNumbers(siteId, numbers) {
      const rows: Find[] = []
      for (const slice of slices([...new Set(numbers)], 1000)) {
        const query = selectFinds(db)
          .where('find.site_id', '=', siteId)
          .where('find.find_number', 'in', [...slice])
        rows.push(...(await query.execute()).map(find))
      }
      return rows
    },
    async page(projectId, after, limit) {
      const all = selectFinds(db)
        .where('find.project_id', '=', projectId)
        .orderBy('find.sort_key')
        .orderBy('find.id')
      if (after === null) return (await all.limit(limit).execute()).map(find)
      const key = sortKey(`${after.siteCode} ${after.findNumber}`)
      const rest = all.where((either) =>
        either.or([
          either('find.sort_key', '>', key),
          either.and([either('find.sort_key', '=', key), either('find.id', '>', after.id)]),
        ]),
      )
      return (await rest.limit(limit).execute()).map(find)
    },
  }
}

export function findWrites(hand: Hand): Writes['finds'] {
  const reads = findReads(hand.db)
  return {
    ...reads,
    async ensure(site, numbers) {
      const there = new Map((await reads.byNumbers(site.id, numbers)).map((one) => [one.findNumber, one]))
      const wanted = [...new Set(numbers)].filter((number) => !there.has(number))
      const rows = wanted.map((number) => ({
        project_id: site.projectId,
        site_id: site.id,
        find_number: number,
        sort_key: sortKey(`${site.code} ${number}`),
      }))
      const added = await add(hand, 'find', rows, ['site_id', 'find_number'])
      for (const row of added) there.set(row.find_number, find({ ...row, site_code: site.code }))
      // Another writer may have entered the same number in between.
      const late = wanted.filter((number) => !there.has(number))
      for (const one of await reads.byNumbers(site.id, late)) there.set(one.findNumber, one)
      return numbers.map((number) => there.get(number)!)
    },
  }
}
