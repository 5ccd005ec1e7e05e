import { describe, expect, test } from 'vitest'
import { askOf } from './ask-of.ts'
import { floorBits, gainBits } from '../../lib/evidence/gain.ts'
import { meaningsOf } from '../../lib/evidence/meanings.ts'
import { raisedBy } from '../../lib/evidence/raised.ts'
import { requestsOf } from '../../lib/evidence/requests.ts'
import type { Group, Matter } from '../../lib/knowledge/evidence.ts'
import { couldNotTell, stated, type Fact, type Facts } from '../../lib/record/fact.ts'
import { baseOf, edge, elements, facts, fits, methods, prior, rival, skin, state } from './small-base.ts'

const even = ['tin', 'silver', 'high-tin'].map((id) => rival(id, prior('common')))
const open: Matter = { ...skin, rivals: even }

const telling = (by: string, more: Partial<Group> = {}): Group => ({
  id: `by-${by}`,
  label: by,
  by,
  question: `by-${by}`,
  sameCauseAs: null,
  states: [state('yes', fits('typical', 'excluded', 'excluded'))],
  rest: { says: 'no', fits: fits('rare', 'typical', 'typical') },
  failures: [],
  ...more,
})
const dull = (by: string): Group =>
  telling(by, {
    states: [state('yes', fits('frequent', 'rare', 'occasional'))],
    rest: { says: 'no', fits: fits('frequent', 'frequent', 'frequent') },
  })

const asking = (groups: readonly Group[], of: Facts = {}, find: Facts = {}) => {
  const matter = { ...open, groups }
  const base = {
    ...baseOf(matter),
    questions: Object.fromEntries(
      groups.flatMap(({ question }) =>
        question === null
          ? []
          : [
              [
                question,
                {
                  id: question,
                  asks: '',
                  tell: '',
                  why: '',
                  by: 'eye',
                  answers: [{ id: 'yes', label: '', tell: '' }],
                },
              ],
            ],
      ),
    ),
  }
  return { base, found: facts(of, find) }
}
const methodsAsked = (groups: readonly Group[], of: Facts = {}, find: Facts = {}) => {
  const { base, found } = asking(groups, of, find)
  return requestsOf(found, base).map(({ method, ifConservatorAgrees }) =>
    ifConservatorAgrees ? `${method} if agreed` : method,
  )
}
const wanted = { needed_for: stated('luminescence-dating') }
const iron = { material: stated('iron') }

describe('questions to the eye', () => {
  test('come best first, with what each answer would mean', () => {
    const { base, found } = asking([dull('eye'), edge])
    const asked = askOf(found, base)
    expect(asked.map(({ question }) => question)).toEqual(['edge', 'by-eye'])
    expect(asked[0]!.gainBits).toBeGreaterThan(asked[1]!.gainBits)
    const means = meaningsOf(raisedBy(found, base)[0]!.joint, 1)
    expect(means.map(({ state }) => state)).toEqual(['lifting', 'worn', 'rest'])
    expect(means.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12)
    expect(means[0]).toMatchObject({ leader: 'silver', standing: 'probable' })
  })

  test('are not asked again once answered, or once somebody could not tell', () => {
    for (const answer of [stated('none'), stated('worn'), couldNotTell]) {
      const { base, found } = asking([edge], { 'looked.edge': answer })
      expect(askOf(found, base)).toEqual([])
    }
  })

  test('that two matters hang on are asked once, for what they tell of both', () => {
    const both = { ...baseOf({ ...open, groups: [edge] }, { ...open, id: 'other', groups: [edge] }) }
    const one = askOf(facts(), baseOf({ ...open, groups: [edge] }))[0]!
    const [together, ...more] = askOf(facts(), both)
    expect(more).toEqual([])
    expect(together!.gainBits).toBeCloseTo(2 * one.gainBits, 2)
    expect(together!.matters.map(({ matter }) => matter)).toEqual(['other', 'skin'])
  })

  test('stop where an answer would change neither who leads nor how it stands', () => {
    // It would tell which of the two that are out of the running is ahead: enough bits, nothing anybody needs.
    const rivals = [
      rival('tin', prior('usual')),
      rival('silver', prior('uncommon')),
      rival('high-tin', prior('uncommon')),
    ]
    const idle = {
      ...edge,
      states: [state('lifting', fits('frequent', 'typical', 'excluded'))],
      rest: { says: 'no edge', fits: fits('frequent', 'excluded', 'typical') },
    }
    const matter = { ...open, rivals, groups: [idle] }
    expect(gainBits(raisedBy(facts(), baseOf(matter))[0]!.joint, [0])).toBeGreaterThan(floorBits)
    expect(askOf(facts(), baseOf(matter))).toEqual([])
  })
})

describe('requests', () => {
  test('say what each outcome would mean and how the method may mislead here', () => {
    const { base, found } = asking([elements], { seen: stated('compact-green') })
    const [request] = requestsOf(found, base)
    expect(request).toMatchObject({
      method: 'xrf',
      rank: 1,
      sampling: false,
      minutes: { setUp: 30, each: 10 },
    })
    const [matter] = request!.matters
    expect(matter!.means.map(({ state, leader }) => [state, leader])).toContainEqual(['silver', 'silver'])
    expect(matter!.misleads.map(({ failure }) => failure)).toEqual(['crust', 'spread'])
    const bare = asking([elements], { seen: stated('none') })
    const [clean] = requestsOf(bare.found, bare.base)
    expect(clean!.matters[0]!.misleads.map(({ failure }) => failure)).toEqual(['spread'])
  })

  test('ask for what takes no sample first', () => {
    expect(methodsAsked([telling('sem-eds'), telling('xrf')])).toEqual(['xrf', 'sem-eds'])
    expect(methodsAsked([telling('sem-eds'), telling('eye')])).toEqual(['sem-eds'])
  })

  test('put a sample first only where it tells many times as much, and then only if a conservator agrees', () => {
    expect(methodsAsked([dull('xrf'), telling('sem-eds')])).toEqual(['sem-eds if agreed', 'xrf'])
    expect(methodsAsked([dull('eye'), telling('sem-eds')])).toEqual(['sem-eds if agreed'])
  })

  test('put the radiograph of iron, or of what may be iron, before all else that tells more', () => {
    const groups = [dull('x-radiography'), telling('xrf'), telling('sem-eds')]
    expect(methodsAsked(groups, iron)[0]).toBe('x-radiography')
    expect(methodsAsked(groups, { material: stated('metal-unidentified') })[0]).toBe('x-radiography')
    expect(methodsAsked(groups)[0]).toBe('xrf')
  })

  test('put the sample for a date that is wanted before every ray', () => {
    const groups = [telling('x-radiography'), telling('xrf'), dull('luminescence')]
    expect(methodsAsked(groups, iron, wanted)[0]).toBe('luminescence')
    expect(methodsAsked(groups, iron)[0]).toBe('x-radiography')
    const { base, found } = asking(groups, iron, wanted)
    const rays = {
      ...base,
      methods: {
        ...base.methods,
        xrf: { ...methods[0]!, cautions: [{ code: 'ionising-radiation', text: '', sources: [] }] },
      },
    }
    expect(
      requestsOf(found, rays)
        .filter(({ afterDating }) => afterDating)
        .map(({ method }) => method),
    ).toEqual(['xrf'])
  })

  test('of a method that has been used say so, where its result leaves something open', () => {
    const lines = {
      ...telling('x-radiography'),
      question: null,
      sameCauseAs: null,
      states: [
        state('lines', fits('typical', 'excluded', 'excluded'), {
          fact: 'radiograph',
          any: ['bright-lines'],
        }),
      ],
    }
    const asked = (of: Facts) => {
      const { base, found } = asking([lines], of)
      return requestsOf(found, base).map(({ method, onRecord }) => [method, onRecord ?? false])
    }
    const printed: Fact = { has: ['core-solid'], may: ['bright-lines', 'dense-specks'], said: 'stated' }
    expect(asked({})).toEqual([['x-radiography', false]])
    expect(asked({ core: stated('solid') })).toEqual([['x-radiography', false]])
    expect(asked({ radiograph: printed })).toEqual([['x-radiography', true]])
    expect(asked({ radiograph: { ...printed, has: ['core-solid', 'bright-lines'] } })).toEqual([])
  })
})

describe('several groups together', () => {
  const { base, found } = asking([telling('eye'), telling('xrf')])
  const { joint } = raisedBy(found, base)[0]!

  test('tell at least what each tells alone, and less than the sum where they tell the same', () => {
    const [eye, xrf, both] = [gainBits(joint, [0]), gainBits(joint, [1]), gainBits(joint, [0, 1])]
    expect(both).toBeGreaterThan(Math.max(eye, xrf))
    expect(both).toBeLessThan(eye + xrf)
    expect(gainBits(joint, [0, 1, 0])).toBe(both)
    expect(gainBits(joint, [])).toBe(0)
  })

  test('so many that not all their outcomes can be tried tell at least what the best of them do', () => {
    const many = asking(
      Array.from({ length: 14 }, (_, at) => ({
        ...(at === 5 ? telling('xrf') : dull('xrf')),
        id: `g${at}`,
        question: `q${at}`,
      })),
    )
    const [wide] = raisedBy(many.found, many.base)
    const all = gainBits(
      wide!.joint,
      wide!.joint.groups.map((_, at) => at),
    )
    expect(all).toBeGreaterThan(gainBits(wide!.joint, [5]))
    expect(all).toBeLessThan(Math.log2(3))
  })
})
