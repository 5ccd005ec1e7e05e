import { observed } from '../evidence/group-seen.ts'
import { raisedBy, type Raised } from '../evidence/raised.ts'
import { weighedOf } from '../evidence/weigh.ts'
import type { IsoDate } from '../base/calendar.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { methodFacts, questionsRead } from '../knowledge/method-facts.ts'
import type { Facts, RecordFacts } from '../record/fact.ts'
import { factsOf } from '../record/facts.ts'
import type { ConditionRecord } from '../record/record.ts'

/** What was thought of one matter: each rival with its range, and what had been seen or measured by then. */
export interface Thought {
  readonly rivals: readonly {
    readonly interpretation: string
    readonly probability: number
    readonly range: readonly [low: number, high: number]
  }[]
  readonly observed: readonly { readonly group: string; readonly state: string }[]
}

/** Facts in which a method has its say: those the record keeps for it, and the answers to the questions it answers. */
function toldBy(method: string, { matter }: Raised): ReadonlySet<string> {
  const asked = matter.groups.flatMap((group) =>
    group.by === method ? questionsRead(group).map((question) => `looked.${question}`) : [],
  )
  return new Set([...(methodFacts[method] ?? []), ...asked])
}

const without = (facts: Facts, left: ReadonlySet<string>): Facts =>
  Object.fromEntries(Object.entries(facts).filter(([fact]) => !left.has(fact)))

const observedOf = ({ joint }: Raised): Thought['observed'] =>
  joint.groups.flatMap((seen) => {
    const [state, ...others] = seen.possible
    if (!observed(seen) || state === undefined || others.length > 0) return []
    return [{ group: seen.table.group.id, state: seen.table.states[state]!.id }]
  })

/**
 * What is thought of a matter of a find before a method has its say: what the method told already is left out, so that
 * nobody is praised for having known what the laboratory had written. Null where the record does not raise the matter.
 */
export function thoughtBefore(
  record: ConditionRecord,
  {
    component,
    matter,
    method,
  }: { readonly component: string; readonly matter: string; readonly method: string },
  knowledge: Knowledge,
  asOf: IsoDate,
): Thought | null {
  const find = (facts: RecordFacts) =>
    raisedBy(facts, knowledge).find((one) => one.matter.id === matter && one.component === component)
  const facts = factsOf(record, knowledge.vocabulary.textWords, asOf)
  const raised = find(facts)
  if (!raised) return null
  const left = toldBy(method, raised)
  const components = facts.components.map((one, part) =>
    part === raised.part ? { ...one, facts: without(one.facts, left) } : one,
  )
  // A result may be what raised it; then nothing was thought before it that could be held to account.
  const before = find({ ...facts, components }) ?? raised
  const { rivals } = weighedOf({ ...before, settled: null })
  return {
    rivals: rivals.map(({ id, probability, range }) => ({ interpretation: id, probability, range })),
    observed: observedOf(before),
  }
}
