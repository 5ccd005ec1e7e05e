import { describe, expect } from 'vitest'
import { hiddenShare } from '../../../lib/evidence/depth.ts'
import type { seen as signs } from '../../../lib/record/ids.ts'
import { failureOf, leader, share, stateOf, weighed } from '../../evidence/at-hand.ts'
import { knowledge } from '../../knowledge-at-hand.ts'
import { printed } from '../printed.ts'
import { figure } from '../../said.ts'
import { inWords, wholeNumber } from '../tolerance.ts'

const active = 'active-chloride-corrosion'
const guidelines = { work: 'bourgarit-2025-guidelines', known: 'read' } as const
const chapter38 = { work: 'argyropoulos-2017', place: 'chapter 38', known: 'read' } as const
const tableOfProducts = { work: 'casaletto-basilissi-2017', place: 'table 35.1', known: 'read' } as const

type Part = Parameters<typeof weighed>[2]
const bronze = (seen: (typeof signs)[number], ...looked: readonly string[]): Part => ({
  material: 'bronze',
  seen: [seen],
  ...(looked.length > 0 ? { looked } : {}),
})
const odds = (probability: number) => probability / (1 - probability)

describe('chloride that a test did not find', () => {
  // What diffraction found in five spots of the one fragment from the sea; no nantokite was among it.
  const fragment = 'xrd:tenorite+cuprite+clinoatacamite+paratacamite+malachite+chalcocite+covellite+digenite'

  printed(
    {
      check: 'open texts 4, weighed',
      ...chapter38,
      tolerance: inWords,
      says: 'diffraction without nantokite leaves active chloride where it was',
    },
    () => {
      const sea = { burial: ['marine'] } as const
      const seen = bronze('pale-green-powder')
      const before = share(weighed('pale-green', sea, seen), active)
      const after = weighed('pale-green', { ...sea, tests: [fragment] }, seen)
      expect(leader(after)).toBe(active)
      expect(share(after, active)).toBeGreaterThan(before)
      return failureOf('pale-green', 'minerals', 'missed-at-the-metal')
    },
  )

  printed(
    {
      check: 'open texts 5, asked for',
      ...chapter38,
      tolerance: wholeNumber,
      says: 'a run takes about 15 mg of powder and 20 to 60 minutes',
    },
    () => {
      const run = ['xrd-powder', 'xrd-run-low', 'xrd-run-high'].map(figure)
      expect(run.map(({ value }) => value)).toEqual([15, 20, 60])
      return run
    },
  )

  printed(
    {
      check: 'corrosion 65, weighed on warts',
      work: 'nps-conserve-o-gram-6-3',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'a clear silver nitrate test is no proof of safety',
    },
    () => {
      const seen = bronze('warty-green')
      const after = weighed('warty-green', { tests: ['silver-nitrate:negative'] }, seen)
      expect(leader(after)).toBe(active)
      return failureOf('warty-green', 'chloride-test', 'chloride-shut-in')
    },
  )

  printed(
    {
      check: 'open texts 28, weighed',
      work: 'karnis-vidovic-mille-2017',
      place: 'chapter 43',
      known: 'read',
      tolerance: 'a crust of the printed 600 µm, down to that of a base plate: none lets the line out',
      says: 'beneath such a crust chlorine stays unseen',
    },
    () => {
      const failure = failureOf('compact-green', 'elements', 'under-the-crust')
      if (!('depth' in failure.how)) throw new Error('it is not reckoned from the crust')
      expect(figure('crust-depth-leaded-statue').value).toBe(600)
      expect(failure.how.depth.crustUm[1]).toBe(600)
      expect(hiddenShare(failure.how.depth, knowledge)).toBe(1)
      const seen = bronze('compact-green')
      const clear = share(weighed('compact-green', { tests: ['xrf:Cu'] }, seen), active)
      const before = share(weighed('compact-green', {}, seen), active)
      expect(odds(clear) / odds(before)).toBeGreaterThan(0.5)
      return failure
    },
  )
})

describe('what light green is', () => {
  printed(
    {
      check: 'open texts A5, weighed',
      ...guidelines,
      place: 'chapter I.8 §2',
      tolerance: inWords,
      says: 'small raised mounds of light green are active',
    },
    () => {
      const found = weighed('warty-green', {}, bronze('warty-green', 'green-form:open-warts'))
      expect(leader(found)).toBe(active)
      expect(found.standing).toBe('probable')
      return stateOf('warty-green', 'form', 'open-warts')
    },
  )

  printed(
    {
      check: 'corrosion 23, weighed',
      work: 'scott-1990',
      place: 'section 2',
      known: 'read',
      tolerance: inWords,
      says: 'waxy, grey-green and see-through is nantokite first',
    },
    () => {
      const found = weighed('waxy-green', {}, bronze('waxy-grey-green', 'green-shine:clear-like-candle-wax'))
      expect(leader(found)).toBe(active)
      return stateOf('waxy-green', 'shine', 'clear-like-candle-wax')
    },
  )

  printed(
    {
      check: 'corrosion 22, weighed',
      work: 'scott-1990',
      place: 'section 5',
      known: 'read',
      tolerance: inWords,
      says: 'atacamite in a whole crust is old chloride before it is activity',
    },
    () => {
      const found = weighed(
        'compact-green',
        { tests: ['xrd:atacamite+paratacamite'] },
        bronze('compact-green'),
      )
      expect(leader(found)).toBe('stable-chloride-crust')
      expect(share(found, active)).toBeLessThan(share(found, 'stable-chloride-crust') / 2)
      return stateOf('compact-green', 'minerals', 'basic-chloride')
    },
  )

  printed(
    {
      check: 'open texts A4, weighed',
      ...tableOfProducts,
      tolerance: inWords,
      says: 'each of the basic chlorides in a light green powder counts as a danger',
    },
    () => {
      const before = share(weighed('pale-green', {}, bronze('pale-green-powder')), active)
      for (const phase of ['atacamite', 'paratacamite', 'botallackite']) {
        const found = weighed('pale-green', { tests: [`xrd:${phase}`] }, bronze('pale-green-powder'))
        expect(share(found, active), phase).toBeGreaterThan(before)
      }
      return stateOf('pale-green', 'minerals', 'basic-chloride')
    },
  )

  printed(
    {
      check: 'open texts 62, weighed',
      ...guidelines,
      place: 'chapter I.4 §1.2',
      tolerance: inWords,
      says: 'a line along a seam is flux or braze first, with zinc surely',
    },
    () => {
      const line = bronze('raised-green-along-seam')
      expect(leader(weighed('green-seam', {}, line))).toBe('solder-or-flux-line')
      const whole = bronze('raised-green-along-seam', 'seam-line:whole-joint-evenly')
      const zinc = weighed('green-seam', { tests: ['xrf:Cu+Zn'] }, whole)
      expect(zinc.standing).toMatch(/probable|settled/)
      expect(share(zinc, active)).toBeLessThan(0.05)
      return [stateOf('green-seam', 'elements', 'zinc'), stateOf('green-seam', 'line', 'whole-joint-evenly')]
    },
  )

  printed(
    {
      check: 'open texts 63',
      ...guidelines,
      place: 'chapter I.8, caption of figure 314',
      tolerance: inWords,
      says: 'a pale hard crust on a leaded alloy is not activity',
    },
    () => {
      const pale = bronze('compact-green', 'crust-colour:pale-to-white')
      const found = weighed('compact-green', { tests: ['xrf:Cu+Pb+Sn'] }, pale)
      expect(leader(found)).toBe('leaded-alloy-patina')
      const dark = bronze('compact-green', 'crust-colour:mid-to-dark-green')
      expect(share(weighed('compact-green', {}, dark), 'leaded-alloy-patina')).toBeLessThan(0.05)
      return stateOf('compact-green', 'colour', 'pale-to-white')
    },
  )

  printed(
    {
      check: 'open texts A21, weighed',
      ...guidelines,
      place: 'chapter I.8, note 32',
      tolerance: inWords,
      says: 'an oiled bronze with greasy green has soaps',
    },
    () => {
      const greasy = weighed(
        'pale-green',
        { done_already: ['oiled'] },
        bronze('pale-green-powder', 'green-form:greasy-lumps'),
      )
      expect(leader(greasy)).toBe('copper-soap')
      expect(greasy.standing).toMatch(/probable|settled/)
      return stateOf('pale-green', 'form', 'greasy-lumps')
    },
  )

  printed(
    {
      check: 'open texts A22, weighed',
      ...guidelines,
      place: 'chapter I.8, captions of figures 330 and 331',
      tolerance: inWords,
      says: 'green and white out of the pores of a casting with core are its salts',
    },
    () => {
      const pores = bronze('pale-green-powder', 'green-beside:opening-to-core')
      expect(leader(weighed('pale-green', {}, pores))).toBe('core-salt-efflorescence')
      const white = bronze('salt-bloom', 'green-beside:opening-to-core')
      expect(leader(weighed('salt-bloom', {}, white))).toBe('core-salt-efflorescence')
      return stateOf('pale-green', 'beside', 'opening-to-core')
    },
  )

  printed(
    {
      check: 'open texts A3, weighed',
      work: 'casaletto-basilissi-2017',
      place: 'section “Bronze disease”',
      known: 'read',
      tolerance: inWords,
      says: 'pits grow under the crust first: seen on a radiograph they speak for active chloride',
    },
    () => {
      const seam = bronze('raised-green-along-seam')
      const pits = bronze('raised-green-along-seam', 'green-radiograph:pits-under-crust')
      expect(leader(weighed('green-seam', {}, seam))).not.toBe(active)
      expect(leader(weighed('green-seam', {}, pits))).toBe(active)
      return stateOf('green-seam', 'beneath', 'pits-under-crust')
    },
  )

  printed(
    {
      check: 'open texts 1, watched',
      work: 'scott-1990',
      place: 'section 5',
      known: 'read',
      tolerance: 'exact: a printed line, tried one above and one below',
      says: 'quiet for long above 46 % speaks against active chloride; below it, or for days, it says nothing',
    },
    () => {
      expect(figure('bronze-most-rh-high').value).toBe(46)
      const seen = { material: 'bronze', seen: ['pale-green-powder', 'no-change-seen'] } as const
      const at = (percent: number, days: number) =>
        share(weighed('pale-green', { stored_rh_percent: percent, watched_days: days }, seen), active)
      const long = figure('watch-days').value
      const unwatched = share(weighed('pale-green', {}, bronze('pale-green-powder')), active)
      expect(at(47, long)).toBeLessThan(at(45, long))
      expect(at(45, long)).toBeCloseTo(unwatched, 1)
      expect(at(47, long - 1)).toBeCloseTo(unwatched, 1)
      return stateOf('pale-green', 'watched', 'long-in-damp-air')
    },
  )
})
