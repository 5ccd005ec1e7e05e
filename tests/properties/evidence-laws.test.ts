import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { askOf } from '../evidence/ask-of.ts'
import { gainBits, showings } from '../../lib/evidence/gain.ts'
import { measuredIn } from '../../lib/evidence/group-seen.ts'
import { probabilities, withState, type Joint } from '../../lib/evidence/joint.ts'
import { raisedBy } from '../../lib/evidence/raised.ts'
import { requestsOf } from '../../lib/evidence/requests.ts'
import { weigh } from '../../lib/evidence/weigh.ts'
import type { Matter } from '../../lib/knowledge/evidence.ts'
import { couldNotTell, type RecordFacts } from '../../lib/record/fact.ts'
import { answered, answersArbitrary, matterArbitrary, recordedArbitrary } from '../evidence/drawn-matter.ts'
import { baseOf, facts } from '../evidence/small-base.ts'

const runs = { numRuns: 300 }
const any = matterArbitrary({ failures: 'of-some', twins: true })

const find = (
  matter: Matter,
  recorded: { part: RecordFacts['find']; find: RecordFacts['find'] },
  answers: readonly (number | null)[],
): RecordFacts => facts({ ...recorded.part, ...answered(matter, answers) }, recorded.find)

const jointIn = (matter: Matter, found: RecordFacts): Joint => raisedBy(found, baseOf(matter))[0]!.joint
const byId = (found: RecordFacts, matter: Matter) =>
  Object.fromEntries(weigh(found, baseOf(matter))[0]!.rivals.map((rival) => [rival.id, rival]))

const probableIn = ({ weights, tables }: Joint) => probabilities(weights, tables.rivals.length)
const entropyBits = (shares: Iterable<number>) =>
  [...shares].reduce((sum, share) => (share > 0 ? sum - share * Math.log2(share) : sum), 0)

describe('laws of evidence', () => {
  test('the probabilities of rivals sum to one, and each lies within its range', () => {
    fc.assert(
      fc.property(any, recordedArbitrary, answersArbitrary, (matter, recorded, answers) => {
        const [weighed] = weigh(find(matter, recorded, answers), baseOf(matter))
        expect(weighed!.rivals.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 12)
        for (const { probability, range } of weighed!.rivals) {
          expect(range[0]).toBeGreaterThanOrEqual(0)
          expect(range[1]).toBeLessThanOrEqual(1 + 1e-12)
          expect(range[0]).toBeLessThanOrEqual(probability)
          expect(range[1]).toBeGreaterThanOrEqual(probability)
        }
      }),
      runs,
    )
  })

  test('a group that nobody looked at, or looked at in vain, changes nothing', () => {
    fc.assert(
      fc.property(any, recordedArbitrary, answersArbitrary, (matter, recorded, answers) => {
        const looked = matter.groups.filter((_, at) => answers[at] !== null)
        fc.pre(looked.length > 0)
        const found = find(matter, recorded, answers)
        expect(byId(found, { ...matter, groups: looked })).toEqual(byId(found, matter))
        const vain = Object.fromEntries(
          matter.groups.flatMap(({ question }, at) =>
            answers[at] === null ? [[`looked.${question}`, couldNotTell]] : [],
          ),
        )
        const part = { ...found.components[0]!, facts: { ...found.components[0]!.facts, ...vain } }
        const tried = { ...found, components: [part] }
        expect(byId(tried, matter)).toEqual(byId(found, matter))
        for (const { question } of askOf(tried, baseOf(matter)))
          expect(vain).not.toHaveProperty(`looked.${question}`)
      }),
      runs,
    )
  })

  test('the order in which things are written or become known changes nothing', () => {
    fc.assert(
      fc.property(any, recordedArbitrary, answersArbitrary, (matter, recorded, answers) => {
        const found = find(matter, recorded, answers)
        const turned = {
          ...matter,
          rivals: matter.rivals.toReversed(),
          groups: matter.groups.toReversed(),
        }
        const one = byId(found, matter)
        const other = byId(found, turned)
        for (const id of Object.keys(one)) {
          expect(other[id]!.probability).toBeCloseTo(one[id]!.probability, 12)
          expect(other[id]!.range[0]).toBeCloseTo(one[id]!.range[0], 12)
          expect(other[id]!.range[1]).toBeCloseTo(one[id]!.range[1], 12)
        }
        const at = matter.groups.map((_, group) => group).filter((group) => answers[group] !== null)
        const bare = jointIn(matter, find(matter, recorded, []))
        const learnt = (order: readonly number[]) =>
          probableIn(
            order.reduce(
              (joint, group) =>
                withState(joint, group, Math.min(answers[group]!, matter.groups[group]!.states.length)),
              bare,
            ),
          )
        const there = learnt(at)
        const back = learnt(at.toReversed())
        const atOnce = probableIn(jointIn(matter, found))
        there.forEach((probability, rival) => {
          expect(back[rival]).toBeCloseTo(probability, 12)
          expect(atOnce[rival]).toBeCloseTo(probability, 12)
        })
      }),
      runs,
    )
  })

  test('what is thought now is the average of what will be thought after any look, mapping by mapping', () => {
    fc.assert(
      fc.property(any, recordedArbitrary, answersArbitrary, (matter, recorded, answers) => {
        const joint = jointIn(matter, find(matter, recorded, answers))
        matter.groups.forEach((_, group) => {
          const all = showings(joint, group)
          expect(all.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9)
          joint.weights.forEach((weight, at) => {
            const average = all.reduce((sum, { chance, after }) => sum + chance * after.weights[at]!, 0)
            expect(Math.abs(average - weight)).toBeLessThan(1e-9)
          })
        })
      }),
      { numRuns: 60 },
    )
  })

  test('a gain is never negative, no more than is open, and a second look beside it never lowers it', () => {
    fc.assert(
      fc.property(any, recordedArbitrary, answersArbitrary, (matter, recorded, answers) => {
        const joint = jointIn(matter, find(matter, recorded, answers))
        const open = entropyBits(probableIn(joint))
        const set = matter.groups.map((_, group) => group).slice(0, 3)
        const together = gainBits(joint, set)
        expect(together).toBeLessThanOrEqual(open + 1e-9)
        for (const group of set) {
          const alone = gainBits(joint, [group])
          expect(alone).toBeGreaterThanOrEqual(0)
          expect(alone).toBeLessThanOrEqual(together + 1e-9)
          if (answers[group] !== null) expect(alone).toBe(0)
          const after = showings(joint, group).reduce(
            (sum, { chance, after }) => sum + chance * entropyBits(probableIn(after)),
            0,
          )
          expect(alone).toBeCloseTo(Math.max(0, open - after), 9)
        }
      }),
      { numRuns: 150 },
    )
  })

  test('more ways for a method to fail on any of them never raise what it tells', () => {
    fc.assert(
      fc.property(
        matterArbitrary({ failures: 'of-any' }),
        recordedArbitrary,
        answersArbitrary,
        (matter, recorded, answers) => {
          // What fails must not have been seen yet: a result already in hand is read with its failures.
          const upTo = answers.map((answer, at) => (at === 0 ? null : answer))
          const [group] = matter.groups
          const fewer = {
            ...matter,
            groups: [{ ...group!, failures: group!.failures.slice(0, -1) }, ...matter.groups.slice(1)],
          }
          const found = find(matter, recorded, upTo)
          expect(gainBits(jointIn(matter, found), [0])).toBeLessThanOrEqual(
            gainBits(jointIn(fewer, found), [0]) + 1e-12,
          )
        },
      ),
      runs,
    )
  })

  test('of a certain matter nothing is asked, of no other less than the floor', () => {
    let certain = 0
    fc.assert(
      fc.property(any, recordedArbitrary, answersArbitrary, (matter, recorded, answers) => {
        const found = find(matter, recorded, answers)
        const base = baseOf(matter)
        const asked = [...askOf(found, base), ...requestsOf(found, base)]
        for (const { gainBits } of asked) expect(gainBits).toBeGreaterThanOrEqual(0.05)
        const [weighed] = weigh(found, base)
        if (weighed!.rivals[0]!.probability < 0.95) return
        certain++
        const { groups } = raisedBy(found, base)[0]!.joint
        expect(weighed!.standing).toBe(measuredIn(groups) ? 'settled' : 'probable')
        expect(asked).toEqual([])
      }),
      runs,
    )
    expect(certain).toBeGreaterThan(20)
  })
})
