import type { Kysely } from 'kysely'
import type { IsoDate } from '../base/calendar.ts'
import type { KeptPlan } from '../services/kept.ts'
import type { Reads, Writes } from '../services/ports.ts'
import { add, slices, type Hand } from './hand.ts'
import { fromJson, kept } from './kept-row.ts'
import type { PlanRow, Tables } from './tables.ts'

const keptPlan = (row: PlanRow): KeptPlan => ({
  ...kept(row),
  recordId: row.record_id,
  knowledge: row.knowledge,
  asOf: row.as_of as IsoDate,
  plan: fromJson<KeptPlan['plan']>(row.plan),
})

export function planReads(db: Kysely<Tables>): Reads['plans'] {
  return {
    async ofRecords(recordIds) {
      const rows: KeptPlan[] = []
      for (const slice of slices(recordIds, 1000)) {
        const query = db
          .selectFrom('plan')
          .selectAll()
          .where('record_id', 'in', [...slice])
          .orderBy('created_at')
          .orderBy('id')
        rows.push(...(await query.execute()).map(keptPlan))
      }
      return rows
    },
  }
}

export function planWrites(hand: Hand): Writes['plans'] {
  return {
    ...planReads(hand.db),
    async add(plans) {
      const rows = plans.map(({ recordId, plan }) => ({
        record_id: recordId,
        knowledge: plan.knowledge,
        as_of: plan.asOf,
        plan: JSON.stringify(plan),
      }))
      await add(hand, 'plan', rows, ['record_id', 'knowledge', 'as_of'])
    },
  }
}
