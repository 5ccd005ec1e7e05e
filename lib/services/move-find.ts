import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import type { Move } from '../record/store-diary.ts'
import { bringUpToDate } from './enter-records.ts'
import { boxNamed, enterOnce, notAccepted, told, wrongDay, type Happened } from './enter-diary.ts'
import type { DiaryEntry } from './diary.ts'
import type { Actor } from './kept.ts'
import type { Reads, World } from './ports.ts'
import { outingsOf } from './whereabouts.ts'

export interface FindMoved extends Happened {
  readonly findId: string
  readonly move: Move
  /** Which box it goes to; of what comes back: left out, where it lay before. */
  readonly box?: string
  readonly where?: string
  readonly why?: string
}

async function lastOuting(reads: Reads, projectId: string, findId: string) {
  const moved = await reads.diary.list({ projectId, kinds: ['moved'], findIds: [findId] })
  return outingsOf(moved as readonly DiaryEntry<'moved'>[]).at(-1) ?? null
}

/** A find out of its box, back into it, or into another; lists show it where it lies from then on. */
export async function moveFind(
  world: World,
  { findId, move, box, where, why, on, atMs = null }: FindMoved,
  by: Actor,
): Answer<{ readonly entered: boolean }> {
  const wrong = wrongDay(world, on)
  if (wrong) return wrong
  if (move === 'to-box' && (box ?? '') === '') return notAccepted('box', 'empty')
  return world.store.write('move-find', by, async (writes) => {
    const find = await writes.finds.byId(findId)
    if (!find) return refused(missing('find', findId))
    const { projectId } = find
    const lay = (await writes.stays.ofFinds([findId])).at(-1)?.box ?? null
    const outing = await lastOuting(writes, projectId, findId)
    const out = outing !== null && outing.to === null
    const to = move === 'out' ? lay : (box ?? '') !== '' ? box! : (lay ?? outing?.box ?? null)
    if (move !== 'out' && to !== null) {
      const listed = await boxNamed(writes, projectId, to)
      if (!listed.ok) return listed
    }
    const entered = await enterOnce(writes, projectId, {
      kind: 'moved',
      box: to,
      room: null,
      findId,
      on,
      atMs,
      given: {
        move,
        ...told({ from_box: lay ?? undefined, where: where?.trim(), why: why?.trim() }),
      },
    })
    // What was sent again is there already; only what is new is held against where the find is now.
    if (entered && move === 'out' && out) return notAccepted('move', 'taken')
    if (entered && move === 'back' && !out) return notAccepted('move', 'unknown')
    if (entered) await bringUpToDate(writes, world, [find])
    return given({ entered })
  })
}
