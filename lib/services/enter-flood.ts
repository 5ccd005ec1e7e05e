import type { IsoDate } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import type { ConditionRecord } from '../record/record.ts'
import { wetted, type Wetting } from '../record/wetted.ts'
import { carriedOnWords } from '../wording/flood.ts'
import { enterOnce, told, wrongDay } from './enter-diary.ts'
import { enterRecords } from './enter-records.ts'
import type { Actor, KeptRecord } from './kept.ts'
import { everyStanding } from './list-salvage.ts'
import type { Reads, World } from './ports.ts'
import { refresh } from './refresh.ts'
import type { Standing } from './standing.ts'

export interface Flood {
  readonly projectId: string
  readonly room: string
  /** The boxes the water reached, as somebody saw; boxes that stayed shut and dry are not among them. */
  readonly boxes: readonly string[]
  readonly on: IsoDate
  readonly how: Wetting['how']
  readonly note: string
}

export interface FloodEntered {
  readonly wetted: readonly string[]
  /** Lay in water before and after. */
  readonly inWater: number
  /** Recorded on the day or later already: somebody has looked since, so nothing is carried on. */
  readonly lookedAtSince: readonly string[]
}

async function newestOf(reads: Reads, finds: readonly Standing[]): Promise<ReadonlyMap<string, KeptRecord>> {
  const records = await reads.records.ofFinds(finds.map(({ findId }) => findId))
  return new Map(records.map((record) => [record.findId, record]))
}

/**
 * Water came into a room: every find of the boxes it reached is recorded as wet that day, and planned anew. Said twice it is
 * there once.
 */
export async function enterFlood(world: World, flood: Flood, by: Actor): Answer<FloodEntered> {
  const { projectId, room, boxes, on, how, note } = flood
  const wrong = wrongDay(world, on)
  if (wrong) return wrong
  const fresh = await refresh(world, projectId)
  if (!fresh.ok) return fresh
  return world.store.write('enter-flood', by, async (writes) => {
    if (!(await writes.projects.byId(projectId))) return refused(missing('project', projectId))
    const listed = await writes.boxes.ofProject(projectId)
    const unknown = boxes.find(
      (name) => !listed.some((one) => one.given.box === name && (one.given.room ?? '') === room),
    )
    if (unknown !== undefined) return refused(missing('box', unknown))
    const reached = new Set(boxes)
    const finds = (await everyStanding(writes, projectId)).filter(({ line }) => reached.has(line.box))
    const dry = finds.filter(({ line }) => line.keep !== 'wet')
    const newest = await newestOf(writes, dry)
    const wettings: ConditionRecord[] = []
    const lookedAtSince: string[] = []
    for (const { findId, line } of dry) {
      const record = newest.get(findId)?.record
      if (!record) continue
      if (record.recorded_on !== undefined && record.recorded_on >= on) lookedAtSince.push(line.findNumber)
      else
        wettings.push(
          wetted(record, { on, how, by: by.name, note: carriedOnWords(how, on, record.recorded_on) }),
        )
    }
    await enterRecords(writes, world, projectId, wettings)
    await enterOnce(writes, projectId, {
      kind: 'flood',
      box: null,
      room,
      findId: null,
      on,
      atMs: null,
      given: { cause: how, boxes, ...told({ note }) },
    })
    return given({
      wetted: wettings.map(({ find_number }) => find_number),
      inWater: finds.length - dry.length,
      lookedAtSince,
    })
  })
}
