import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { conflicts } from '../../lib/analysis/conflicts.ts'
import { gaps } from '../../lib/analysis/gaps.ts'
import { silentRules } from '../../lib/analysis/silent-rules.ts'
import { decide } from '../../lib/engine/decide.ts'
import { indexRules } from '../../lib/engine/rule-index.ts'
import type { Cell, Decision, Knowledge, Rule } from '../../lib/knowledge/knowledge.ts'
import { couldNotTell, measured, stated, type Fact } from '../../lib/record/fact.ts'
import * as ids from '../../lib/record/ids.ts'
import { decision, rule } from '../arbitrary/decision.ts'

/** The proofs against a count of every world there is, each decided by the engine itself. */
const thresholds = [10, 20]
const numbers = [0, 10, 11, 20, 21]

const values = (fact: string, list: readonly string[]) =>
  fc
    .tuple(fc.subarray([...list, 'unknown'], { minLength: 1 }), fc.boolean())
    .map(([named, any]): Cell => (any ? { fact, any: named } : { fact, none: named }))

const interval = fc
  .constantFrom(
    { from: 10 },
    { above: 10 },
    { to: 20 },
    { below: 20 },
    { from: 10, to: 20 },
    { above: 10, below: 20 },
    { below: 10 },
  )
  .map((ends): Cell => ({
    fact: 'days_since_coating',
    interval: { ...ends, figures: thresholds.map(String) },
  }))

const cells = fc
  .tuple(
    fc.option(values('core', ids.core)),
    fc.option(values('radiograph', ids.radiograph.slice(0, 3))),
    fc.option(interval),
  )
  .map((all) => all.filter((cell) => cell !== null))

const anyRules = fc
  .array(
    fc.tuple(cells, fc.constantFrom('first', 'second', 'third'), fc.array(fc.nat(5), { maxLength: 2 })),
    { minLength: 1, maxLength: 6 },
  )
  .map((written) =>
    written.map(([when, answer, over], index): Rule =>
      rule(`r${index}`, when, {
        then: { kind: 'answer', answer },
        overrides: over
          .filter((other) => other !== index && other < written.length)
          .map((other) => `r${other}`),
      }),
    ),
  )

const facts = ['core', 'radiograph', 'days_since_coating']
const subsets = (list: readonly string[]): string[][] =>
  list
    .reduce<string[][]>((all, value) => [...all, ...all.map((one) => [...one, value])], [[]])
    .filter((one) => one.length > 0)

const told: Readonly<Record<string, Fact>>[] = ids.core.flatMap((core) =>
  subsets(ids.radiograph).flatMap((radiograph) =>
    numbers.map((number) => ({
      core: stated(core),
      radiograph: stated(...radiograph),
      days_since_coating: measured(number),
    })),
  ),
)
const all = [...ids.core.map((core) => stated(core)), couldNotTell].flatMap((core) =>
  [...subsets(ids.radiograph).map((list) => stated(...list)), couldNotTell].flatMap((radiograph) =>
    [...numbers.map(measured), couldNotTell].map((days): Readonly<Record<string, Fact>> => ({
      core,
      radiograph,
      days_since_coating: days,
    })),
  ),
)

const baseOf = (one: Decision) => ({
  knowledge: { decisions: [one] } as unknown as Knowledge,
  used: { works: new Set<string>(), figures: new Set<string>() },
})

const uniqueOf = (rules: readonly Rule[]): Decision =>
  decision(rules, {
    id: 'invented',
    policy: 'unique',
    facts,
    answers: ['first', 'second', 'third'],
    absent: 'silent',
  })

const runs = { numRuns: 300 }

test('there is a gap exactly where some told world has no rule', () => {
  fc.assert(
    fc.property(anyRules, (rules) => {
      // Whether a rule is overridden has no say in whether there is one that holds.
      const plain = uniqueOf(rules.map((one) => ({ ...one, overrides: [] })))
      const index = indexRules(plain)
      const open = told.some((world) => decide(index, (fact) => world[fact]).holding.length === 0)
      expect(gaps(baseOf(plain)).length > 0).toBe(open)
    }),
    runs,
  )
})

test('there is a conflict exactly where two rules speak and differ', () => {
  fc.assert(
    fc.property(anyRules, (rules) => {
      const unique = uniqueOf(rules)
      const index = indexRules(unique)
      const pairs = new Set<string>()
      for (const world of all) {
        const { holding } = decide(index, (fact) => world[fact])
        for (const a of holding)
          for (const b of holding)
            if (a < b && index.rank[a] !== index.rank[b]) pairs.add(`invented/r${a} invented/r${b}`)
      }
      const found = conflicts(baseOf(unique)).flatMap((finding) =>
        finding.code === 'conflict' ? [finding.about.rules.join(' ')] : [],
      )
      expect(found.toSorted()).toEqual([...pairs].toSorted())
    }),
    runs,
  )
})

test('a rule is silent exactly where no world lets it speak', () => {
  fc.assert(
    fc.property(anyRules, (rules) => {
      const unique = uniqueOf(rules)
      const index = indexRules(unique)
      const heard = new Set(all.flatMap((world) => decide(index, (fact) => world[fact]).holding))
      const silent = rules.flatMap((one, number) => (heard.has(number) ? [] : [`rule invented/${one.id}`]))
      expect(
        silentRules(baseOf(unique))
          .map(({ at }) => at)
          .toSorted(),
      ).toEqual(silent.toSorted())
    }),
    runs,
  )
})
