import type { Rule } from '../knowledge/knowledge.ts'
import type { Fact } from '../record/fact.ts'
import type { Decided } from './decide.ts'
import type { Statement, UsedFact } from './plan.ts'
import { lookupIn, speaks, type Conclusion, type Reasoning } from './reasoning.ts'
import { settled } from './settled.ts'

/** A rule that spoke, and its statement, made when it is first asked for. */
export interface Spoken {
  readonly rule: Rule
  /** `decision/rule`, as the plan traces it. */
  readonly id: string
  readonly code: string
  readonly statement: Statement
}

function shown(fact: Fact | undefined): Pick<UsedFact, 'said' | 'value'> {
  if (fact === undefined) return { said: 'absent', value: '' }
  if (fact.number !== undefined) return { said: fact.said, value: String(fact.number) }
  const values = fact.has.length > 0 ? fact.has : fact.may === 'any' ? [] : fact.may
  return { said: fact.said, value: values.length === 1 ? values[0]! : [...new Set(values)].join('; ') }
}

interface Voice {
  readonly part: number | null
  readonly precautionary: boolean
}

/** Which rules of a conclusion speak, and for which parts. Open rules speak in protective decisions alone. */
function voices(conclusion: Conclusion, reasoning: Reasoning): ReadonlyMap<number, readonly Voice[]> {
  const { decision } = conclusion.index
  const heard = new Map<number, Voice[]>()
  const hear = (rule: number, voice: Voice) => {
    const others = heard.get(rule)
    if (others) others.push(voice)
    else heard.set(rule, [voice])
  }
  const listen = ({ holding, open }: Decided, part: number | null) => {
    for (const rule of holding) hear(rule, { part, precautionary: false })
    if (decision.absent !== 'protective' || open.length === 0) return
    const lookup = lookupIn(reasoning, part, true)
    for (const rule of open) {
      if (speaks(decision, decision.rules[rule]!.when, lookup)) hear(rule, { part, precautionary: true })
    }
  }
  if (conclusion.find) listen(conclusion.find, null)
  else conclusion.components.forEach(listen)
  return heard
}

function usedFacts(rule: Rule, reasoning: Reasoning, part: number | null, protective: boolean): UsedFact[] {
  const lookup = lookupIn(reasoning, part, protective)
  const component = part === null ? null : reasoning.facts.components[part]!.name
  return rule.when.map((cell) => ({ fact: cell.fact, component, ...shown(lookup(cell.fact)) }))
}

type Standing = Omit<Statement, 'components' | 'facts' | 'precautionary' | 'also'>

/** What a rule says whatever the find: made once a rule. */
const standing = new WeakMap<Rule, Standing>()

function standingOf(rule: Rule, id: string, code: string): Standing {
  const known = standing.get(rule)
  if (known) return known
  const sources = rule.sources.filter((source) => source.says === 'supports')
  const fresh: Standing = {
    code,
    text: rule.text,
    strength: rule.strength,
    certainty: rule.certainty,
    rule: id,
    sources: sources.map(({ work, place, known: how }) => ({ work, place, known: how })),
    because: rule.because,
    ...(rule.caution === null ? {} : { caution: rule.caution }),
    figures: rule.figures,
    ...(rule.contested === null ? {} : { contested: rule.contested }),
  }
  standing.set(rule, fresh)
  return fresh
}

/** One statement for a rule and the parts it speaks for, with everything needed to defend it. */
function statementOf(
  { rule, id, code }: Omit<Spoken, 'statement'>,
  heard: readonly Voice[],
  reasoning: Reasoning,
  protective: boolean,
): Statement {
  const components: string[] = []
  const facts: UsedFact[] = []
  for (const { part } of heard) {
    if (part !== null) components.push(reasoning.facts.components[part]!.name)
    facts.push(...usedFacts(rule, reasoning, part, protective))
  }
  const precautionary = heard.every((voice) => voice.precautionary || !settled(rule, reasoning, voice.part))
  return { ...standingOf(rule, id, code), components, facts, precautionary, also: [] }
}

function codeOf({ then, id }: Rule): string {
  return then.kind === 'say' ? then.code : then.kind === 'answer' ? then.answer : id
}

function speak(rule: Rule, heard: readonly Voice[], conclusion: Conclusion, reasoning: Reasoning): Spoken {
  const { decision } = conclusion.index
  const spoken = { rule, id: `${decision.id}/${rule.id}`, code: codeOf(rule) }
  let made: Statement | null = null
  return {
    ...spoken,
    get statement() {
      made ??= statementOf(spoken, heard, reasoning, decision.absent === 'protective')
      return made
    },
  }
}

/** Everything a conclusion says, one entry a rule, in the order of its rules; for one part alone where `part` is given. */
export function spoken(conclusion: Conclusion, reasoning: Reasoning, part?: number): readonly Spoken[] {
  const each = conclusion.find ? [conclusion.find] : conclusion.components
  if (each.every(({ holding, open }) => holding.length === 0 && open.length === 0)) return []
  const { rules } = conclusion.index.decision
  const said: Spoken[] = []
  const heard = voices(conclusion, reasoning)
  for (const number of [...heard.keys()].sort((a, b) => a - b)) {
    const here =
      part === undefined ? heard.get(number)! : heard.get(number)!.filter((voice) => voice.part === part)
    if (here.length > 0) said.push(speak(rules[number]!, here, conclusion, reasoning))
  }
  return said
}
