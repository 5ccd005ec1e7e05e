import { describe, expect, test } from 'vitest'
import { certain } from '../../lib/evidence/standing.ts'
import { planFind } from '../../lib/field/plan-find.ts'
import { seen as signs } from '../../lib/record/ids.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { record, today } from '../record-at-hand.ts'
import { leader, matter, share, weighed } from './at-hand.ts'

const active = 'active-chloride-corrosion'
type Find = Parameters<typeof weighed>[1]
type Part = Parameters<typeof weighed>[2]
type Seen = NonNullable<Part['seen']>
const of = (material: Part['material'], seen: Seen, ...looked: readonly string[]): Part => ({
  material,
  seen,
  ...(looked.length > 0 ? { looked } : {}),
})
const bronze = (seen: Seen, ...looked: readonly string[]) => of('bronze', seen, ...looked)
const iron = (seen: Seen, ...looked: readonly string[]) => of('iron', seen, ...looked)
const lead = (seen: Seen, ...looked: readonly string[]) => of('lead', seen, ...looked)

describe('a quiet reading', () => {
  const powder: Seen = ['pale-green-powder', 'no-change-seen']
  const at = (find: Find) => share(weighed('pale-green', find, bronze(powder)), active)
  const unwatched = share(weighed('pale-green', {}, bronze(['pale-green-powder'])), active)

  test.each<[string, Find]>([
    ['a month in damp air', { watched_days: 30, stored_rh_percent: 60 }],
    ['years in a dry box', { watched_days: 2000, stored_rh_percent: 20 }],
    ['years at what is safe for most bronzes anyway', { watched_days: 2000, stored_rh_percent: 42 }],
  ])('%s: counts for nothing', (_, find) => {
    expect(at(find)).toBeCloseTo(unwatched, 1)
  })

  test('nobody said how long or how damp: it hardly counts', () => {
    expect(at({})).toBeGreaterThan(0.75 * unwatched)
  })

  test('years in damp air count, with no oxygen test on record, and settle nothing', () => {
    const long = at({ watched_days: 2000, stored_rh_percent: 60 })
    expect(long).toBeLessThan(unwatched)
    expect(long).toBeGreaterThan(1 - certain)
  })

  test('iron that used no oxygen, whose salt test was clear and whose powder was ordinary rust, is not cleared', () => {
    const tests = ['oxygen-uptake:none', 'silver-nitrate:negative', 'xrd:goethite+magnetite']
    const found = weighed('orange-crust', { tests }, iron(['orange-brown-crust']))
    expect(share(found, active)).toBeGreaterThan(1 - certain)
    expect(found.standing).not.toBe('settled')
  })
})

describe('for want of record', () => {
  test('pale green that is hard and gave malachite is carbonate sooner than an old chloride', () => {
    const seen = bronze(['pale-green-powder'], 'green-form:firm-crust')
    const found = weighed('pale-green', { tests: ['xrd:malachite'] }, seen)
    expect(leader(found)).toBe('carbonate-patina')
    expect(found.standing).toBe('open')
  })

  test.each<[string, string, Part, readonly string[]]>([
    [
      'blue powder, no bath known',
      'blue-green-powder',
      bronze(['pale-blue-powder']),
      ['soda-treatment-residue'],
    ],
    ['a green crust, no ground known', 'compact-green', bronze(['compact-green']), ['marine-signature']],
    [
      'bare metal, no ground known',
      'bare-metal',
      bronze(['bare-metal']),
      ['anoxic-sulphide', 'never-buried'],
    ],
    ['a lump, no ground known', 'iron-concretion', iron(['soil-concretion']), ['marine-signature']],
    [
      'black on iron, nothing known',
      'iron-black',
      iron(['black-compact-layer']),
      ['marine-signature', 'paint'],
    ],
  ])('%s: the rarer explanations do not lead', (_, id, part, rarer) => {
    expect(rarer).not.toContain(leader(weighed(id, {}, part)))
  })

  test('iron from the sea is not at rest because nobody wrote down whether it had a bath', () => {
    const found = weighed('orange-crust', { burial: ['marine'] }, iron(['orange-brown-crust']))
    expect(leader(found)).toBe(active)
    expect(share(found, 'burial-rust-crust')).toBeLessThan(0.25)
  })

  test('white on lead that is still wet from the ground cannot be told from old carbonate; dry, it is of vapours', () => {
    const wet = weighed('white-on-lead', { state_now: 'wet' }, lead(['white-powder']))
    expect(wet.standing).toBe('open')
    expect(leader(weighed('white-on-lead', { state_now: 'dry' }, lead(['white-powder'])))).toBe(
      'organic-acid-corrosion',
    )
  })
})

describe('what the eye alone may say', () => {
  test('waxy but hard, with every detail kept, on a bronze: tin oxide leads, and nothing is settled without a laboratory', () => {
    const looked = ['green-shine:polished-stone', 'waxy-place:skin-that-keeps-detail']
    const found = weighed('waxy-green', {}, bronze(['waxy-grey-green'], ...looked))
    expect(leader(found)).toBe('tin-enriched-corrosion')
    expect(found.standing).not.toBe('settled')
    expect(share(found, active)).toBeGreaterThan(1 - certain)
  })

  test('white over pits in aluminium from the sea: chloride at work; even white on zinc: damp', () => {
    const pitted = of('aluminium', ['white-powder'], 'beneath-white:eaten')
    expect(leader(weighed('white-on-zinc', { burial: ['marine'] }, pitted))).toBe(active)
    expect(leader(weighed('white-on-zinc', {}, of('zinc', ['white-powder'])))).toBe('zinc-white-rust')
  })
})

describe('what a mineral names', () => {
  test.each<[string, Find, string, Part, string]>([
    [
      'tin oxide in a black crust',
      { tests: ['xrd:romarchite'] },
      'lead-black',
      of('solder', ['black-crust']),
      'tin-black-oxide',
    ],
    [
      'lead formate in a hard crust',
      { tests: ['xrd:lead-formate'] },
      'white-crust-on-lead',
      lead(['white-hard-crust']),
      'lead-formate-or-acetate',
    ],
    [
      'copper acetate in pale blue, by its light',
      { tests: ['raman:copper-acetate'] },
      'blue-green-powder',
      bronze(['pale-blue-powder']),
      'organic-acid-corrosion',
    ],
    [
      'the ferrous chloride hydroxide in bright spots',
      { tests: ['xrd:ferrous-chloride-hydroxide'] },
      'orange-spots',
      iron(['bright-orange-spots']),
      active,
    ],
  ])('%s', (_, find, id, part, first) => {
    expect(leader(weighed(id, find, part))).toBe(first)
  })
})

describe('what else is on the piece', () => {
  test('light green powder beside a whole crust makes the crust suspect too', () => {
    const alone = share(weighed('compact-green', {}, bronze(['compact-green'])), active)
    const beside = share(weighed('compact-green', {}, bronze(['compact-green', 'pale-green-powder'])), active)
    expect(beside).toBeGreaterThan(3 * alone)
  })

  test('powder in the bag of a rusty find speaks against rest', () => {
    const alone = share(weighed('orange-crust', {}, iron(['orange-brown-crust'])), active)
    const beside = share(weighed('orange-crust', {}, iron(['orange-brown-crust', 'powder-in-bag'])), active)
    expect(beside).toBeGreaterThan(alone)
  })
})

describe('powder in the bag', () => {
  const seen: Seen = ['powder-in-bag']

  test('nothing known of it: corrosion that goes on', () => {
    expect(leader(weighed('powder-in-bag', {}, iron(seen)))).toBe('shedding-corrosion')
  })

  test('earth all over a bag that then stayed clean: dried soil', () => {
    const looked = ['bag-powder-look:soil-grains', 'bag-powder-again:stayed-clean']
    const found = weighed('powder-in-bag', {}, iron(seen, ...looked))
    expect(leader(found)).toBe('dried-soil')
    expect(found.standing).toBe('probable')
  })

  test('a clear salt test and only ordinary rust do not clear it', () => {
    const tests = ['silver-nitrate:negative', 'xrd:goethite']
    const found = weighed('powder-in-bag', { tests }, iron(seen))
    expect(share(found, 'shedding-corrosion')).toBeGreaterThan(0.2)
  })
})

describe('what must change the plan', () => {
  const meanings = (find: Find, part: Part) =>
    planFind(record(find, part), knowledge, { asOf: today, answers: true }).requests.flatMap(
      ({ means }) => means,
    )

  test.each<[string, Find, Part, string]>([
    ['a whole crust', { burial: ['free-draining'] }, bronze(['compact-green']), active],
    ['a line along a seam', {}, bronze(['raised-green-along-seam']), active],
    ['pale blue powder', {}, bronze(['pale-blue-powder']), active],
    [
      'iron at rest',
      { tests: ['oxygen-uptake:none'], watched_days: 800, stored_rh_percent: 40, burial: ['clay'] },
      iron(['orange-brown-crust', 'no-change-seen']),
      active,
    ],
    ['white crust on lead', {}, lead(['white-hard-crust']), 'organic-acid-corrosion'],
  ])('%s: an answer that makes corrosion lead changes how it is kept', (_, find, part, found) => {
    const leading = meanings(find, part).filter(({ interpretation }) => interpretation === found)
    expect(leading.length).toBeGreaterThan(0)
    for (const { changes } of leading) expect(changes.map((change) => change.part)).not.toEqual([])
  })
})

test('chloride found in quiet rust speaks for corrosion, not for rust right through', () => {
  const quiet: Find = { watched_days: 800, stored_rh_percent: 40, burial: ['clay'] }
  const rust = iron(['orange-brown-crust', 'no-change-seen'])
  const of = (...tests: readonly string[]) =>
    weighed('orange-crust', { ...quiet, tests: ['oxygen-uptake:none', ...tests] }, rust)
  expect(share(of('silver-nitrate:positive'), active)).toBeGreaterThan(share(of(), active))
  expect(leader(of('silver-nitrate:positive'))).not.toBe('mineralised-through')
})

test('every sign raises a matter, but for a loose part and for no change', () => {
  const raised = Object.values(knowledge.matters).flatMap(({ about }) => about.map(({ value }) => value))
  expect(signs.filter((id) => !raised.includes(id))).toEqual(['loose-parts', 'no-change-seen'])
})

describe('one thing that two methods measure', () => {
  const odds = (probability: number) => probability / (1 - probability)
  const pairs: readonly [
    string,
    Part,
    string,
    readonly [Find, readonly string[]],
    readonly [Find, readonly string[]],
  ][] = [
    [
      'pale-green',
      bronze(['pale-green-powder']),
      'organic-acid-corrosion',
      [{ tests: ['xrd:copper-acetate'] }, []],
      [{}, ['green-infrared:formate-or-acetate']],
    ],
    [
      'silver-grey',
      of('silver', ['lavender-grey-waxy']),
      'silver-chloride',
      [{ tests: ['xrf:Ag+Cl'] }, []],
      [{ tests: ['xrd:chlorargyrite'] }, []],
    ],
    [
      'tin-warts',
      of('pewter', ['grey-warts']),
      'marine-signature',
      [{ tests: ['xrd:abhurite'] }, []],
      [{ tests: ['xrf:Sn+Cl'] }, []],
    ],
    [
      'white-on-lead',
      lead(['white-powder']),
      'lead-formate-or-acetate',
      [{ tests: ['xrd:lead-formate'] }, []],
      [{}, ['white-infrared:formate-or-acetate']],
    ],
  ]
  test.each(pairs)(
    '%s: two results of it say less than each for itself',
    (id, part, rival, first, second) => {
      const of = (...results: readonly (readonly [Find, readonly string[]])[]) => {
        const tests = results.flatMap(([find]) => find.tests ?? [])
        const looked = results.flatMap(([, answers]) => answers)
        return odds(
          share(weighed(id, { tests }, { ...part, ...(looked.length > 0 ? { looked } : {}) }), rival),
        )
      }
      const before = of()
      expect(of(first, second) / before).toBeLessThan(((of(first) / before) * of(second)) / before)
    },
  )

  test('a salt test tells what it reached, fluorescence what is at the spot: a second chloride never speaks for less', () => {
    for (const id of ['pale-green', 'waxy-green', 'compact-green', 'waxy-turquoise'] as const) {
      const part = bronze([matter(id).about[0]!.value as (typeof signs)[number]])
      const one = share(weighed(id, { tests: ['xrf:Cu+Cl'] }, part), active)
      const both = share(weighed(id, { tests: ['xrf:Cu+Cl', 'silver-nitrate:positive'] }, part), active)
      expect(both, id).toBeGreaterThan(one)
    }
  })
})
