import { describe, expect, test } from 'vitest'
import type { Statement } from '../../lib/engine/plan.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { anyRecord } from '../arbitrary/record.ts'
import { assemblage } from '../demo/assemblage.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { everyStatement, ruleOf } from './statements.ts'
import { law, planned } from './plans.ts'

/** What is wrong with a statement as a person would defend it; empty where nothing is. */
function complaintsOf(statement: Statement): readonly string[] {
  const { rule, sources, strength, text, because, figures, contested } = statement
  const complaints = [
    ruleOf(statement) === undefined && 'rests on no rule of the knowledge',
    sources.length === 0 && 'has no source',
    sources.some(({ work }) => knowledge.works[work] === undefined) && 'names a work that is not there',
    figures.some((figure) => knowledge.figures[figure] === undefined) && 'names a figure that is not there',
    contested !== undefined &&
      knowledge.contested[contested] === undefined &&
      'names a contested matter that is not there',
    strength === 'must' && sources.every(({ known }) => known === 'memory') && 'is a must from memory alone',
    (text === '' || because === '') && 'says nothing, or not why',
  ]
  return complaints.flatMap((complaint) => (complaint ? [`${rule} ${complaint}`] : []))
}

const complaints = (record: ConditionRecord): readonly string[] =>
  everyStatement(planned(record)).flatMap(complaintsOf)

describe('every statement carries its rule and its sources', () => {
  test('over the whole of Tollgate Wharf', () => {
    const { records } = assemblage()
    expect(records.length).toBeGreaterThan(600)
    expect(records.flatMap(complaints)).toEqual([])
  })

  test('over ten thousand generated records', () => {
    law(anyRecord(), (record) => expect(complaints(record)).toEqual([]), { numRuns: 10_000 })
  })
})
