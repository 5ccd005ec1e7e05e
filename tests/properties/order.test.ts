import { isDeepStrictEqual } from 'node:util'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Plan, Statement } from '../../lib/engine/plan.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { anyRecord } from '../arbitrary/record.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { law, planned } from './plans.ts'

/** The same list, drawn out of a hat. */
function shuffled<Item>(list: readonly Item[], lot: () => number): Item[] {
  return list
    .map((item) => ({ item, lot: lot() }))
    .toSorted((a, b) => a.lot - b.lot)
    .map(({ item }) => item)
}

const lots = (seed: number) => {
  let state = seed >>> 0
  // A linear congruential generator: good enough to stir with.
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0)
}

const stirred: readonly Knowledge[] = Array.from({ length: 20 }, (_, seed) => {
  const lot = lots(seed + 1)
  const decisions = knowledge.decisions.map((decision) => ({
    ...decision,
    rules: shuffled(decision.rules, lot),
  }))
  return { ...knowledge, decisions }
})

const byRule = (a: Statement, b: Statement) => (a.rule < b.rule ? -1 : 1)

/** A plan with the lists sorted whose order means nothing: reasons side by side, and what of the record they echo. */
function sorted(plan: Plan): Plan {
  const even = <Line extends Statement>(line: Line): Line => ({
    ...line,
    components: line.components.toSorted(),
    facts: line.facts
      .map((fact) => ({ ...fact, value: fact.value.split('; ').toSorted().join('; ') }))
      .toSorted((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1)),
    also: line.also.map(even),
  })
  const reasons = (lines: readonly Statement[]) => lines.map(even).toSorted(byRule)
  const { storage } = plan
  return {
    ...plan,
    urgencyBasis: reasons(plan.urgencyBasis),
    storage: {
      ...storage,
      basis: reasons(storage.basis),
      air: storage.air.toSorted(),
      act: storage.act.map((act) => ({ ...act, says: even(act.says) })),
      interim: storage.interim && { ...storage.interim, says: even(storage.interim.says) },
      conflict: storage.conflict && {
        ...storage.conflict,
        between: storage.conflict.between.toSorted(),
        waysOut: reasons(storage.conflict.waysOut),
      },
      components: storage.components
        .map((part) => ({ ...part, basis: reasons(part.basis) }))
        .toSorted((a, b) => (a.component < b.component ? -1 : 1)),
    },
    inspection: { ...plan.inspection, basis: reasons(plan.inspection.basis) },
    steps: plan.steps.map(even),
    handling: plan.handling.map(even),
    packing: plan.packing.map(even),
    cautions: plan.cautions.map(even),
    objections: plan.objections.map(even),
    requests: plan.requests.map((request) => ({
      ...request,
      components: request.components.toSorted(),
      basis: request.basis.map(even),
    })),
    referrals: plan.referrals.map(even),
    selection: plan.selection.map(even),
  }
}

const lists = [
  'burial',
  'packed_in',
  'done_already',
  'treatments',
  'proposed',
  'tests',
  'hazards_noticed',
  'needed_for',
]
const partLists = ['seen', 'evidence']

function stirredLists<Holder extends object>(
  holder: Holder,
  names: readonly string[],
  lot: () => number,
): Holder {
  const changed = Object.entries(holder).map(([name, value]) => [
    name,
    names.includes(name) && Array.isArray(value) ? shuffled(value, lot) : value,
  ])
  return Object.fromEntries(changed) as Holder
}

function stirredRecord(record: ConditionRecord, seed: number): ConditionRecord {
  const lot = lots(seed)
  const components = record.components.map((component) => stirredLists(component, partLists, lot))
  return { ...stirredLists(record, lists, lot), components: shuffled(components, lot) }
}

function same(a: Plan, b: Plan): void {
  const [left, right] = [sorted(a), sorted(b)]
  if (!isDeepStrictEqual(left, right)) expect(left).toEqual(right)
}

describe('order means nothing', () => {
  test('of the rules of every decision', () => {
    law(fc.tuple(anyRecord(), fc.nat({ max: stirred.length - 1 })), ([record, which]) => {
      same(planned(record, stirred[which]), planned(record))
    })
  })

  test('of what a record lists, and of its parts', () => {
    law(fc.tuple(anyRecord(), fc.nat()), ([record, seed]) => {
      same(planned(stirredRecord(record, seed)), planned(record))
    })
  })
})
