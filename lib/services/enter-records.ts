import { planFind } from '../field/plan-find.ts'
import type { Plan } from '../engine/plan.ts'
import type { ConditionRecord } from '../record/record.ts'
import { inBreaths } from './breath.ts'
import { contentHash } from './content-hash.ts'
import { identifiedOf } from './identified-of.ts'
import type { Find, KeptRecord } from './kept.ts'
import type { World, Writes } from './ports.ts'
import { contactsBySite } from './site-contacts.ts'
import { standingOf, type Standing } from './standing.ts'
import type { DiaryEntry } from './diary.ts'
import type { FindStay } from './stays.ts'
import { staysOf } from './whereabouts.ts'

export interface Entered {
  readonly finds: readonly Find[]
  /** The record of each find that was already there with the same content is not among these. */
  readonly added: readonly string[]
  readonly alreadyThere: number
}

type Assessing = Pick<World, 'knowledge' | 'today'>

/** The finds' newest records planned for today: lists follow these. Gives the plans by record. */
export async function bringUpToDate(
  writes: Writes,
  world: Assessing,
  finds: readonly Find[],
): Promise<ReadonlyMap<string, Plan>> {
  const projectId = finds[0]?.projectId
  if (projectId === undefined) return new Map()
  const contacts = await contactsBySite(writes, projectId)
  const ids = finds.map(({ id }) => id)
  const records = Map.groupBy(await writes.records.ofFinds(ids), ({ findId }) => findId)
  const moved = await writes.diary.list({ projectId, kinds: ['moved'], findIds: ids })
  const moves = Map.groupBy(moved as readonly DiaryEntry<'moved'>[], ({ findId }) => findId)
  const identified = await identifiedOf(writes, ids)
  const stays: FindStay[] = []
  const plans = new Map<string, Plan>()
  const standings: Standing[] = []
  for await (const some of inBreaths(finds)) {
    for (const find of some) {
      const all = records.get(find.id) ?? []
      const record: KeptRecord | undefined = all.at(-1)
      if (!record) continue
      const lay = staysOf(find.id, all, moves.get(find.id) ?? [])
      stays.push(...lay)
      const plan = planFind(record.record, world.knowledge, {
        asOf: world.today(),
        contacts: contacts.get(find.siteId) ?? {},
        questions: false,
        identified: identified(find.id),
      })
      plans.set(record.id, plan)
      standings.push(standingOf(find, record, plan, lay.at(-1)?.box ?? ''))
    }
  }
  await writes.standings.keep(standings)
  await writes.stays.keep(projectId, ids, stays)
  return plans
}

/**
 * Enters records in a project: sites and finds that are new are made, a record with the same content is not entered twice,
 * a different one of the same day stands beside the first. Each find's newest record is planned and the plan kept.
 */
export async function enterRecords(
  writes: Writes,
  world: Assessing,
  projectId: string,
  records: readonly ConditionRecord[],
  importId: string | null = null,
): Promise<Entered> {
  const finds = await findsOf(writes, projectId, records)
  const added = await writes.records.add(
    records.map((record, at) => ({
      findId: finds[at]!.id,
      record,
      contentHash: contentHash(record),
      importId,
    })),
  )
  const distinct = [...new Map(finds.map((find) => [find.id, find])).values()]
  const plans = await bringUpToDate(writes, world, distinct)
  const isNew = new Set(added)
  await writes.plans.add(
    [...plans].flatMap(([recordId, plan]) => (isNew.has(recordId) ? [{ recordId, plan }] : [])),
  )
  return { finds: distinct, added, alreadyThere: records.length - added.length }
}

/** The find of each record, in the order of the records. */
async function findsOf(
  writes: Writes,
  projectId: string,
  records: readonly ConditionRecord[],
): Promise<readonly Find[]> {
  const bySite = Map.groupBy(records, ({ site_code }) => site_code ?? '')
  const known = new Map<ConditionRecord, Find>()
  for (const [code, group] of bySite) {
    const site = await writes.sites.ensure(projectId, code)
    const finds = await writes.finds.ensure(
      site,
      group.map(({ find_number }) => find_number),
    )
    group.forEach((record, at) => known.set(record, finds[at]!))
  }
  return records.map((record) => known.get(record)!)
}
