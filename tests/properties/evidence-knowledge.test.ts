import { describe, expect, test } from 'vitest'
import { askOf } from '../evidence/ask-of.ts'
import { gainBits, showings } from '../../lib/evidence/gain.ts'
import { probabilities, withState, type Joint } from '../../lib/evidence/joint.ts'
import { standOf } from '../../lib/evidence/meanings.ts'
import { raisedBy, type Raised } from '../../lib/evidence/raised.ts'
import { requestsOf } from '../../lib/evidence/requests.ts'
import { factsShowing } from '../evidence/facts-showing.ts'
import { weighedOf } from '../../lib/evidence/weigh.ts'
import type { Matter } from '../../lib/knowledge/evidence.ts'
import { stated, type Fact, type RecordFacts } from '../../lib/record/fact.ts'
import { chance } from '../demo/chance.ts'
import { knowledge } from '../knowledge-at-hand.ts'

/** The laws of evidence over every matter and every group of the project's own evidence base. */
const matters = Object.values(knowledge.matters)

/** As little as raises the matter: its first observation, and what its conditions ask for. */
function raising(matter: Matter, more: Readonly<Record<string, Fact>> = {}): RecordFacts {
  const [first] = matter.about
  const facts: Record<string, Fact> = { [first!.field]: stated(first!.value) }
  for (const cell of matter.where) if ('any' in cell) facts[cell.fact] ??= stated(cell.any[0]!)
  return { find: {}, components: [{ name: 'body', facts: { ...facts, ...more } }] }
}

const raisedOf = (matter: Matter, facts: RecordFacts): Raised =>
  raisedBy(facts, knowledge).find((one) => one.matter.id === matter.id)!
const probableIn = ({ weights, tables }: Joint) => probabilities(weights, tables.rivals.length)
const entropyBits = (shares: Iterable<number>) =>
  [...shares].reduce((sum, share) => (share > 0 ? sum - share * Math.log2(share) : sum), 0)

test('there is an evidence base, and every matter is raised by what it is about', () => {
  expect(matters.length).toBeGreaterThan(40)
  for (const matter of matters) {
    for (const { field, value } of matter.about) {
      const facts = raising({ ...matter, about: [{ field, value }] })
      expect(raisedOf(matter, facts), `${matter.id} by ${value}`).toBeDefined()
    }
  }
})

describe.each(matters.map((matter) => [matter.id, matter] as const))('%s', (_, matter) => {
  const raised = raisedOf(matter, raising(matter))
  const { next } = chance(matter.id.length)
  /** Nothing looked at, and two records in which some groups at random show something. */
  const joints = [
    raised.joint,
    ...[1, 2].map(() =>
      matter.groups.reduce(
        (joint, group, at) =>
          next() < 0.3 ? withState(joint, at, Math.floor(next() * (group.states.length + 1))) : joint,
        raised.joint,
      ),
    ),
  ]

  test('sums to its share of what was seen, each probability within its range', () => {
    for (const joint of joints) {
      const { rivals } = weighedOf({ ...raised, joint })
      expect(rivals.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(raised.share, 12)
      for (const { probability, range } of rivals) {
        expect(range[0]).toBeLessThanOrEqual(probability)
        expect(range[1]).toBeGreaterThanOrEqual(probability)
      }
    }
  })

  test('is now the average of what it will be, and gains by no look less than nothing', () => {
    for (const joint of joints) {
      const before = probableIn(joint)
      const open = entropyBits(before)
      matter.groups.forEach((_, group) => {
        const all = showings(joint, group)
        before.forEach((probability, rival) => {
          const average = all.reduce((sum, { chance, after }) => sum + chance * probableIn(after)[rival]!, 0)
          expect(Math.abs(average - probability)).toBeLessThan(1e-9)
        })
        const bits = gainBits(joint, [group])
        const after = all.reduce((sum, { chance, after }) => sum + chance * entropyBits(probableIn(after)), 0)
        expect(bits).toBeGreaterThanOrEqual(0)
        expect(bits).toBeCloseTo(Math.max(0, open - after), 9)
      })
    }
  })

  test('does not hang on the order of what is looked at', () => {
    const seen = matter.groups.map((group, at) => [at, at % (group.states.length + 1)] as const)
    const learn = (order: typeof seen) =>
      probableIn(order.reduce((joint, [group, state]) => withState(joint, group, state), raised.joint))
    const there = learn(seen)
    learn(seen.toReversed()).forEach((probability, rival) =>
      expect(probability).toBeCloseTo(there[rival]!, 12),
    )
  })

  test('is by its answers, as a record states them, what it is by its groups', () => {
    matter.groups.forEach((group, at) => {
      if (group.question === null) return
      const { table } = raised.joint.groups[at]!
      table.states.forEach((_, state) => {
        const facts = factsShowing(table, state, raised.lookup)!
        const stated = raisedOf(matter, raising(matter, facts))
        expect(stated.joint.groups[at]!.possible, `${group.id} ${state}`).toEqual([state])
      })
    })
  })

  test('once certain asks for nothing', () => {
    const best = matter.groups.reduce((joint, _, group) => {
      const all = showings(joint, group).map(({ after }) => after)
      return all.sort((a, b) => Math.max(...probableIn(b)) - Math.max(...probableIn(a)))[0]!
    }, raised.joint)
    const base = { ...knowledge, matters: { [matter.id]: matter } }
    const facts = matter.groups.reduce(
      (known, _, at) => ({
        ...known,
        ...factsShowing(raised.joint.groups[at]!.table, best.groups[at]!.possible[0]!, raised.lookup),
      }),
      {},
    )
    const found = raising(matter, facts)
    const sure = Math.max(...probableIn(raisedOf(matter, found).joint)) >= 0.95
    const asked = [...askOf(found, base), ...requestsOf(found, base)]
    if (sure) expect(asked).toEqual([])
    for (const { gainBits } of asked) expect(gainBits).toBeGreaterThanOrEqual(0.05)
  })
})

/** Of what may be corroding: results that name nothing, or clear it. */
const clearing: readonly (readonly [by: string, states: readonly string[]])[] = [
  ['xrd', ['rest']],
  ['chloride-test', ['negative', 'rest']],
]
const active = matters.filter(({ rivals }) => rivals.some(({ id }) => id === 'active-chloride-corrosion'))

test('no diffraction that finds nothing and no clear silver nitrate test ever clears a find', () => {
  const tried: string[] = []
  for (const matter of active) {
    const { joint } = raisedOf(matter, raising(matter))
    const rival = matter.rivals.findIndex(({ id }) => id === 'active-chloride-corrosion')
    const before = probableIn(joint)[rival]!
    joint.groups.forEach(({ table }, group) => {
      const [, clear] = clearing.find(([by]) => by === table.group.by) ?? []
      for (const { state, after } of clear === undefined ? [] : showings(joint, group)) {
        const { id } = table.states[state]!
        if (!clear!.includes(id)) continue
        const named = `${matter.id} ${table.group.id} ${id}`
        tried.push(named)
        // It may lower it, since it is a result; it keeps a third at least, and never settles another.
        expect(probableIn(after)[rival]!, named).toBeGreaterThan(before / 3)
        expect(standOf(after).standing === 'settled' && probableIn(after)[rival]! < 0.5, named).toBe(false)
      }
    })
  }
  expect(tried.length).toBeGreaterThan(15)
})
