import { given } from '../base/outcome.ts'
import type { Answer } from '../base/trouble.ts'
import { boxLabel, type BoxLabel } from '../papers/box-label.ts'
import { sortKey } from '../base/sort-key.ts'
import { everyStanding } from './list-salvage.ts'
import type { World } from './ports.ts'
import { refresh } from './refresh.ts'

export interface BoxLabels {
  readonly rooms: readonly string[]
  readonly labels: readonly BoxLabel[]
}

/** Labels of the boxes asked for, in the order they stand; all boxes where neither room nor box is named. */
export async function boxLabels(
  world: World,
  { projectId, room, box }: { readonly projectId: string; readonly room?: string; readonly box?: string },
): Answer<BoxLabels> {
  const fresh = await refresh(world, projectId)
  if (!fresh.ok) return fresh
  return world.store.read(async (reads) => {
    const rooms = await reads.rooms.ofProject(projectId)
    const boxes = (await reads.boxes.ofProject(projectId)).map((one) => one.given)
    const inBox = Map.groupBy(await everyStanding(reads, projectId), ({ line }) => line.box)
    const place = (one: (typeof boxes)[number]) => sortKey(`${one.room ?? ''} ${one.shelf ?? ''} ${one.box}`)
    const labels = boxes
      .filter((one) => (room === undefined || one.room === room) && (box === undefined || one.box === box))
      .toSorted((a, b) => (place(a) < place(b) ? -1 : 1))
      .map((one) =>
        boxLabel(
          one,
          rooms.find(({ given: of }) => of.room === one.room)?.given,
          (inBox.get(one.box) ?? []).map(({ line }) => line),
        ),
      )
    return given({ rooms: [...new Set(boxes.map((one) => one.room ?? ''))].toSorted(), labels })
  })
}
