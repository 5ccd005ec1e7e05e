import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { recordOfLook } from '../field/look-answer.ts'
import { notAccepted } from './enter-diary.ts'
import { enterRecords } from './enter-records.ts'
import type { Actor } from './kept.ts'
import type { World } from './ports.ts'

export interface LookAnswered {
  readonly findId: string
  /** What was asked, as the plan names it: `body.looked:skin-edge`. */
  readonly fact: string
  /** Ids of the answers; several only where a list was asked for. */
  readonly answers: readonly string[]
}

/**
 * Somebody looked at a kept find and answered a question: a new condition record of today, with all that the newest one
 * says and the answer. Nothing is overwritten, and the find stays in the box it lies in.
 */
export function answerLook(
  world: World,
  { findId, fact, answers }: LookAnswered,
  by: Actor,
): Answer<{ readonly recordId: string | null }> {
  return world.store.write('answer-look', by, async (writes) => {
    const find = await writes.finds.byId(findId)
    const newest = (await writes.records.ofFinds([findId])).at(-1)
    if (!find || !newest) return refused(missing('find', findId))
    const box = (await writes.stays.ofFinds([findId])).at(-1)?.box ?? null
    const record = recordOfLook(newest.record, fact, answers, { on: world.today(), by: by.name, box })
    if (record === null) return notAccepted('answer', answers.length === 0 ? 'empty' : 'unknown')
    const { added } = await enterRecords(writes, world, find.projectId, [record])
    return given({ recordId: added[0] ?? null })
  })
}
