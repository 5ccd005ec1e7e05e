import type { IsoDate } from '../base/calendar.ts'
import { given } from '../base/outcome.ts'
import { planFind } from '../field/plan-find.ts'
import type { Contacts, Plan } from '../engine/plan.ts'
import type { ConditionRecord } from '../record/record.ts'
import { identifiedOf } from './identified-of.ts'
import type { Find, KeptRecord } from './kept.ts'
import type { World } from './ports.ts'
import { contactsBySite } from './site-contacts.ts'
import type { Answer } from '../base/trouble.ts'

export interface PlannedFind {
  readonly find: Find
  readonly newest: KeptRecord
  readonly plan: Plan
}

const mostAtOnce = 2000

/** The plans of chosen finds, for a bag sheet, a hand-over or a supplies list; in the order asked, unknown ids left out. */
export function planFinds(world: World, findIds: readonly string[]): Answer<readonly PlannedFind[]> {
  return world.store.read(async (reads) => {
    const finds = await reads.finds.byIds(findIds.slice(0, mostAtOnce))
    const identified = await identifiedOf(
      reads,
      finds.map(({ id }) => id),
    )
    const newest = new Map<string, KeptRecord>()
    for (const record of await reads.records.ofFinds(finds.map(({ id }) => id)))
      newest.set(record.findId, record)
    const contacts = new Map<string, ReadonlyMap<string, Contacts>>()
    for (const projectId of new Set(finds.map((find) => find.projectId))) {
      contacts.set(projectId, await contactsBySite(reads, projectId))
    }
    return given(
      finds.flatMap((find) => {
        const record = newest.get(find.id)
        if (!record) return []
        const own = contacts.get(find.projectId)?.get(find.siteId) ?? {}
        const occasion = { asOf: world.today(), contacts: own, identified: identified(find.id) }
        const plan = planFind(record.record, world.knowledge, occasion)
        return [{ find, newest: record, plan }]
      }),
    )
  })
}

/** The plan of a record that is kept nowhere: what somebody is typing, or a row of a file. */
export function planRecord(
  { knowledge, today }: Pick<World, 'knowledge' | 'today'>,
  record: ConditionRecord,
  occasion: { readonly asOf?: IsoDate; readonly contacts?: Contacts; readonly questions?: boolean } = {},
): Plan {
  return planFind(record, knowledge, { asOf: today(), ...occasion })
}
