import type { IsoDate } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { assemble, type Assemblage } from '../evidence/assemblage.ts'
import type { AssemblageFind } from '../evidence/assemblage-find.ts'
import { readHours, type HoursFlaw } from '../evidence/assemblage-hours.ts'
import type { Identified } from '../evidence/raised.ts'
import { assemblageFind, nothingReckoned, type Reckoned } from './assemblage-finds.ts'
import { inBreaths } from './breath.ts'
import type { Find, KeptRecord, Project } from './kept.ts'
import type { Reads, World } from './ports.ts'

export interface AnalysesAsked {
  readonly projectId: string
  /** A method and what was typed for it, empty where nothing was. */
  readonly hours: readonly (readonly [method: string, typed: string])[]
  readonly sampling: boolean
}

/** A proposal and no more: nothing is sent until somebody sends it. */
export interface AnalysesShown {
  readonly project: Project
  readonly today: IsoDate
  readonly flaws: readonly HoursFlaw[]
  /** Null where no hours are given, or some are not understood. */
  readonly assemblage: Assemblage | null
  readonly finds: number
  /** Finds on which something stands open. */
  readonly open: number
  readonly names: ReadonlyMap<string, string>
}

/** As many as fit on a screen to compare, and no promise further ahead than that. */
const furtherHours = 4
const findsAtOnce = 500

const reckonedBefore = new Map<string, Reckoned>()
const mostReckoned = 50_000

/** What one record comes to on one day with one knowledge never changes: it is kept for as long as the process lives. */
function reckonedOf({ id }: KeptRecord, { knowledge, today }: World): Reckoned {
  const key = `${id} ${knowledge.hash} ${today()}`
  const known = reckonedBefore.get(key)
  if (known !== undefined) return known
  if (reckonedBefore.size >= mostReckoned) reckonedBefore.clear()
  const fresh = nothingReckoned()
  reckonedBefore.set(key, fresh)
  return fresh
}

export async function planAnalyses(world: World, asked: AnalysesAsked): Answer<AnalysesShown> {
  const { projectId, sampling } = asked
  const typed = asked.hours.filter(([, amount]) => amount.trim() !== '')
  const hours = typed.length === 0 ? given([]) : readHours(typed, world.knowledge)
  const read = await world.store.read(async (reads) => {
    const project = await reads.projects.byId(projectId)
    if (!project) return refused(missing('project', projectId))
    const identified = await reads.identifications.ofProject(projectId)
    return given({ project, kept: await newestRecords(reads, projectId), identified })
  })
  if (!read.ok) return read
  const { project, kept, identified } = read.value
  const identifiedOf = Map.groupBy(identified, ({ findId }) => findId)
  const finds: AssemblageFind[] = []
  for await (const some of inBreaths(kept))
    for (const { find, record } of some) {
      const known: readonly Identified[] = (identifiedOf.get(find.id) ?? []).map((one) => one.given)
      const beside = { identified: known, reckoned: reckonedOf(record, world) }
      const one = assemblageFind(find.id, record.record, world.knowledge, world.today(), beside)
      if (one !== null) finds.push(one)
    }
  const allowances = hours.ok ? hours.value : []
  return given({
    project,
    today: world.today(),
    flaws: hours.ok ? [] : hours.problems,
    assemblage:
      allowances.length === 0
        ? null
        : assemble(finds, { allowances, sampling, further: furtherHours }, world.knowledge),
    finds: kept.length,
    open: finds.length,
    names: new Map(kept.map(({ find }) => [find.id, find.findNumber])),
  })
}

interface Newest {
  readonly find: Find
  readonly record: KeptRecord
}

async function newestRecords(reads: Reads, projectId: string): Promise<readonly Newest[]> {
  const all: Newest[] = []
  let after: Find | null = null
  for (;;) {
    const page: readonly Find[] = await reads.finds.page(projectId, after, findsAtOnce)
    const newest = new Map<string, KeptRecord>()
    for (const record of await reads.records.ofFinds(page.map(({ id }) => id)))
      newest.set(record.findId, record)
    for (const find of page) {
      const record = newest.get(find.id)
      if (record !== undefined) all.push({ find, record })
    }
    if (page.length < findsAtOnce) return all
    after = page.at(-1)!
  }
}
