import { isDeepStrictEqual } from 'node:util'
import { describe, expect, test } from 'vitest'
import type { Plan } from '../../lib/engine/plan.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { anyRecord } from '../arbitrary/record.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { everyStatement, ruleOf, stopsOf, unfolded } from './statements.ts'
import { law, planned } from './plans.ts'

const loudness = ['stop', 'warn', 'note']

function stopsFirst({ cautions }: Plan): void {
  const loud = cautions.map(({ level }) => loudness.indexOf(level))
  expect(loud).toEqual(loud.toSorted())
}

function nothingLoudIsFolded(plan: Plan): void {
  const folded = plan.cautions.flatMap(({ also }) => also.flatMap(unfolded))
  expect(folded.filter((statement) => ruleOf(statement)?.level !== 'note').map(({ rule }) => rule)).toEqual(
    [],
  )
  expect(plan.objections.flatMap(({ also }) => also)).toEqual([])
}

function nothingIsLongerThanAPersonReads(plan: Plan): void {
  const loud = plan.cautions.filter(({ level }) => level !== 'note').length
  expect(plan.cautions.length).toBeLessThanOrEqual(Math.max(6, loud))
  expect(plan.handling.length).toBeLessThanOrEqual(10)
  expect(plan.packing.length).toBeLessThanOrEqual(9)
  expect(plan.requests.length).toBeLessThanOrEqual(5)
}

function nothingIsSaidTwice(plan: Plan): void {
  for (const part of [plan.handling, plan.packing, plan.cautions, plan.steps]) {
    const said = part.flatMap(unfolded).map(({ rule }) => rule)
    expect(said.filter((rule, at) => said.indexOf(rule) !== at)).toEqual([])
  }
}

function stepsAreNumbered({ steps }: Plan): void {
  expect(steps.map(({ order }) => order)).toEqual(steps.map((_, at) => at + 1))
}

function onlyItsOwnPartsAreNamed(plan: Plan, record: ConditionRecord): void {
  const names = new Set(record.components.map(({ component }) => component))
  const spoken = new Set(everyStatement(plan).flatMap(({ components }) => components))
  expect([...spoken].filter((name) => !names.has(name))).toEqual([])
}

function workStopsWhereThereIsAStop(plan: Plan): void {
  expect(plan.urgency === 'now').toBe(stopsOf(plan).size > 0)
}

function requestsNameMethodAndPerson({ requests }: Plan): void {
  for (const { method, who, question, basis } of requests) {
    expect(knowledge.methods[method]).toBeDefined()
    expect([who, question]).not.toContain('')
    expect(basis.length).toBeGreaterThan(0)
  }
}

describe('the form of every plan', () => {
  test('stops come first and are never folded, work stops for them alone, no part is too long, nothing is said twice', () => {
    law(anyRecord(), (record) => {
      const plan = planned(record)
      stopsFirst(plan)
      nothingLoudIsFolded(plan)
      nothingIsLongerThanAPersonReads(plan)
      nothingIsSaidTwice(plan)
      stepsAreNumbered(plan)
      onlyItsOwnPartsAreNamed(plan, record)
      workStopsWhereThereIsAStop(plan)
      requestsNameMethodAndPerson(plan)
    })
  })

  test('drying in the open stands before any dry box', () => {
    let met = 0
    law(anyRecord(), (record) => {
      const codes = planned({ ...record, state_now: 'damp' }).steps.map(({ code }) => code)
      if (!codes.includes('dry-box')) return
      met += 1
      expect(codes).toContain('air-dry-openly')
      expect(codes.indexOf('air-dry-openly')).toBeLessThan(codes.indexOf('dry-box'))
    })
    expect(met).toBeGreaterThan(50)
  })

  test('the same record gives the same plan, also after a trip through JSON', () => {
    law(anyRecord(), (record) => {
      const plan = planned(record)
      const again = planned(JSON.parse(JSON.stringify(record)) as ConditionRecord)
      expect(isDeepStrictEqual(again, plan)).toBe(true)
      expect(isDeepStrictEqual(JSON.parse(JSON.stringify(plan)), plan)).toBe(true)
    })
  })
})
