import { describe, expect } from 'vitest'
import type { seen as signs } from '../../../lib/record/ids.ts'
import { leader, matter, rivalOf, share, stateOf, weighed } from '../../evidence/at-hand.ts'
import { printed, type Backing } from '../printed.ts'
import { figure } from '../../said.ts'
import { inWords, wholeNumber } from '../tolerance.ts'

const active = 'active-chloride-corrosion'
const chapter38 = { work: 'argyropoulos-2017', place: 'chapter 38', known: 'read' } as const
const glassAndMetal = { work: 'eggert-fischer-formates', place: 'abstract', known: 'read' } as const
const databases = { work: 'parkhurst-appelo-2013', known: 'read' } as const
const ratio =
  'to the whole number printed; the logarithms it follows from are printed with two or three decimals'

type Part = Parameters<typeof weighed>[2]
const bronze = (seen: (typeof signs)[number], ...looked: readonly string[]): Part => ({
  material: 'bronze',
  seen: [seen],
  ...(looked.length > 0 ? { looked } : {}),
})
/** The sources behind the odds of a rival before anybody looks. */
const priorsOf = (of: string, rival: string): Backing => ({
  sources: rivalOf(of, rival).priors.flatMap(({ sources }) => sources),
})

describe('blue and pale blue', () => {
  printed(
    {
      check: 'corrosion 63, weighed',
      work: 'wang-2020',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'pale blue powder is not bronze disease by default',
    },
    () => {
      const found = weighed('blue-green-powder', {}, bronze('pale-blue-powder'))
      expect(leader(found)).not.toBe(active)
      expect(share(found, active)).toBeLessThan(0.25)
      return priorsOf('blue-green-powder', 'organic-acid-corrosion')
    },
  )

  printed(
    {
      check: 'sodium copper formate beside glass',
      ...glassAndMetal,
      tolerance: wholeNumber,
      says: 'half of 250 cases beside glass; with it the glass leads',
    },
    () => {
      const share50 = figure('glass-metal-formate-share')
      const cases = figure('glass-metal-cases')
      expect([share50.value, cases.value]).toEqual([50, 250])
      // What the tables expect of diffraction where glass is the cause: no other mineral is as frequent.
      const group = matter('blue-green-powder').groups.find(({ id }) => id === 'minerals')!
      const graded = group.states.filter(({ fits }) => fits['glass-alkali-product'] === 'frequent')
      expect(graded.map(({ id }) => id)).toEqual(['alkali-formate'])
      const found = weighed(
        'blue-green-powder',
        { tests: ['xrd:sodium-copper-formate'] },
        bronze('pale-blue-powder'),
      )
      expect(leader(found)).toBe('glass-alkali-product')
      return [share50, cases]
    },
  )

  printed(
    {
      check: 'corrosion 37, weighed',
      work: 'paterakis-2003',
      place: 'section read',
      known: 'read',
      tolerance: inWords,
      says: 'copper acetates in wooden cupboards come of their vapour',
    },
    () => {
      const find = { packed_in: ['wood'], tests: ['xrd:sodium-copper-carbonate-acetate'] } as const
      const found = weighed('blue-green-powder', find, bronze('pale-blue-powder'))
      expect(leader(found)).toBe('organic-acid-corrosion')
      expect(found.standing).toMatch(/probable|settled/)
      return stateOf('blue-green-powder', 'minerals', 'formate-or-acetate')
    },
  )

  printed(
    {
      check: 'chalconatronite of soda treatment',
      work: 'mindat-chalconatronite',
      place: 'entry',
      known: 'read',
      tolerance: inWords,
      says: 'sesquicarbonate on copper alloy can leave chalconatronite',
    },
    () => {
      const find = { done_already: ['desalinated'], tests: ['xrd:chalconatronite'] } as const
      const found = weighed('blue-green-powder', find, bronze('pale-blue-powder'))
      expect(leader(found)).toBe('soda-treatment-residue')
      return stateOf('blue-green-powder', 'minerals', 'soda-carbonate')
    },
  )

  printed(
    {
      check: 'open texts 9',
      ...databases,
      place: 'malachite and azurite',
      tolerance: 'to three figures of the printed atmospheres, in pascals of 101325 each',
      says: 'azurite wants 0.74 to 1.80 atmospheres of carbon dioxide',
    },
    () => {
      const ends = ['azurite-carbon-dioxide-low', 'azurite-carbon-dioxide-high'].map(figure)
      expect(ends[0]!.value / 101_325).toBeCloseTo(0.74, 2)
      expect(ends[1]!.value / 101_325).toBeCloseTo(1.8, 2)
      return ends
    },
  )

  printed(
    {
      check: 'open texts A30, weighed',
      work: 'maish-2017',
      place: 'chapter 41',
      known: 'read',
      tolerance: inWords,
      says: 'azurite is thicker inside a closed head than outside',
    },
    () => {
      const at = (place: string) =>
        share(
          weighed('deep-blue', {}, bronze('deep-blue-crust', `blue-crust-place:${place}`)),
          'azurite-crust',
        )
      expect(at('inside-a-hollow')).toBeGreaterThan(at('open-face'))
      return stateOf('deep-blue', 'place', 'inside-a-hollow')
    },
  )

  printed(
    {
      check: 'corrosion 55, weighed on copper',
      work: 'mcgowan-prangnell-2006',
      place: null,
      known: 'second-hand',
      tolerance: inWords,
      says: 'white that turns blue in air is vivianite, of soaked ground',
    },
    () => {
      const find = { burial: ['waterlogged'] } as const
      const found = weighed('deep-blue', find, bronze('deep-blue-crust', 'blue-since:turned-blue-in-air'))
      expect(leader(found)).toBe('phosphate-waterlogged')
      return stateOf('deep-blue', 'since', 'turned-blue-in-air')
    },
  )
})

describe('ground, fire and age', () => {
  const saltAgainstCarbonate = (burial: 'saline' | 'calcareous') => {
    const found = weighed('compact-green', { burial: [burial] }, bronze('compact-green'))
    return share(found, 'stable-chloride-crust') / share(found, 'carbonate-patina')
  }

  for (const { end, place, value } of [
    { end: 'low', place: 'wateq4f, atacamite and malachite', value: 155 },
    { end: 'high', place: 'minteq.v4, atacamite and malachite', value: 233 },
  ]) {
    printed(
      {
        check: `open texts 8, ${end}`,
        ...databases,
        place,
        tolerance: ratio,
        says: `atacamite beats malachite from ${value} times as much chloride as bicarbonate: salt ground, not any ground`,
      },
      () => {
        const line = figure(`atacamite-chloride-ratio-${end}`)
        expect(line.value).toBe(value)
        expect(
          rivalOf('compact-green', 'stable-chloride-crust').priors.flatMap(({ figures }) => figures),
        ).toContain(line.id)
        expect(saltAgainstCarbonate('saline')).toBeGreaterThan(2 * saltAgainstCarbonate('calcareous'))
        return line
      },
    )
  }

  printed(
    {
      check: 'marine signature, weighed',
      ...chapter38,
      tolerance: inWords,
      says: 'chlorides with sulphides beneath are what the sea leaves',
    },
    () => {
      const crust = bronze('compact-green', 'chip-below:black-layer')
      const find = { burial: ['marine'], tests: ['xrd:clinoatacamite+chalcocite+covellite'] } as const
      expect(leader(weighed('compact-green', find, crust))).toBe('marine-signature')
      expect(
        share(weighed('compact-green', { burial: ['clay'] }, bronze('compact-green')), 'marine-signature'),
      ).toBeLessThan(0.05)
      return [
        stateOf('compact-green', 'minerals', 'copper-sulphide'),
        stateOf('compact-green', 'below', 'black-layer'),
      ]
    },
  )

  printed(
    {
      check: 'open texts 65, section',
      work: 'northover-2017',
      place: 'chapter 40',
      known: 'read',
      tolerance: inWords,
      says: 'fine red oxide within the metal is of a past fire',
    },
    () => {
      const found = weighed('red-layer', {}, bronze('red-layer', 'red-section:fine-oxide-inside-metal'))
      expect(leader(found)).toBe('fire-affected')
      return stateOf('red-layer', 'section', 'fine-oxide-inside-metal')
    },
  )

  printed(
    {
      check: 'corrosion 54, red',
      work: 'fell-2004',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'tenorite with the red, out of burnt ground, is of fire',
    },
    () => {
      const find = { burial: ['ash-burnt'], tests: ['xrd:tenorite+cuprite'] } as const
      const seen = { material: 'bronze', seen: ['red-layer', 'black-layer'] } as const
      expect(leader(weighed('red-layer', find, seen))).toBe('fire-affected')
      return stateOf('red-layer', 'minerals', 'tenorite')
    },
  )

  printed(
    {
      check: 'open texts A32, weighed',
      work: 'anderson-2017',
      place: 'chapter 47',
      known: 'read',
      tolerance: inWords,
      says: 'a jumbled crust without red speaks for a green put on; thickness is not asked',
    },
    () => {
      const at = (answer: string) =>
        share(
          weighed('compact-green', {}, bronze('compact-green', `chip-below:${answer}`)),
          'artificial-green',
        )
      expect(at('jumbled-crust')).toBeGreaterThan(10 * at('red-then-metal'))
      return stateOf('compact-green', 'below', 'jumbled-crust')
    },
  )

  printed(
    {
      check: 'open texts A33, weighed',
      work: 'anderson-2017',
      place: 'chapter 47',
      known: 'read',
      tolerance: inWords,
      says: 'no corrosion at all is a strong hint against age, and not proof',
    },
    () => {
      const bare = bronze('bare-metal', 'bare-look:all-over-like-new', 'bare-marks:no-crust-anywhere')
      const found = weighed('bare-metal', {}, bare)
      expect(leader(found)).toBe('never-buried')
      expect(found.standing).not.toBe('settled')
      return stateOf('bare-metal', 'lens', 'no-crust-anywhere')
    },
  )

  printed(
    {
      check: 'green of base silver',
      work: 'leiza-thesaurus',
      place: 'AD789F',
      known: 'read',
      tolerance: inWords,
      says: 'silver alloys add the products of copper to those of silver',
    },
    () => {
      const base = { material: 'base-silver', seen: ['green-on-silver'] } as const
      expect(leader(weighed('green-on-silver', {}, base))).toBe('base-silver-corrosion')
      return priorsOf('green-on-silver', 'base-silver-corrosion')
    },
  )
})
