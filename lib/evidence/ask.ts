import type { EvidenceBase } from './base.ts'
import { floorBits, gainBits } from './gain.ts'
import { isIdle } from './meanings.ts'
import { askable, isOpen } from './open-matters.ts'
import type { Raised } from './raised.ts'

/**
 * What somebody who holds the find should look at next: every question that an eye can answer and that is still open, the
 * one first that is expected to tell most over all that hangs on it. Nothing is asked of a matter that is settled, and of
 * one that is probable only what could move it.
 */
export interface Asked {
  /** Id of the question; its words stand in the knowledge. */
  readonly question: string
  readonly part: number
  readonly component: string
  readonly gainBits: number
  readonly answers: readonly string[]
  /** What hangs on it, with its share of the gain. */
  readonly matters: readonly { readonly matter: string; readonly gainBits: number }[]
}

/** What the question tells of one matter [bit]; none where no answer could move a matter that is as good as decided. */
function tellsOf(raised: Raised, group: number): number {
  const bits = gainBits(raised.joint, [group])
  if (bits === 0) return 0
  return isIdle(raised.joint, [group]) ? 0 : bits
}

export function questionsOf(raised: readonly Raised[], base: EvidenceBase): readonly Asked[] {
  const asked = new Map<string, Asked>()
  for (const one of raised) {
    if (!isOpen(one)) continue
    for (const at of askable(one, ({ by, question }) => by === 'eye' && question !== null)) {
      const bits = tellsOf(one, at)
      if (bits === 0) continue
      const question = one.matter.groups[at]!.question!
      const key = `${one.part} ${question}`
      const before = asked.get(key)
      asked.set(key, {
        question,
        part: one.part,
        component: one.component,
        gainBits: (before?.gainBits ?? 0) + bits,
        answers: base.questions[question]?.answers.map(({ id }) => id) ?? [],
        matters: [...(before?.matters ?? []), { matter: one.matter.id, gainBits: bits }],
      })
    }
  }
  return [...asked.values()]
    .filter((one) => one.gainBits >= floorBits)
    .sort((a, b) => b.gainBits - a.gainBits)
}
