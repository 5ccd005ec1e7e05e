import { describe, expect } from 'vitest'
import { grades } from '../../../lib/evidence/grades.ts'
import { failureOf, leader, matter, rivalOf, share, stateOf, weighed } from '../../evidence/at-hand.ts'
import { exceptions, figure } from '../../said.ts'
import { printed } from '../printed.ts'
import { inWords, wholeNumber } from '../tolerance.ts'

type Part = Parameters<typeof weighed>[2]

const on = (material: string, seen: string, ...looked: readonly string[]) =>
  ({ material, seen: [seen], looked }) as Part
const active = 'active-chloride-corrosion'

/** Matters in which iron may be corroding by chloride, and what raises them. */
const mayBeActive = {
  'orange-droplets': 'orange-droplets',
  'orange-spots': 'bright-orange-spots',
  'orange-blisters': 'dry-orange-blisters',
  'iron-cracks': 'lamination-cracks',
  'iron-flakes': 'loose-flakes',
  'orange-crust': 'orange-brown-crust',
} as const

/** Every result that diffraction can have in a matter, one phase for each state, and one for none of them. */
const phases = (of: string) => [
  ...matter(of)
    .groups.filter(({ by }) => by === 'xrd')
    .flatMap(({ states }) =>
      states.flatMap(({ when }) => when.flatMap((cell) => ('any' in cell ? cell.any : []))),
    ),
  'unnamed-phase',
]

/** Shares of active corrosion after every combination of these results; the untested find first. */
function sharesOfActive(of: keyof typeof mayBeActive, extra: readonly string[]): readonly number[] {
  const part = on('iron', mayBeActive[of])
  const clear = phases(of).filter((phase) => phase !== 'akaganeite')
  return clear.map((phase) => share(weighed(of, { tests: [`xrd:${phase}`, ...extra] }, part), active))
}

describe('corrosion products, weighed', () => {
  printed(
    {
      check: 'open texts 4, on iron',
      work: 'argyropoulos-2017',
      place: 'chapter 38',
      known: 'read',
      tolerance:
        'none below: one in seven, the middle of our word for what is so at times, stays over all results',
      says: 'diffraction that finds no chloride phase clears no iron, nor does a clear silver nitrate test beside it',
    },
    () => {
      const floor = grades.occasional[1]
      expect(floor).toBe(0.15)
      for (const of of Object.keys(mayBeActive) as (keyof typeof mayBeActive)[]) {
        expect(phases(of).length, of).toBeGreaterThan(3)
        expect(
          exceptions(sharesOfActive(of, []), (left) => left >= floor),
          of,
        ).toEqual([])
        expect(
          exceptions(sharesOfActive(of, ['silver-nitrate:negative']), (left) => left >= floor),
          of,
        ).toEqual([])
      }
      return [
        failureOf('orange-crust', 'crust-minerals', 'missed'),
        failureOf('orange-spots', 'spot-minerals', 'missed'),
      ]
    },
  )

  printed(
    {
      check: 'corrosion 65, weighed',
      work: 'nps-conserve-o-gram-6-3',
      place: null,
      known: 'read',
      tolerance: 'none: a clear test leaves more than half of what was thought',
      says: 'a clear silver nitrate test is no proof of safety; a cloud is chloride, and still may be from elsewhere',
    },
    () => {
      const kept = Object.entries(mayBeActive).map(([of, seen]) => {
        const before = share(weighed(of, {}, on('iron', seen)), active)
        const clear = share(weighed(of, { tests: ['silver-nitrate:negative'] }, on('iron', seen)), active)
        const cloud = share(weighed(of, { tests: ['silver-nitrate:positive'] }, on('iron', seen)), active)
        expect(cloud, of).toBeGreaterThan(before)
        expect(cloud, of).toBeLessThan(0.97)
        return clear / before
      })
      expect(exceptions(kept, (part) => part > 0.5)).toEqual([])
      return failureOf('orange-crust', 'crust-chloride', 'shut-in')
    },
  )

  printed(
    {
      check: 'corrosion 67, weighed',
      work: 'serbian-knife-2012',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'goethite and magnetite without akaganeite lean to rest, and do no more than lean',
    },
    () => {
      const crust = on('iron', 'orange-brown-crust')
      const found = weighed('orange-crust', { tests: ['xrd:goethite+magnetite'] }, crust)
      expect(share(found, 'burial-rust-crust')).toBeGreaterThan(
        share(weighed('orange-crust', {}, crust), 'burial-rust-crust'),
      )
      expect(['settled', 'probable']).not.toContain(found.standing)
      const marked = weighed('orange-crust', { tests: ['xrd:goethite+akaganeite'] }, crust)
      expect(leader(marked)).toBe(active)
      return stateOf('orange-crust', 'crust-minerals', 'goethite-magnetite')
    },
  )

  printed(
    {
      check: 'corrosion 28, weighed',
      work: 'rimmer-watkinson-wang-2013',
      place: 'abstract',
      known: 'read',
      tolerance: wholeNumber,
      says: '90 % of untreated iron corroded, 77 % of treated did not: treatment halves the share of active at least, never to nothing',
    },
    () => {
      expect(figure('untreated-corroded-share').value).toBe(90)
      expect(figure('treated-quiet-share').value).toBe(77)
      const crust = on('iron', 'orange-brown-crust')
      const untreated = share(weighed('orange-crust', { done_already: ['none'] }, crust), active)
      const treated = share(weighed('orange-crust', { done_already: ['desalinated'] }, crust), active)
      expect(treated).toBeLessThan(untreated / 2)
      expect(treated).toBeGreaterThan((100 - 77) / 100 / 2)
      return [figure('untreated-corroded-share'), ...rivalOf('orange-crust', active).priors]
    },
  )

  printed(
    {
      check: 'corrosion 13, weighed',
      work: 'watkinson-rimmer-emmerson-2019',
      place: 'abstract',
      known: 'read',
      tolerance: 'exact: the share is the same number',
      says: 'the amount of chloride in the ground foretells nothing for one object',
    },
    () => {
      for (const [of, seen] of Object.entries(mayBeActive)) {
        const shares = [1, 100, 5000].map((soil_chloride_mg_kg) =>
          share(weighed(of, { soil_chloride_mg_kg }, on('iron', seen)), active),
        )
        expect(new Set(shares).size, of).toBe(1)
      }
      return rivalOf('orange-crust', active).priors
    },
  )

  printed(
    {
      check: 'open texts 16',
      work: 'zhang-lyon-1995',
      place: 'sections 6–7',
      known: 'read',
      tolerance: wholeNumber,
      says: 'clean iron wire without chloride rusted out of doors, 14 of 16: new rust on bare metal is not yet chloride',
    },
    () => {
      expect(figure('iron-wire-rusted').value).toBe(14)
      expect(figure('iron-wire-tried').value).toBe(16)
      const film = weighed(
        'orange-spots',
        { tests: ['xrd:lepidocrocite', 'silver-nitrate:negative'] },
        on('iron', 'bright-orange-spots', 'spot-place:thin-film-on-metal'),
      )
      expect(leader(film)).toBe('damp-rust')
      expect(share(film, active)).toBeGreaterThan(0.1)
      return [figure('iron-wire-rusted'), stateOf('orange-spots', 'spot-place', 'thin-film-on-metal')]
    },
  )

  printed(
    {
      check: 'open texts K5, on iron',
      work: 'leiza-thesaurus',
      place: 'BG987D',
      known: 'read',
      tolerance: inWords,
      says: 'weeping is said of glass too: drops beside glass are not taken for weeping iron',
    },
    () => {
      const drops = (...looked: readonly string[]) =>
        weighed('orange-droplets', {}, on('iron', 'orange-droplets', ...looked))
      expect(leader(drops())).toBe(active)
      expect(drops('drop-place:beside-glass').standing).toBe('open')
      expect(share(drops('drop-place:beside-glass'), active)).toBeLessThan(0.5)
      expect(leader(drops('drop-place:beside-glass', 'drop-look:clear-water'))).toBe('glass-alkali-product')
      return stateOf('orange-droplets', 'drop-place', 'beside-glass')
    },
  )
})
