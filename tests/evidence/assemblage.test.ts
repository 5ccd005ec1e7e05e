import { describe, expect, test } from 'vitest'
import { assemble, type Allowance } from '../../lib/evidence/assemblage.ts'
import { readHours, hoursInLine } from '../../lib/evidence/assemblage-hours.ts'
import type { AssemblageFind } from '../../lib/evidence/assemblage-find.ts'
import { gainBits } from '../../lib/evidence/gain.ts'
import { hoursFor, slotsIn } from '../../lib/evidence/method-hours.ts'
import { raisedBy } from '../../lib/evidence/raised.ts'
import type { Group, Matter } from '../../lib/knowledge/evidence.ts'
import { stated, type Fact, type Facts } from '../../lib/record/fact.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { baseOf, facts, fits, methods, prior, rival, skin, state } from './small-base.ts'

const telling = (by: string, grade: 'typical' | 'frequent' = 'typical'): Group => ({
  id: `by-${by}`,
  label: by,
  by,
  question: `by-${by}`,
  states: [state('yes', fits(grade, 'excluded', 'excluded'))],
  rest: { says: 'no', fits: fits('rare', 'typical', 'typical') },
  failures: [],
  sameCauseAs: null,
})

const open: Matter = {
  ...skin,
  rivals: ['tin', 'silver', 'high-tin'].map((id) => rival(id, prior('common'))),
  groups: [telling('xrf'), telling('x-radiography'), telling('sem-eds')],
}
const rays = [{ code: 'ionising-radiation', text: '', sources: [] }]
const base = {
  ...baseOf(open),
  methods: Object.fromEntries(
    methods.map((one) => [
      one.id,
      one.id === 'xrf' || one.id === 'x-radiography' ? { ...one, cautions: rays } : one,
    ]),
  ),
}

const find = (
  id: string,
  more: Partial<Pick<AssemblageFind, 'stopped' | 'datingSampled' | 'stakes' | 'stakesAtMost'>> = {},
  of: Readonly<Record<string, Fact>> = {},
  about: Facts = {},
): AssemblageFind => {
  const own = facts(of, about)
  return {
    id,
    facts: own,
    raised: raisedBy(own, base),
    stopped: false,
    datingSampled: false,
    stakes: () => 1,
    stakesAtMost: () => 3,
    ...more,
  }
}

const hours = (method: string, hours: number): Allowance => ({ method, hours, slots: null })
const places = (method: string, slots: number): Allowance => ({ method, hours: null, slots })
const plan = (finds: readonly AssemblageFind[], allowances: readonly Allowance[], sampling = false) =>
  assemble(finds, { allowances, sampling, further: 2 }, base)
const sent = (assembled: ReturnType<typeof plan>) =>
  assembled.methods.map(({ method, asks }) => [method, asks.map((ask) => ask.find.id)])

describe('hours at a method', () => {
  const minutes = { setUp: 30, each: 10, figures: [], known: 'common-practice' } as const
  test('are enough for what fits after setting up once', () => {
    expect([0, 0.5, 0.66, 40 / 60, 1, 2].map((given) => slotsIn(given, minutes))).toEqual([0, 0, 0, 1, 3, 9])
    expect([0, 1, 9].map((slots) => hoursFor(slots, minutes))).toEqual([0, 40 / 60, 2])
  })

  test('are read with all that is wrong at once, and with what was meant', () => {
    const read = (line: string) => readHours(hoursInLine(line), knowledge)
    expect(read('xrf=6, X-radiography=2.5h,ct=4slots')).toEqual({
      ok: true,
      value: [hours('xrf', 6), hours('x-radiography', 2.5), places('ct', 4)],
    })
    expect(read('xrv=1,radiograph=2,ct=many,xrf=1,xrf=2,raman,xrd=1e9,ftir=2.5slots')).toEqual({
      ok: false,
      problems: [
        { flaw: 'no-method', given: 'xrv', meant: ['xrd', 'xrf'] },
        { flaw: 'no-method', given: 'radiograph', meant: ['x-radiography'] },
        { flaw: 'no-number', method: 'ct', given: 'many' },
        { flaw: 'twice', method: 'xrf' },
        { flaw: 'no-number', method: 'raman', given: '' },
        { flaw: 'no-number', method: 'xrd', given: '1e9' },
        { flaw: 'no-number', method: 'ftir', given: '2.5slots' },
      ],
    })
    expect(read('')).toEqual({ ok: false, problems: [{ flaw: 'nothing-given' }] })
    expect(read('xrf=9000,ct=-1')).toMatchObject({
      problems: [
        { flaw: 'too-many', method: 'xrf' },
        { flaw: 'no-number', method: 'ct' },
      ],
    })
  })
})

describe('the assemblage plan', () => {
  test('sends what matters most, in the order of what it settles, and never takes more hours than there are', () => {
    const finds = [
      find('a', {}, {}, { significance: stated('low') }),
      find('b', {}, {}, { significance: stated('high') }),
      find('c'),
      find('d', { stakes: () => 3 }),
    ]
    const assembled = plan(finds, [hours('xrf', 50 / 60)])
    expect(sent(assembled)).toEqual([['xrf', ['d', 'b']]])
    expect(assembled.methods[0]!.hoursUsed).toBeCloseTo(50 / 60, 9)
    expect(assembled.weightedBits).toBeCloseTo(assembled.boundWeightedBits, 9)
    const bits = gainBits(finds[0]!.raised[0]!.joint, [0])
    expect(assembled.gainBits).toBeCloseTo(2 * bits, 9)
    expect(assembled.weightedBits).toBeCloseTo(5 * bits, 9)
  })

  test('counts a second method for what it adds, so it goes to another find', () => {
    const assembled = plan([find('a'), find('b')], [places('xrf', 1), places('x-radiography', 1)])
    const [one, other] = assembled.methods.map(({ asks }) => asks[0]!.find.id)
    expect([one, other].toSorted()).toEqual(['a', 'b'])
    const both = plan([find('a')], [places('xrf', 1), places('x-radiography', 1)])
    const { joint } = find('a').raised[0]!
    expect(both.gainBits).toBeCloseTo(gainBits(joint, [0, 1]), 9)
    expect(both.methods[1]!.gainBits).toBeLessThan(both.methods[0]!.gainBits)
  })

  test('says what each further hour would buy, and from where on it buys nothing', () => {
    const finds = ['a', 'b', 'c', 'd', 'e', 'f', 'g'].map((id) => find(id))
    const {
      methods: [batch],
    } = plan(finds, [hours('xrf', 40 / 60)])
    expect(batch!.asks).toHaveLength(1)
    expect(batch!.further.map(({ adds }) => adds.length)).toEqual([6, 0])
    expect(batch!.further[0]!.gainBits).toBeCloseTo(6 * batch!.gainBits, 9)
    expect(batch!.further[1]!.weightedBits).toBe(0)
    expect(batch!.oneMoreAtHours).toBeCloseTo(50 / 60, 9)
  })

  test('does not change with the order of finds', () => {
    const finds = Array.from({ length: 12 }, (_, at) =>
      find(
        `f${at}`,
        { stakes: () => 1 + (at % 4) / 4 },
        {},
        { significance: stated(at % 3 === 0 ? 'high' : 'medium') },
      ),
    )
    const asked = [places('xrf', 4), places('x-radiography', 3)]
    expect(sent(plan(finds.toReversed(), asked))).toEqual(sent(plan(finds, asked)))
  })

  test('asks nothing of a matter that is settled, whoever settled it', () => {
    const { raised, ...rest } = find('a')
    const settled = { ...rest, raised: raised.map((one) => ({ ...one, settled: 'tin' })) }
    expect(plan([settled], [places('xrf', 3)])).toMatchObject({ candidates: 0, gainBits: 0, leftOut: [] })
    const answered = find('b', {}, { 'looked.by-xrf': stated('yes') })
    expect(sent(plan([answered], [places('xrf', 3)]))).toEqual([['xrf', []]])
  })

  test('takes samples only where that is agreed, and says so', () => {
    const asked = [places('sem-eds', 1)]
    expect(plan([find('a')], asked)).toMatchObject({
      methods: [],
      leftOut: [{ find: null, method: 'sem-eds', because: 'samples' }],
    })
    expect(sent(plan([find('a')], asked, true))).toEqual([['sem-eds', ['a']]])
  })

  test('lets rays wait for a dating sample, and asks for the rest of the find all the same', () => {
    const wanted = { needed_for: stated('luminescence-dating') }
    const asked = [places('xrf', 1), places('sem-eds', 1)]
    const waiting = find('a', {}, {}, wanted)
    const assembled = plan([waiting], asked, true)
    expect(sent(assembled)).toEqual([
      ['xrf', []],
      ['sem-eds', ['a']],
    ])
    expect(assembled.leftOut).toEqual([{ find: waiting, method: 'xrf', because: 'dating-first' }])
    expect(sent(plan([find('a', { datingSampled: true }, {}, wanted)], asked))).toEqual([['xrf', ['a']]])
  })

  test('leaves a find alone while a stop stands on it, and says so', () => {
    const stopped = find('a', { stopped: true })
    const assembled = plan([stopped, find('b')], [places('xrf', 2)])
    expect(sent(assembled)).toEqual([['xrf', ['b']]])
    expect(assembled.leftOut).toEqual([{ find: stopped, method: null, because: 'stop' }])
  })

  test('needs one image for a find with two parts, but a measurement for each', () => {
    const own = {
      find: {},
      components: ['plate', 'pin'].map((name) => ({ ...facts().components[0]!, name })),
    }
    const two = { ...find('a'), facts: own, raised: raisedBy(own, base) }
    expect(
      plan([two], [places('x-radiography', 1)]).methods[0]!.asks[0]!.parts.map(({ component }) => component),
    ).toEqual(['plate', 'pin'])
    const measured = plan([two], [places('xrf', 1)]).methods[0]!
    expect(measured.asks.map(({ parts }) => parts.length)).toEqual([1])
    expect(measured.further[0]!.adds).toHaveLength(1)
  })

  test('an unknown significance is not a low one', () => {
    const finds = [
      find('low', {}, {}, { significance: stated('low') }),
      find('unknown', {}, {}, { significance: stated('unknown') }),
    ]
    expect(sent(plan(finds, [places('xrf', 1)]))).toEqual([['xrf', ['unknown']]])
  })

  test('reckons what hangs on an answer only where a find may be chosen, and chooses as if all were reckoned', () => {
    let reckoned = 0
    const significances = ['low', 'medium', 'high']
    const finds = (most: (at: number) => number) =>
      Array.from({ length: 60 }, (_, at) =>
        find(
          `f${at}`,
          {
            stakes: () => {
              reckoned++
              return 1 + ((at * 7) % 10) / 10
            },
            stakesAtMost: () => most(at),
          },
          {},
          { significance: stated(significances[at % 3]!) },
        ),
      )
    const asked = [places('xrf', 4), places('x-radiography', 3)]
    const lazy = plan(
      finds(() => 2),
      asked,
    )
    expect(reckoned).toBeLessThan(40)
    const eager = plan(
      finds((at) => 1 + ((at * 7) % 10) / 10),
      asked,
    )
    expect(lazy.weightedBits).toBeCloseTo(eager.weightedBits, 9)
    expect(sent(lazy)).toEqual(sent(eager))
    for (const { asks } of lazy.methods)
      for (const { find: own, gainBits: bits, weightedBits } of asks)
        expect(weightedBits).toBeCloseTo(2 * own.stakes(own.raised[0]!) * bits, 9)
  })
})
