import type { Rule } from '../knowledge/knowledge.ts'
import type { Fact } from '../record/fact.ts'
import type { Statement, UsedFact } from './plan.ts'
import { lookupIn, speaks, type Conclusion, type Reasoning } from './reasoning.ts'

/** A rule that spoke: where, and whether only because an absent fact was taken on its protective side. */
export interface Spoken {
  readonly rule: Rule
  readonly statement: Statement
}

function shown(fact: Fact | undefined): Pick<UsedFact, 'said' | 'value'> {
  if (fact === undefined) return { said: 'absent', value: '' }
  if (fact.number !== undefined) return { said: fact.said, value: String(fact.number) }
  const values = fact.has.length > 0 ? fact.has : fact.may === 'any' ? [] : fact.may
  return { said: fact.said, value: [...new Set(values)].join('; ') }
}

interface Voice {
  readonly part: number | null
  readonly precautionary: boolean
}

/** Which rules of a conclusion speak, and for which parts. Open rules speak in protective decisions alone. */
function voices(conclusion: Conclusion, reasoning: Reasoning): ReadonlyMap<number, readonly Voice[]> {
  const { decision } = conclusion.index
  const heard = new Map<number, Voice[]>()
  const hear = (part: number | null, rules: readonly number[], precautionary: boolean) => {
    for (const rule of rules) heard.set(rule, [...(heard.get(rule) ?? []), { part, precautionary }])
  }
  const each = conclusion.find
    ? [{ part: null, decided: conclusion.find }]
    : conclusion.components.map((decided, part) => ({ part, decided }))
  for (const { part, decided } of each) {
    hear(part, decided.holding, false)
    if (decision.absent !== 'protective') continue
    const lookup = lookupIn(reasoning, part, true)
    hear(
      part,
      decided.open.filter((rule) => speaks(decision, decision.rules[rule]!.when, lookup)),
      true,
    )
  }
  return heard
}

function usedFacts(rule: Rule, reasoning: Reasoning, part: number | null, protective: boolean): UsedFact[] {
  const lookup = lookupIn(reasoning, part, protective)
  const component = part === null ? null : reasoning.facts.components[part]!.name
  return rule.when.map((cell) => ({ fact: cell.fact, component, ...shown(lookup(cell.fact)) }))
}

/** One statement for a rule and the parts it speaks for, with everything needed to defend it. */
export function statementOf(
  conclusion: Conclusion,
  rule: Rule,
  heard: readonly Voice[],
  reasoning: Reasoning,
): Statement {
  const { decision } = conclusion.index
  const parts = heard.flatMap(({ part }) => part ?? [])
  return {
    code:
      rule.then.kind === 'say' ? rule.then.code : rule.then.kind === 'answer' ? rule.then.answer : rule.id,
    text: rule.text,
    strength: rule.strength,
    certainty: rule.certainty,
    rule: `${decision.id}/${rule.id}`,
    sources: rule.sources
      .filter((source) => source.says === 'supports')
      .map(({ work, place, known }) => ({ work, place, known })),
    because: rule.because,
    ...(rule.caution === null ? {} : { caution: rule.caution }),
    components: parts.map((part) => reasoning.facts.components[part]!.name),
    facts: heard.flatMap(({ part }) => usedFacts(rule, reasoning, part, decision.absent === 'protective')),
    precautionary: heard.every(({ precautionary }) => precautionary),
    figures: rule.figures,
    ...(rule.contested === null ? {} : { contested: rule.contested }),
    also: [],
  }
}

/** Everything a conclusion says, one entry a rule, in the order of its rules. */
export function spoken(conclusion: Conclusion, reasoning: Reasoning): readonly Spoken[] {
  const { rules } = conclusion.index.decision
  return [...voices(conclusion, reasoning)]
    .sort(([a], [b]) => a - b)
    .map(([number, heard]) => ({
      rule: rules[number]!,
      statement: statementOf(conclusion, rules[number]!, heard, reasoning),
    }))
}

/** The same for one part alone. */
export function spokenFor(conclusion: Conclusion, reasoning: Reasoning, part: number): readonly Spoken[] {
  const { rules } = conclusion.index.decision
  return [...voices(conclusion, reasoning)]
    .map(([number, heard]) => [number, heard.filter((voice) => voice.part === part)] as const)
    .filter(([, heard]) => heard.length > 0)
    .sort(([a], [b]) => a - b)
    .map(([number, heard]) => ({
      rule: rules[number]!,
      statement: statementOf(conclusion, rules[number]!, heard, reasoning),
    }))
}
