import type { IsoDate } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import type { BandCount, UrgencyCount } from './find-query.ts'
import type { ImportBatch, Project } from './kept.ts'
import type { World } from './ports.ts'
import { refresh } from './refresh.ts'
import type { Standing } from './standing.ts'
import { missing, type Answer } from '../base/trouble.ts'

export interface StartPage {
  readonly project: Project
  readonly today: IsoDate
  readonly finds: number
  readonly byUrgency: readonly UrgencyCount[]
  /** Finds with a stop: before anything else, in every place. */
  readonly stops: readonly Standing[]
  /** What is to be done today or sooner, the most pressing first. */
  readonly pressing: readonly Standing[]
  readonly byBand: readonly BandCount[]
  readonly conflicts: number
  /** Finds whose last import left rows to mend. */
  readonly toMend: readonly ImportBatch[]
}

const shown = 12

/** What is pressing today in each place. */
export async function startPage(world: World, projectId: string): Answer<StartPage> {
  const fresh = await refresh(world, projectId)
  if (!fresh.ok) return fresh
  return world.store.read(async (reads) => {
    const project = await reads.projects.byId(projectId)
    if (!project) return refused(missing('project', projectId))
    const byUrgency = await reads.standings.byUrgency(projectId)
    const byBand = await reads.standings.byBand(projectId)
    const finds = (narrow: object) =>
      reads.standings.list({ projectId, order: 'urgency', limit: shown, ...narrow })
    return given({
      project,
      today: world.today(),
      finds: byUrgency.reduce((sum, one) => sum + one.finds, 0),
      byUrgency,
      stops: await finds({ stopsOnly: true }),
      pressing: await finds({ urgency: ['now', 'hours', 'days'] }),
      byBand,
      conflicts: byBand.find(({ band }) => band === 'conflict')?.finds ?? 0,
      toMend: (await reads.imports.ofProject(projectId)).filter(({ rowsRejected }) => rowsRejected > 0),
    })
  })
}
