import fc from 'fast-check'
import type { Failure, Grade, Group, Matter, Odds } from '../../lib/knowledge/evidence.ts'
import { stated, type Fact } from '../../lib/record/fact.ts'
import { failure, prior, rival, state } from './small-base.ts'

/** Invented matters of every shape, for laws that hold whatever the evidence base says. */
const grade = fc.constantFrom<Grade>('typical', 'frequent', 'occasional', 'rare', 'excluded')
const odd = fc.constantFrom<Odds>('usual', 'common', 'uncommon', 'seldom', 'exceptional')
const rivalIds = ['a', 'b', 'c', 'd', 'e', 'f', 'g'] as const

const fitsOf = (rivals: readonly string[]) =>
  fc
    .array(grade, { minLength: rivals.length, maxLength: rivals.length })
    .map((grades) => Object.fromEntries(rivals.map((id, at) => [id, grades[at]!])))

/** One that befalls any rival, with its condition met, not met, or not known. */
const failureOf = (
  at: number,
  shows: readonly string[],
  of: readonly string[] | null,
): fc.Arbitrary<Failure> =>
  fc
    .record({
      as: fc.constantFrom(...shows),
      grade,
      when: fc.constantFrom([], [{ fact: 'seen', any: ['crust'] }], [{ fact: 'burial', any: ['sea'] }]),
    })
    .map(({ as, grade, when }) => failure(`failure-${at}`, as, grade, { when, of }))

interface Shape {
  readonly failures: 'none' | 'of-any' | 'of-some'
  /** The third group measures the same thing as the second. */
  readonly twins?: boolean
}

function groupOf(at: number, rivals: readonly string[], { failures, twins }: Shape): fc.Arbitrary<Group> {
  return fc
    .integer({ min: 1, max: 4 })
    .chain((count) => {
      const ids = Array.from({ length: count }, (_, state) => `state-${state}`)
      const of = failures === 'of-some' ? rivals.slice(0, 2) : null
      return fc.record({
        fits: fc.array(fitsOf(rivals), { minLength: count + 1, maxLength: count + 1 }),
        failures:
          failures === 'none'
            ? fc.constant([])
            : fc.array(
                fc.nat(9).chain((nth) => failureOf(nth, [...ids, 'rest'], of)),
                { maxLength: 2 },
              ),
      })
    })
    .map(({ fits, failures }): Group => ({
      id: `group-${at}`,
      label: `group ${at}`,
      by: at % 2 === 0 ? 'eye' : 'xrf',
      question: `question-${at}`,
      sameCauseAs: twins === true && at === 2 ? 'group-1' : null,
      states: fits.slice(1).map((own, state_) => state(`state-${state_}`, own)),
      rest: { says: 'none of them', fits: fits[0]! },
      failures,
    }))
}

export const matterArbitrary = (shape: Shape): fc.Arbitrary<Matter> =>
  fc
    .tuple(fc.integer({ min: 2, max: 7 }), fc.integer({ min: 1, max: 5 }))
    .chain(([wide, many]) => {
      const rivals = rivalIds.slice(0, wide)
      return fc.record({
        rivals: fc.tuple(
          ...rivals.map((id) =>
            fc
              .tuple(odd, odd, fc.boolean())
              .map(([special, general, split]) =>
                split
                  ? rival(id, prior(special, { fact: 'object_kind', any: ['coin'] }), prior(general))
                  : rival(id, prior(general)),
              ),
          ),
        ),
        groups: fc.tuple(...Array.from({ length: many }, (_, at) => groupOf(at, rivals, shape))),
      })
    })
    .map(({ rivals, groups }) => ({
      id: 'drawn',
      asks: 'What is it?',
      about: [{ field: 'evidence', value: 'white-metal-sheen' }],
      where: [],
      rivals,
      groups,
      contested: null,
    }))

/** What is recorded beside the questions: conditions of failures and priors, each of them known, excluded or open. */
export const recordedArbitrary: fc.Arbitrary<{ part: Record<string, Fact>; find: Record<string, Fact> }> = fc
  .record({
    seen: fc.option(fc.constantFrom('crust', 'none'), { nil: undefined }),
    burial: fc.option(fc.constantFrom('sea', 'land'), { nil: undefined }),
    object_kind: fc.option(fc.constantFrom('coin', 'brooch'), { nil: undefined }),
  })
  .map(({ seen, ...find }) => ({
    part: seen === undefined ? {} : { seen: stated(seen) },
    find: Object.fromEntries(
      Object.entries(find).flatMap(([name, value]) => (value === undefined ? [] : [[name, stated(value)]])),
    ),
  }))

/** An answer for each group, or null for not looked at. */
export const answersArbitrary: fc.Arbitrary<readonly (number | null)[]> = fc.array(
  fc.option(fc.nat(4), { nil: null }),
  { minLength: 5, maxLength: 5 },
)

/** The same answers as facts of the part; numbers beyond the last state are `none`. */
export function answered(matter: Matter, answers: readonly (number | null)[]): Record<string, Fact> {
  return Object.fromEntries(
    matter.groups.flatMap(({ question, states }, at) => {
      const answer = answers[at] ?? null
      return answer === null ? [] : [[`looked.${question}`, stated(states[answer]?.id ?? 'none')]]
    }),
  )
}
