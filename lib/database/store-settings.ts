import type { Kysely } from 'kysely'
import { given } from '../base/outcome.ts'
import type { Reads, Writes } from '../services/ports.ts'
import type { StoreSetting, StoreSettingGiven } from '../services/store-setting.ts'
import { add, change, type Hand } from './hand.ts'
import { fromJson, kept } from './kept-row.ts'
import type { StoreSettingRow } from './store-rows.ts'
import type { Tables } from './tables.ts'

const setting = (row: StoreSettingRow): StoreSetting => ({
  ...kept(row),
  projectId: row.project_id,
  given: fromJson<StoreSettingGiven>(row.given),
})

export function settingReads(db: Kysely<Tables>): Reads['settings'] {
  return {
    async ofProject(projectId) {
      const row = await db
        .selectFrom('store_setting')
        .selectAll()
        .where('project_id', '=', projectId)
        .executeTakeFirst()
      return row ? setting(row) : null
    },
  }
}

export function settingWrites(hand: Hand): Writes['settings'] {
  const reads = settingReads(hand.db)
  return {
    ...reads,
    async keep(projectId, { given: told, version }) {
      const columns = { project_id: projectId, given: JSON.stringify(told) }
      const [added] = await add(hand, 'store_setting', [columns], ['project_id'])
      if (added) return given({ id: added.id })
      const { id } = (await reads.ofProject(projectId))!
      return change(hand, 'store_setting', { id, version }, columns)
    },
  }
}
