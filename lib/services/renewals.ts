import type { IsoDate } from '../base/calendar.ts'
import { given } from '../base/outcome.ts'
import type { Answer } from '../base/trouble.ts'
import { levelRenewals } from '../boxes/level.ts'
import type { LevelledPlan, PlannedRenewal } from '../boxes/level-work.ts'
import { calendarText } from '../exchange/calendar.ts'
import { calendarName, renewalDescription, renewalSummary } from '../wording/renewals.ts'
import type { Project } from './kept.ts'
import type { World } from './ports.ts'
import { duesOf, endOf, meansOf, type Untold } from './renewals-due.ts'
import { showStore, type BoxLine } from './show-store.ts'
import type { StoreSettingGiven } from './store-setting.ts'

/** A year of renewals as work: what is to be done in which week, and what cannot be done in time for want of what. */
export interface RenewalsShown {
  readonly project: Project
  readonly today: IsoDate
  /** The first day beyond the weeks that are planned. */
  readonly until: IsoDate
  readonly setting: StoreSettingGiven
  readonly untold: readonly Untold[]
  readonly plan: LevelledPlan
  /** Every box by its name. */
  readonly boxes: ReadonlyMap<string, BoxLine>
  /** Boxes with gel and something to keep dry, of which nobody can tell how long. */
  readonly cannotTell: readonly BoxLine[]
}

const search = { seed: 1, steps: 20_000 }

export async function listRenewals(world: World, projectId: string): Answer<RenewalsShown> {
  const shown = await showStore(world, projectId)
  if (!shown.ok) return shown
  const { project, today, setting, rooms } = shown.value
  const lines = rooms.flatMap(({ shelves }) => shelves.flatMap(({ boxes }) => boxes))
  const { means, untold } = meansOf(setting, today)
  const dues = duesOf(
    lines,
    rooms.flatMap(({ room }) => room ?? []),
    world.knowledge,
  )
  return given({
    project,
    today,
    until: endOf(means),
    setting,
    untold,
    plan: levelRenewals(dues, means, search),
    boxes: new Map(lines.map((line) => [line.box.given.box, line])),
    cannotTell: lines.filter(({ noOutlook }) => noOutlook === 'no-volume' || noOutlook === 'no-start'),
  })
}

export interface RenewalCalendar {
  readonly fileName: string
  readonly text: string
}

/** The same as a calendar; null where nothing falls due, for an empty calendar is none. `madeAtMs`: now. */
export async function renewalCalendar(
  world: World,
  { projectId, madeAtMs }: { readonly projectId: string; readonly madeAtMs: number },
): Answer<RenewalCalendar | null> {
  const listed = await listRenewals(world, projectId)
  if (!listed.ok) return listed
  const { project, plan, boxes } = listed.value
  const all = plan.weeks.flatMap(({ renewals }) => renewals)
  if (all.length === 0) return given(null)
  const entries = all.map((renewal) => ({
    uid: uidOf(renewal, boxes),
    on: renewal.by,
    summary: renewalSummary(renewal),
    description: renewalDescription(renewal),
  }))
  return given({
    fileName: 'gel-renewals.ics',
    text: calendarText({ name: calendarName(project.name), madeAtMs, entries }),
  })
}

/** The first renewal that is due of a box is always the same entry: read in again, it moves to where it is due now. */
function uidOf({ due, turn }: PlannedRenewal, boxes: RenewalsShown['boxes']): string {
  return `gel-${boxes.get(due.box)?.box.id ?? due.box}-${turn}@quietmetal.invalid`
}
