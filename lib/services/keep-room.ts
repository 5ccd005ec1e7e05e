import type { Answer } from '../base/trouble.ts'
import type { RoomGiven } from '../record/places.ts'
import type { Actor } from './kept.ts'
import type { World } from './ports.ts'

/** One room as it is run now. */
export function keepRoom(
  { store }: World,
  {
    projectId,
    room,
    version,
  }: { readonly projectId: string; readonly room: RoomGiven; readonly version: number | null },
  by: Actor,
): Answer<{ readonly id: string }> {
  return store.write('keep-room', by, async (writes) => {
    const [kept] = await writes.rooms.keep(projectId, [{ given: room, version }])
    return kept!
  })
}
