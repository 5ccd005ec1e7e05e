import type { Answer } from '../base/trouble.ts'
import type { BoxGiven } from '../record/places.ts'
import type { Actor } from './kept.ts'
import type { World } from './ports.ts'

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
