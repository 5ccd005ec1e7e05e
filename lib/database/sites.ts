import type { Kysely } from 'kysely'
import { given } from '../base/outcome.ts'
import type { Site, SiteContact } from '../services/kept.ts'
import type { Reads, Writes } from '../services/ports.ts'
import { add, change, type Hand } from './hand.ts'
import { kept } from './kept-row.ts'
import type { ContactRow, SiteRow, Tables } from './tables.ts'

const site = (row: SiteRow): Site => ({
  ...kept(row),
  projectId: row.project_id,
  code: row.code,
  name: row.name,
})

const contact = (row: ContactRow): SiteContact => ({
  ...kept(row),
  siteId: row.site_id,
  kind: row.kind as SiteContact['kind'],
  name: row.name,
  reach: row.reach,
})

export function siteReads(db: Kysely<Tables>): Reads['sites'] {
  return {
    ofProject: async (projectId) =>
      (
        await db.selectFrom('site').selectAll().where('project_id', '=', projectId).orderBy('code').execute()
      ).map(site),
    async byId(id) {
      const row = await db.selectFrom('site').selectAll().where('id', '=', id).executeTakeFirst()
      return row ? site(row) : null
    },
    async contacts(projectId) {
      const rows = await db
        .selectFrom('contact')
        .innerJoin('site', 'site.id', 'contact.site_id')
        .selectAll('contact')
        .where('site.project_id', '=', projectId)
        .orderBy('contact.kind')
        .orderBy('contact.id')
        .execute()
      return rows.map(contact)
    },
  }
}

export function siteWrites(hand: Hand): Writes['sites'] {
  return {
    ...siteReads(hand.db),
    async ensure(projectId, code) {
      await add(hand, 'site', [{ project_id: projectId, code, name: code }], ['project_id', 'code'])
      const rows = hand.db
        .selectFrom('site')
        .selectAll()
        .where('project_id', '=', projectId)
        .where('code', '=', code)
      return site(await rows.executeTakeFirstOrThrow())
    },
    async keepContact(siteId, { kind, name, reach, version }) {
      const [added] = await add(
        hand,
        'contact',
        [{ site_id: siteId, kind, name, reach }],
        ['site_id', 'kind'],
      )
      if (added) return given({ id: added.id })
      const { id } = await hand.db
        .selectFrom('contact')
        .select('id')
        .where('site_id', '=', siteId)
        .where('kind', '=', kind)
        .executeTakeFirstOrThrow()
      return change(hand, 'contact', { id, version }, { name, reach })
    },
  }
}
