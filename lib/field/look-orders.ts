import { showings } from '../evidence/gain.ts'
import { isOpen } from '../evidence/open-matters.ts'
import type { Raised } from '../evidence/raised.ts'
import { requestsFor } from '../evidence/requests.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { RecordFacts } from '../record/fact.ts'
import { eyeGroups, type Look } from './look-changes.ts'

/** Looks that leave every explanation where it stands and would yet change what is first asked of a laboratory. */
export function looksThatReorder(
  raised: readonly Raised[],
  facts: RecordFacts,
  knowledge: Knowledge,
): readonly Look[] {
  const methods = (all: readonly Raised[]) =>
    requestsFor(all, facts, knowledge)
      .map(({ method, part }) => `${part} ${method}`)
      .join()
  const open = raised.filter(isOpen).flatMap((one) => eyeGroups(one).map((group) => ({ one, group })))
  if (open.length === 0) return []
  const now = methods(raised)
  const found = new Map<string, Look>()
  for (const { one, group } of open) {
    const { matter, part, component, joint } = one
    const what = `looked:${matter.groups[group]!.question}`
    const moving = showings(joint, group).filter(
      ({ after }) =>
        methods(raised.map((other) => (other === one ? { ...one, joint: after } : other))) !== now,
    )
    const change = moving.reduce((sum, { chance }) => sum + chance, 0)
    const before = found.get(`${part} ${what}`)?.change ?? 0
    if (change > 0)
      found.set(`${part} ${what}`, {
        what,
        part,
        component,
        change: change + before,
        answers: [],
        settles: ['requests'],
      })
  }
  return [...found.values()].toSorted((a, b) => b.change - a.change)
}
