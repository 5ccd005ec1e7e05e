import { given } from '../base/outcome.ts'
import type { Answer } from '../base/trouble.ts'
import type { LidSeen } from '../record/store-diary.ts'
import { boxNamed, enterOnce, told, wrongDay, wrongNumber, type Happened } from './enter-diary.ts'
import type { Actor } from './kept.ts'
import type { World } from './ports.ts'

interface OfBox extends Happened {
  readonly projectId: string
  readonly box: string
}

/** Fresh water in a tub. */
export async function changeWater(
  world: World,
  { projectId, box: name, on, atMs = null, note }: OfBox & { readonly note?: string },
  by: Actor,
): Answer<{ readonly entered: boolean }> {
  const wrong = wrongDay(world, on)
  if (wrong) return wrong
  return world.store.write('change-water', by, async (writes) => {
    const box = await boxNamed(writes, projectId, name)
    if (!box.ok) return box
    const entry = { kind: 'water-change', box: name, room: null, findId: null, on, atMs } as const
    const entered = await enterOnce(writes, projectId, { ...entry, given: told({ note }) })
    const { given: kept } = box.value
    if (entered && (kept.water_changed_on ?? '') < on)
      await writes.boxes.keep(projectId, [{ given: { ...kept, water_changed_on: on }, version: null }])
    return given({ entered })
  })
}

/** A lid that was opened, or found seated or not. */
export async function noteLid(
  world: World,
  {
    projectId,
    box: name,
    on,
    atMs = null,
    lid,
    minutes,
    why,
  }: OfBox & { readonly lid: LidSeen; readonly minutes?: number; readonly why?: string },
  by: Actor,
): Answer<{ readonly entered: boolean }> {
  const wrong = wrongDay(world, on) ?? wrongNumber([['minutes', minutes, 0, 1_000_000]])
  if (wrong) return wrong
  return world.store.write('note-lid', by, async (writes) => {
    const box = await boxNamed(writes, projectId, name)
    if (!box.ok) return box
    const entry = { kind: 'lid', box: name, room: null, findId: null, on, atMs } as const
    const entered = await enterOnce(writes, projectId, {
      ...entry,
      given: { lid, ...told({ minutes, why }) },
    })
    const { given: kept } = box.value
    if (entered && lid === 'opened' && (kept.opened_on ?? '') < on)
      await writes.boxes.keep(projectId, [{ given: { ...kept, opened_on: on }, version: null }])
    return given({ entered })
  })
}
