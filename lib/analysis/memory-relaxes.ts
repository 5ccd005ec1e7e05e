import type { Finding } from '../knowledge/flaw.ts'
import type { Decision, Effect, Rule } from '../knowledge/knowledge.ts'
import { ruleName, standing, type Base } from './base.ts'

/** A rule that only memory backs never overrides a stricter one: memory may hold somebody back, never let them go ahead. */
export function memoryRelaxes({ knowledge }: Base): Finding[] {
  return knowledge.decisions.flatMap((decision) =>
    standing(decision).flatMap((rule) => {
      if (!rule.sources.filter(({ says }) => says === 'supports').every(({ known }) => known === 'memory'))
        return []
      return rule.overrides
        .flatMap((id) => standing(decision).find((other) => other.id === id) ?? [])
        .filter((other) => isLooser(rule, other, decision))
        .map((other): Finding => {
          const name = ruleName(decision, rule)
          return {
            code: 'memory-relaxes',
            severity: 'error',
            at: `rule ${name}`,
            about: { rule: name, overrides: other.id },
          }
        })
    }),
  )
}

/** A collecting decision that falls silent has lost advice; that counts as looser unless the new advice is of the same code. */
function isLooser(rule: Rule, than: Rule, { answers }: Decision): boolean {
  const [now, before] = [rule.then, than.then]
  if (now.kind === 'answer' && before.kind === 'answer')
    return answers.indexOf(now.answer) > answers.indexOf(before.answer)
  if (now.kind === 'band' && before.kind === 'band') {
    const kept = rule.level === 'limit' || than.level === 'preference'
    return !kept || floor(now) < floor(before) || ceiling(now) > ceiling(before)
  }
  if (now.kind === 'every' && before.kind === 'every') return now.days > before.days
  return now.kind !== 'say' || before.kind !== 'say' || now.code !== before.code
}

type BandEffect = Extract<Effect, { kind: 'band' }>
const floor = ({ from }: BandEffect): number => from ?? -Infinity
const ceiling = ({ to }: BandEffect): number => to ?? Infinity
