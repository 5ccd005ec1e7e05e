import { isDeepStrictEqual } from 'node:util'
import { describe, expect, test } from 'vitest'
import { anyRecord } from '../arbitrary/record.ts'
import { everyStatement, ruleOf, unfolded } from './statements.ts'
import { law, planned } from './plans.ts'

const loudness = ['stop', 'warn', 'note']

describe('the form of every plan', () => {
  test('stops come first, then warnings, then notes; neither stop nor warning is ever folded', () => {
    law(anyRecord(), (record) => {
      const { cautions, ...rest } = planned(record)
      const loud = cautions.map(({ level }) => loudness.indexOf(level))
      expect(loud).toEqual(loud.toSorted())
      const folded = [...cautions.flatMap(({ also }) => also.flatMap(unfolded))]
      expect(
        folded.filter((statement) => ruleOf(statement)?.level !== 'note').map(({ rule }) => rule),
      ).toEqual([])
      expect(rest.objections.flatMap(({ also }) => also)).toEqual([])
    })
  })

  test('no part is longer than a person reads', () => {
    law(anyRecord(), (record) => {
      const plan = planned(record)
      const loud = plan.cautions.filter(({ level }) => level !== 'note').length
      expect(plan.cautions.length).toBeLessThanOrEqual(Math.max(6, loud))
      expect(plan.handling.length).toBeLessThanOrEqual(10)
      expect(plan.packing.length).toBeLessThanOrEqual(9)
      expect(plan.requests.length).toBeLessThanOrEqual(5)
    })
  })

  test('what is folded is said once and nothing is said twice in one part', () => {
    law(anyRecord(), (record) => {
      const plan = planned(record)
      for (const part of [plan.handling, plan.packing, plan.cautions, plan.steps]) {
        const said = part.flatMap(unfolded).map(({ rule }) => rule)
        expect(said.filter((rule, at) => said.indexOf(rule) !== at)).toEqual([])
      }
    })
  })

  test('drying in the open stands before any dry box', () => {
    let met = 0
    law(anyRecord(), (record) => {
      const codes = planned(record).steps.map(({ code }) => code)
      if (!codes.includes('dry-box') || !codes.includes('air-dry-openly')) return
      met += 1
      expect(codes.indexOf('air-dry-openly')).toBeLessThan(codes.indexOf('dry-box'))
    })
    expect(met).toBeGreaterThan(10)
  })

  test('steps are numbered as they stand', () => {
    law(anyRecord(), (record) => {
      const { steps } = planned(record)
      expect(steps.map(({ order }) => order)).toEqual(steps.map((_, at) => at + 1))
    })
  })

  test('the same record gives the same plan, also after a trip through JSON', () => {
    law(anyRecord(), (record) => {
      const plan = planned(record)
      const again = planned(JSON.parse(JSON.stringify(record)))
      expect(isDeepStrictEqual(again, plan)).toBe(true)
      expect(isDeepStrictEqual(JSON.parse(JSON.stringify(plan)), plan)).toBe(true)
    })
  })

  test('a plan speaks of the parts of its own find and of no others', () => {
    law(anyRecord(), (record) => {
      const names = new Set(record.components.map(({ component }) => component))
      const spoken = new Set(everyStatement(planned(record)).flatMap(({ components }) => components))
      expect([...spoken].filter((name) => !names.has(name))).toEqual([])
    })
  })
})
