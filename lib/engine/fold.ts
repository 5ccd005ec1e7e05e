import type { Certainty, Rule, Strength } from '../knowledge/knowledge.ts'
import type { Statement } from './plan.ts'
import type { Spoken } from './statement.ts'

/** A plan that says everything is read by nobody: what applies is merged by code, ranked, and the rest folded under it. */
const strengths: Readonly<Record<Strength, number>> = { must: 0, should: 1, consider: 2 }
const certainties: Readonly<Record<Certainty, number>> = {
  established: 0,
  supported: 1,
  contested: 2,
  opinion: 3,
}

type Weighed = Pick<Spoken, 'rule' | 'id'>

/** Strongest first; among equals the layout order of the rule, then its id, so that nothing depends on file order. */
export function byWeight(a: Weighed, b: Weighed): number {
  return (
    strengths[a.rule.strength] - strengths[b.rule.strength] ||
    a.rule.order - b.rule.order ||
    certainties[a.rule.certainty] - certainties[b.rule.certainty] ||
    (a.id < b.id ? -1 : 1)
  )
}

export interface Folded {
  readonly rule: Rule
  readonly id: string
  readonly statement: Statement
}

/** One line a code: the weightiest speaks, the others stand under it. */
export function mergeByCode(said: readonly Spoken[]): readonly Folded[] {
  const lines = new Map<string, Folded>()
  for (const { rule, id, statement } of said.toSorted(byWeight)) {
    const line = lines.get(statement.code)
    if (!line) lines.set(statement.code, { rule, id, statement })
    else {
      const components = [...new Set([...line.statement.components, ...statement.components])]
      const also = [...line.statement.also, statement]
      lines.set(statement.code, { ...line, statement: { ...line.statement, components, also } })
    }
  }
  return [...lines.values()]
}

const sharedFacts = (a: Statement, b: Statement) =>
  a.facts.filter(({ fact, value }) => b.facts.some((other) => other.fact === fact && other.value === value))
    .length

/** Keeps `most` lines; each further one goes under the line that rests on most of the same facts. */
export function foldBeyond(lines: readonly Statement[], most: number): readonly Statement[] {
  const kept = lines.slice(0, Math.max(most, 0))
  if (kept.length === 0) return lines
  const under = kept.map((line) => [...line.also])
  for (const line of lines.slice(most)) {
    const overlap = kept.map((candidate) => sharedFacts(candidate, line))
    under[overlap.indexOf(Math.max(...overlap))]!.push({ ...line, also: [] }, ...line.also)
  }
  return kept.map((line, at) => ({ ...line, also: under[at]! }))
}
