import { canonical } from '../base/canonical.ts'
import type { Finding } from '../knowledge/flaw.ts'
import type { Decision, Knowledge, Rule } from '../knowledge/knowledge.ts'
import { ruleName, standing, type Base } from './base.ts'
import { remainder, whereAll, type Box } from './box.ts'
import { witness } from './witness.ts'
import { allWorlds, type Worlds } from './worlds.ts'

const mostBoxes = 5_000

/** Where a decision gives one answer, no two rules hold together and differ, unless one of them is then overridden. */
export function conflicts({ knowledge }: Base): Finding[] {
  return knowledge.decisions
    .filter(({ policy }) => policy === 'unique')
    .flatMap((decision) => conflictsOf(decision, knowledge))
}

function conflictsOf(decision: Decision, knowledge: Knowledge): Finding[] {
  const worlds = allWorlds(decision, knowledge)
  const rules = standing(decision)
  return rules.flatMap((one, index) =>
    rules.slice(index + 1).flatMap((other): Finding[] => {
      if (canonical(one.then) === canonical(other.then)) return []
      const box = bothSpeak(one, other, rules, worlds)
      if (box === null) return []
      const names = [ruleName(decision, one), ruleName(decision, other)] as const
      const about = { decision: decision.id, rules: names, facts: witness(box, worlds.dimensions) }
      return [{ code: 'conflict', severity: 'error', at: `rule ${names[1]}`, about }]
    }),
  )
}

/** A region where both rules hold and no rule that holds there overrides either. */
function bothSpeak(
  one: Rule,
  other: Rule,
  rules: readonly Rule[],
  { dimensions, boxes }: Worlds,
): Box | null {
  const together = boxes.flatMap((box) => whereAll(box, [...one.when, ...other.when], dimensions) ?? [])
  const silencing = rules.filter(
    ({ overrides }) => overrides.includes(one.id) || overrides.includes(other.id),
  )
  const left = remainder(
    together,
    silencing.map(({ when }) => when),
    dimensions,
    mostBoxes,
  )
  return (left ?? together)[0] ?? null
}
