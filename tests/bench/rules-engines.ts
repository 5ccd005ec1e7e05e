import { ZenEngine } from '@gorules/zen-engine'
import { Engine, type TopLevelCondition } from 'json-rules-engine'
import { RuleEngine } from 'node-rules'
import { Rools, Rule as RoolsRule } from 'rools'
import { match } from '../../lib/engine/match.ts'
import { indexRules, rulesIn } from '../../lib/engine/rule-index.ts'
import { measured, stated, type Fact } from '../../lib/record/fact.ts'
import { decisionOf, type BenchRule, type Condition, type Row } from './rules-workload.ts'

/** Each engine answers one row with the numbers of the rules that fire, ascending. */
export interface Contender {
  readonly name: string
  /** How many of the rows it can be given without taking the afternoon. */
  readonly rows: number
  readonly fire: (row: Row) => readonly number[] | Promise<readonly number[]>
}

const code = (condition: Condition): string => {
  const field = `r.${condition.field}`
  if (condition.kind === 'is') return `${field} === ${condition.value}`
  if (condition.kind === 'number') {
    return [
      condition.from === undefined ? '' : `${field} >= ${condition.from}`,
      condition.below === undefined ? '' : `${field} < ${condition.below}`,
    ]
      .filter(Boolean)
      .join(' && ')
  }
  const chain = condition.values.map((value) => `${field} === ${JSON.stringify(value)}`).join(' || ')
  return condition.kind === 'in' ? `(${chain})` : `!(${chain})`
}

/** What a person would write by hand: one if a rule. */
function handWritten(rules: readonly BenchRule[]): Contender['fire'] {
  const body = rules
    .map((rule, at) => `if (${rule.conditions.map(code).join(' && ')}) f.push(${at})`)
    .join('\n')
  return new Function('r', `const f = []\n${body}\nreturn f`) as (row: Row) => number[]
}

/** Facts as our reader makes them: yes/no and words interned, numbers fresh. */
function factReader(): (row: Row) => ReadonlyMap<string, Fact> | ((fact: string) => Fact) {
  const words = new Map<unknown, Fact>()
  const factOf = (value: string | boolean | number): Fact => {
    if (typeof value === 'number') return measured(value)
    const known = words.get(value)
    if (known) return known
    const fresh = stated(String(value))
    words.set(value, fresh)
    return fresh
  }
  return (row) => (fact: string) => factOf(row[fact]!)
}

function ours(rules: readonly BenchRule[]): Contender['fire'] {
  const index = indexRules(decisionOf(rules))
  const read = factReader()
  return (row) => rulesIn(match(index, read(row) as (fact: string) => Fact).certain)
}

/** The same with the trace that a plan carries: for each rule that fired, which condition met which value. */
function oursTraced(rules: readonly BenchRule[]): Contender['fire'] {
  const decision = decisionOf(rules)
  const index = indexRules(decision)
  const read = factReader()
  const last: unknown[] = []
  return (row) => {
    const fired = rulesIn(match(index, read(row) as (fact: string) => Fact).certain)
    last.length = 0
    for (const rule of fired)
      for (const cell of decision.rules[rule]!.when) last.push({ rule, cell, value: row[cell.fact] })
    return fired
  }
}

function jsonRulesEngine(rules: readonly BenchRule[]): Contender['fire'] {
  const engine = new Engine()
  const condition = (one: Condition): { fact: string; operator: string; value: unknown }[] => {
    if (one.kind === 'is') return [{ fact: one.field, operator: 'equal', value: one.value }]
    if (one.kind !== 'number') return [{ fact: one.field, operator: one.kind, value: one.values }]
    return [
      ...(one.from === undefined
        ? []
        : [{ fact: one.field, operator: 'greaterThanInclusive', value: one.from }]),
      ...(one.below === undefined ? [] : [{ fact: one.field, operator: 'lessThan', value: one.below }]),
    ]
  }
  rules.forEach((rule, at) =>
    engine.addRule({
      conditions: { all: rule.conditions.flatMap(condition) } as TopLevelCondition,
      event: { type: String(at) },
    }),
  )
  return async (row) =>
    (await engine.run(row as Record<string, unknown>)).events
      .map(({ type }) => Number(type))
      .sort((a, b) => a - b)
}

const test = (condition: Condition) => new Function('r', `return ${code(condition)}`) as (row: Row) => boolean

async function rools(rules: readonly BenchRule[]): Promise<Contender['fire']> {
  const engine = new Rools({ logging: { error: false, debug: false } })
  // It merges premises of equal source text; each premise here carries its own.
  const made = rules.map(
    (rule, at) =>
      new RoolsRule({
        name: rule.id,
        when: rule.conditions.map(test),
        then: (facts: { fired: number[] }) => void facts.fired.push(at),
      }),
  )
  await engine.register(made)
  return async (row) => {
    const facts = { ...row, fired: [] as number[] }
    await engine.evaluate(facts)
    return facts.fired.sort((a, b) => a - b)
  }
}

interface Flow {
  when: (met: boolean) => void
  next: () => void
}

function nodeRules(rules: readonly BenchRule[]): Contender['fire'] {
  const made = rules.map((rule, at) => {
    const tests = rule.conditions.map(test)
    return {
      condition: (flow: Flow, fact: Row) => flow.when(tests.every((one) => one(fact))),
      consequence: (flow: Flow, fact: { fired: number[] }) => {
        fact.fired.push(at)
        flow.next()
      },
    }
  })
  const engine = new RuleEngine(made as never, { ignoreFactChanges: true })
  return (row) =>
    new Promise((done) =>
      engine.execute({ ...row, fired: [] }, (result) =>
        done((result['fired'] as number[]).sort((a, b) => a - b)),
      ),
    )
}

function zen(rules: readonly BenchRule[]): Contender['fire'] {
  const fields = [...new Set(rules.flatMap((rule) => rule.conditions.map(({ field }) => field)))]
  const cell = (condition: Condition) => {
    if (condition.kind === 'is') return String(condition.value)
    if (condition.kind !== 'number') {
      const list = condition.values.map((value) => JSON.stringify(value)).join(', ')
      return condition.kind === 'in' ? list : `$ not in [${list}]`
    }
    return [
      condition.from === undefined ? '' : `>= ${condition.from}`,
      condition.below === undefined ? '' : `< ${condition.below}`,
    ]
      .filter(Boolean)
      .join(' and ')
  }
  const content = {
    nodes: [
      { id: 'in', type: 'inputNode', name: 'in', position: { x: 0, y: 0 } },
      {
        id: 'table',
        type: 'decisionTableNode',
        name: 'table',
        position: { x: 0, y: 0 },
        content: {
          hitPolicy: 'collect',
          inputs: fields.map((field) => ({ id: field, name: field, field })),
          outputs: [{ id: 'rule', name: 'rule', field: 'rule' }],
          rules: rules.map((rule, at) => ({
            _id: rule.id,
            rule: String(at),
            ...Object.fromEntries(fields.map((field) => [field, ''])),
            ...Object.fromEntries(rule.conditions.map((condition) => [condition.field, cell(condition)])),
          })),
        },
      },
      { id: 'out', type: 'outputNode', name: 'out', position: { x: 0, y: 0 } },
    ],
    edges: [
      { id: 'a', type: 'edge', sourceId: 'in', targetId: 'table' },
      { id: 'b', type: 'edge', sourceId: 'table', targetId: 'out' },
    ],
  }
  const decision = new ZenEngine().createDecision(Buffer.from(JSON.stringify(content)))
  return async (row) =>
    ((await decision.evaluate(row)).result as { rule: number }[])
      .map(({ rule }) => Number(rule))
      .sort((a, b) => a - b)
}

export async function contenders(rules: readonly BenchRule[]): Promise<readonly Contender[]> {
  return [
    { name: 'hand-written if', rows: 50_000, fire: handWritten(rules) },
    { name: 'Quietmetal', rows: 50_000, fire: ours(rules) },
    { name: 'Quietmetal with trace', rows: 50_000, fire: oursTraced(rules) },
    { name: 'node-rules', rows: 4_000, fire: nodeRules(rules) },
    { name: 'rools', rows: 1_500, fire: await rools(rules) },
    { name: 'zen-engine (data-driven)', rows: 1_500, fire: zen(rules) },
    { name: 'json-rules-engine (data-driven)', rows: 300, fire: jsonRulesEngine(rules) },
  ]
}
