import { given } from '../base/outcome.ts'
import type { Answer } from '../base/trouble.ts'
import type { Box, Room } from './places.ts'
import type { World } from './ports.ts'
import { refresh } from './refresh.ts'
import type { Standing } from './standing.ts'

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
