import type { Decide } from '../analysis/examples.ts'
import { findings, located } from '../analysis/findings.ts'
import { decide } from '../engine/decide.ts'
import { indexRules } from '../engine/rule-index.ts'
import type { Compiled } from '../knowledge/compile/compile.ts'
import type { Flaw } from '../knowledge/flaw.ts'
import type { Example } from '../knowledge/knowledge.ts'
import { looks as taken, type Looks } from '../record/looks.ts'
import { couldNotTell, measured, stated, type Fact } from '../record/fact.ts'

/** Every flaw of the content: what compiling it met, and what the proofs and the examples find. */
export function checkKnowledge(compiled: Compiled, looks: Looks = taken): readonly Flaw[] {
  const found = located(findings(compiled, decideExample, looks), compiled.places)
  return [...compiled.flaws, ...found].toSorted(byPlace)
}

/** Decided on what the example gives alone: nothing else is taken to hold to be safe. */
const decideExample: Decide = (decision, given) => {
  const index = indexRules({ ...decision, absent: 'silent' })
  const { holding, taken } = decide(index, (fact) => factOf(given[fact]))
  return { holding: holding.map((rule) => decision.rules[rule]!.id), answer: taken }
}

function factOf(value: Example['given'][string] | undefined): Fact | undefined {
  if (value === undefined) return undefined
  if (value === 'unknown') return couldNotTell
  if (typeof value === 'number') return measured(value)
  return typeof value === 'string' ? stated(value) : stated(...value)
}

function byPlace(a: Flaw, b: Flaw): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1
  return a.line - b.line
}
