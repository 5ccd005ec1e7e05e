import type { Finding } from '../knowledge/flaw.ts'
import type { Cell, Rule } from '../knowledge/knowledge.ts'
import { ruleName, standing, type Base } from './base.ts'
import { remainder, where, whereAll } from './box.ts'
import { allWorlds, type Worlds } from './worlds.ts'

const mostBoxes = 5_000

/** Every rule can hold somewhere, and somewhere it is not overridden. */
export function silentRules({ knowledge }: Base): Finding[] {
  return knowledge.decisions.flatMap((decision) => {
    const worlds = allWorlds(decision, knowledge)
    const rules = standing(decision)
    return rules.flatMap((rule): Finding[] => {
      const name = ruleName(decision, rule)
      const fact = barringFact(rule.when, worlds)
      if (fact !== null)
        return [{ code: 'never-holds', severity: 'error', at: `rule ${name}`, about: { rule: name, fact } }]
      const by = silencedBy(rule, rules, worlds)
      if (by === null) return []
      return [{ code: 'always-overridden', severity: 'error', at: `rule ${name}`, about: { rule: name, by } }]
    })
  })
}

/** The first cell that leaves the rule nothing, or null where it can hold. */
function barringFact(cells: readonly Cell[], { dimensions, boxes }: Worlds): string | null {
  let left = boxes
  for (const cell of cells) {
    left = left.flatMap((box) => where(box, cell, dimensions) ?? [])
    if (left.length === 0) return cell.fact
  }
  return null
}

/** The rules that together override it wherever it holds, or null where it speaks. */
function silencedBy(
  rule: Rule,
  rules: readonly Rule[],
  { dimensions, boxes }: Worlds,
): readonly string[] | null {
  const over = rules.filter(({ overrides }) => overrides.includes(rule.id))
  if (over.length === 0) return null
  const held = boxes.flatMap((box) => whereAll(box, rule.when, dimensions) ?? [])
  const left = remainder(
    held,
    over.map(({ when }) => when),
    dimensions,
    mostBoxes,
  )
  return left !== null && left.length === 0 ? over.map(({ id }) => id) : null
}
