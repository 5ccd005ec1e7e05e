import type { RecordFacts } from '../record/fact.ts'
import type { EvidenceBase } from './base.ts'
import { floorBits, gainBits } from './gain.ts'
import { meaningsOf, standOf, wouldMove, type Meaning } from './meanings.ts'
import { askable, isOpen } from './open-matters.ts'
import { raisedBy, type Raised } from './raised.ts'

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
  readonly matters: readonly {
    readonly matter: string
    readonly gainBits: number
    /** What each answer would mean, `rest` for none of them. */
    readonly means: readonly Meaning[]
  }[]
}

function tellsOf(raised: Raised, group: number): Asked['matters'][number] | null {
  const now = standOf(raised.joint)
  const means = meaningsOf(raised.joint, group)
  if (now.standing === 'probable' && !wouldMove(now, means)) return null
  return { matter: raised.matter.id, gainBits: gainBits(raised.joint, [group]), means }
}

export function questionsOf(raised: readonly Raised[], base: EvidenceBase): readonly Asked[] {
  const asked = new Map<string, Asked>()
  for (const one of raised) {
    if (!isOpen(one)) continue
    for (const at of askable(one, ({ by, question }) => by === 'eye' && question !== null)) {
      const tells = tellsOf(one, at)
      if (tells === null) continue
      const question = one.matter.groups[at]!.question!
      const key = `${one.part} ${question}`
      const before = asked.get(key)
      asked.set(key, {
        question,
        part: one.part,
        component: one.component,
        gainBits: (before?.gainBits ?? 0) + tells.gainBits,
        answers: base.questions[question]?.answers.map(({ id }) => id) ?? [],
        matters: [...(before?.matters ?? []), tells],
      })
    }
  }
  return [...asked.values()]
    .filter((one) => one.gainBits >= floorBits)
    .sort((a, b) => b.gainBits - a.gainBits)
}

export const askOf = (facts: RecordFacts, base: EvidenceBase): readonly Asked[] =>
  questionsOf(raisedBy(facts, base), base)
