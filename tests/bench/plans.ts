import path from 'node:path'
import { isoDate } from '../../lib/base/calendar.ts'
import { assess, assessFacts } from '../../lib/engine/assess.ts'
import { reason } from '../../lib/engine/reasoning.ts'
import { compile } from '../../lib/knowledge/compile/compile.ts'
import { readContent } from '../../lib/knowledge/compile/read.ts'
import { factsOf } from '../../lib/record/facts.ts'
import { assemblage } from '../demo/assemblage.ts'

/** Whole plans with the project's own knowledge over the invented assemblage, on one core. */
const asOf = isoDate('2026-11-25')!
const rounds = 7

export interface PlanFigures {
  readonly rules: number
  readonly records: number
  readonly factsPerSecond: number
  readonly decidedPerSecond: number
  readonly plansPerSecond: number
  readonly lookNextMilliseconds: { readonly median: number; readonly p95: number }
}

const at = (values: readonly number[], share: number) =>
  values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))]!

export function planFigures(): PlanFigures {
  const { knowledge } = compile(readContent(path.resolve(import.meta.dirname, '../..')))
  const { records } = assemblage()
  const facts = records.map((record) => factsOf(record, knowledge.vocabulary.textWords, asOf))
  const perSecond = (work: () => void) => {
    const seen = Array.from({ length: rounds + 2 }, () => {
      const start = performance.now()
      work()
      return records.length / ((performance.now() - start) / 1000)
    })
    // The first two rounds warm up.
    return at(seen.slice(2), 0.5)
  }
  const asked = facts.map((fact, number) => {
    const plain = performance.now()
    assessFacts(records[number]!.find_number, fact, knowledge, { asOf, questions: false })
    const asking = performance.now()
    assessFacts(records[number]!.find_number, fact, knowledge, { asOf })
    return performance.now() - asking - (asking - plain)
  })
  return {
    rules: knowledge.decisions.reduce((sum, { rules }) => sum + rules.length, 0),
    records: records.length,
    factsPerSecond: perSecond(() =>
      records.forEach((record) => factsOf(record, knowledge.vocabulary.textWords, asOf)),
    ),
    decidedPerSecond: perSecond(() => facts.forEach((fact) => reason(fact, knowledge))),
    plansPerSecond: perSecond(() =>
      records.forEach((record) => assess(record, knowledge, { asOf, questions: false })),
    ),
    lookNextMilliseconds: { median: at(asked, 0.5), p95: at(asked, 0.95) },
  }
}
