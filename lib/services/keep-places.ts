import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import type { BoxGiven } from '../record/places.ts'
import type { Problem } from '../record/problem.ts'
import { readPlaces } from '../tables/place-table.ts'
import type { Actor } from './kept.ts'
import type { Box, Room, ToKeep } from './places.ts'
import type { World } from './ports.ts'
import { refresh } from './refresh.ts'
import type { Standing } from './standing.ts'

export interface PlacesKept {
  readonly rooms: number
  readonly boxes: number
  readonly problems: readonly Problem[]
}

/** A table of rooms or of boxes into a project; places that are known by name are changed, none is taken away. */
export async function keepPlaces(
  { store }: World,
  { projectId, bytes }: { readonly projectId: string; readonly bytes: Uint8Array },
  by: Actor,
): Answer<PlacesKept> {
  const { rooms, boxes, problems } = await readPlaces(bytes)
  if (rooms.length + boxes.length === 0) return given({ rooms: 0, boxes: 0, problems })
  const newest = <Given>(all: readonly Given[]): readonly ToKeep<Given>[] =>
    all.map((one) => ({ given: one, version: null }))
  return store.write('keep-places', by, async (writes) => {
    if (!(await writes.projects.byId(projectId))) return refused(missing('project', projectId))
    await writes.rooms.keep(projectId, newest(rooms))
    await writes.boxes.keep(projectId, newest(boxes))
    return given({ rooms: rooms.length, boxes: boxes.length, problems })
  })
}

/** One box as it stands now: gel renewed, moved, opened. */
export function keepBox(
  { store }: World,
  {
    projectId,
    box,
    version,
  }: { readonly projectId: string; readonly box: BoxGiven; readonly version: number | null },
  by: Actor,
): Answer<{ readonly id: string }> {
  return store.write('keep-box', by, async (writes) => {
    const [kept] = await writes.boxes.keep(projectId, [{ given: box, version }])
    return kept!
  })
}

export interface Places {
  readonly rooms: readonly Room[]
  readonly boxes: readonly {
    readonly box: Box
    readonly finds: readonly Standing[]
    readonly total: number
  }[]
  /** Finds whose records name no box, or one that nobody has listed. */
  readonly elsewhere: number
}

const findsShown = 200

/** The store: rooms, boxes, and the finds in each box. */
export async function listPlaces(world: World, projectId: string): Answer<Places> {
  const fresh = await refresh(world, projectId)
  if (!fresh.ok) return fresh
  return world.store.read(async (reads) => {
    const boxes = await reads.boxes.ofProject(projectId)
    const listed = []
    let inBoxes = 0
    for (const box of boxes) {
      const query = { projectId, order: 'urgency', boxes: [box.given.box], limit: findsShown } as const
      const total = await reads.standings.count(query)
      inBoxes += total
      listed.push({ box, finds: await reads.standings.list(query), total })
    }
    const all = await reads.standings.count({ projectId, order: 'number', limit: 1 })
    return given({ rooms: await reads.rooms.ofProject(projectId), boxes: listed, elsewhere: all - inBoxes })
  })
}
