import type { Finding } from '../knowledge/flaw.ts'
import { ruleName, standing, type Base } from './base.ts'
import { remainder, where } from './box.ts'
import { allWorlds } from './worlds.ts'

/** Whatever else is recorded, a stop makes the find's urgency `now`. */
export function stopsUnread({ knowledge }: Base): Finding[] {
  const urgency = knowledge.decisions.find(({ fills }) => fills === 'urgency')
  if (urgency === undefined) return []
  const { dimensions, boxes } = allWorlds(urgency, knowledge)
  const now = standing(urgency).filter(({ then }) => then.kind === 'answer' && then.answer === 'now')
  return knowledge.decisions
    .filter(({ fills }) => fills === 'cautions')
    .flatMap((cautions) =>
      standing(cautions).flatMap((rule): Finding[] => {
        if (rule.level !== 'stop' || rule.then.kind !== 'say') return []
        const cell = { fact: cautions.id, any: [rule.then.code] }
        const read = dimensions.some(({ fact }) => fact === cautions.id)
        const stopped = read ? boxes.flatMap((box) => where(box, cell, dimensions) ?? []) : boxes
        const left = remainder(
          stopped,
          now.map(({ when }) => when),
          dimensions,
          5_000,
        )
        if (left !== null && left.length === 0) return []
        const at = `rule ${ruleName(cautions, rule)}`
        return [{ code: 'stop-unread', severity: 'error', at, about: { code: rule.then.code } }]
      }),
    )
}
