import type { IsoDate } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import { planFind } from '../field/plan-find.ts'
import type { Contacts, Plan } from '../engine/plan.ts'
import type { Identification } from './identification.ts'
import type { Find, KeptPlan, KeptRecord, Project, Site } from './kept.ts'
import type { Reads, World } from './ports.ts'
import { groupContacts } from './site-contacts.ts'
import { missing, type Answer } from '../base/trouble.ts'

export interface FindShown {
  readonly project: Project
  readonly site: Site
  readonly find: Find
  readonly contacts: Contacts
  /** Every condition record, newest first, each with the plans issued for it, newest first. */
  readonly history: readonly { readonly kept: KeptRecord; readonly plans: readonly KeptPlan[] }[]
  /** What of it was identified, oldest first. */
  readonly identifications: readonly Identification[]
  /** The newest record planned again, for `asOf` and with the knowledge of today. */
  readonly now: Plan
  /** True where the newest plan that was issued came from other knowledge than today's. */
  readonly knowledgeChanged: boolean
}

async function shown(reads: Reads, { knowledge }: World, find: Find, asOf: IsoDate): Answer<FindShown> {
  const project = await reads.projects.byId(find.projectId)
  const site = await reads.sites.byId(find.siteId)
  const records = (await reads.records.ofFinds([find.id])).toReversed()
  const newest = records[0]
  if (!project || !site || !newest) return refused(missing('record', find.id))
  const plans = Map.groupBy(
    (await reads.plans.ofRecords(records.map(({ id }) => id))).toReversed(),
    ({ recordId }) => recordId,
  )
  const contacts = groupContacts(await reads.sites.contacts(find.projectId)).get(find.siteId) ?? {}
  const issued = plans.get(newest.id)?.[0]
  const identifications = await reads.identifications.ofFinds([find.id])
  const identified = identifications.map((one) => one.given)
  return given({
    project,
    site,
    find,
    contacts,
    history: records.map((kept) => ({ kept, plans: plans.get(kept.id) ?? [] })),
    identifications,
    now: planFind(newest.record, knowledge, { asOf, contacts, identified, answers: true }),
    knowledgeChanged: issued !== undefined && issued.knowledge !== knowledge.hash,
  })
}

/** All that is kept of one find, and what to do with it now. */
export function showFind(
  world: World,
  { findId, asOf }: { readonly findId: string; readonly asOf?: IsoDate },
): Answer<FindShown> {
  return world.store.read(async (reads) => {
    const find = await reads.finds.byId(findId)
    return find ? shown(reads, world, find, asOf ?? world.today()) : refused(missing('find', findId))
  })
}
