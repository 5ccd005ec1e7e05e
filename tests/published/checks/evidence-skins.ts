import { describe, expect } from 'vitest'
import { failureOf, leader, matter, rivalOf, share, stateOf, weighed } from '../../evidence/at-hand.ts'
import { figure, side } from '../../said.ts'
import { printed } from '../printed.ts'
import { inWords, printedDecimal, wholeNumber } from '../tolerance.ts'

const guidelines = (place: string) => ({ work: 'bourgarit-2025-guidelines', place, known: 'read' }) as const

type Find = Parameters<typeof weighed>[1]
const white = (find: Find, looked: readonly string[] = []) =>
  weighed('white-skin', find, { material: 'copper-alloy', evidence: ['white-metal-sheen'], looked })
const roman = { object_kind: 'brooch', date_from: 50, date_to: 200 } as const

describe('white skins', () => {
  printed(
    {
      check: 'skins: long called silver',
      work: 'meeks-1986',
      place: 'abstract',
      known: 'read',
      tolerance: 'none: silver does not lead, and of the rest none is ruled out',
      says: 'silver-like skins on bronze have long been mislabelled: silver is never the first guess',
    },
    () => {
      const unseen = white({})
      expect(leader(unseen)).not.toBe('silvering')
      expect(share(unseen, 'silvering')).toBeLessThan(0.25)
      for (const id of ['tinning', 'high-tin-surface', 'tin-enriched-corrosion'])
        expect(share(unseen, id)).toBeGreaterThan(0.05)
      expect(share(white({ tests: ['xrf:Cu+Sn'] }), 'silvering')).toBeLessThan(share(unseen, 'silvering'))
      expect(leader(white({ tests: ['xrf:Cu+Ag'] }))).toBe('silvering')
      return rivalOf('white-skin', 'silvering').priors
    },
  )

  printed(
    {
      check: 'skins: Roman and white',
      ...guidelines('chapter I.7, section 1.3.2'),
      tolerance: inWords,
      says: 'a white skin on a small Roman piece of copper alloy: tinned, unless silver is found',
    },
    () => {
      const brooch = white(roman)
      expect(leader(brooch)).toBe('tinning')
      expect(share(brooch, 'tinning')).toBeGreaterThan(4 * share(brooch, 'silvering'))
      expect(share(brooch, 'tinning')).toBeGreaterThan(share(white({}), 'tinning'))
      expect(leader(white({ ...roman, tests: ['xrf:Cu+Ag+Sn'] }))).toBe('silvering')
      return stateOf('white-skin', 'skin-period', 'roman')
    },
  )

  printed(
    {
      check: 'skins: tinned pan',
      work: 'argyropoulos-2017',
      place: 'chapter 38',
      known: 'read',
      tolerance: inWords,
      says: 'black inside a copper pan can be its tinning',
    },
    () => {
      const pan = white({ object_kind: 'vessel' }, ['skin-tone:black', 'skin-place:inside-a-vessel'])
      expect(leader(pan)).toBe('tinning')
      return stateOf('white-skin', 'skin-tone', 'black')
    },
  )

  printed(
    {
      check: 'skins: only oxide left',
      work: 'northover-2017',
      place: 'chapter 40',
      known: 'read',
      tolerance: inWords,
      says: 'free tin corrodes first, then its compounds: oxide alone does not rule tinning out',
    },
    () => {
      const oxide = white({}, ['skin-section:tin-oxide-skin'])
      expect(leader(oxide)).toBe('tin-enriched-corrosion')
      expect(share(oxide, 'tinning')).toBeGreaterThan(0.1)
      return failureOf('white-skin', 'skin-section', 'coat-all-oxide')
    },
  )

  printed(
    {
      check: 'skins: oxide unseen',
      ...guidelines('Table 10; chapter II.7'),
      tolerance: 'half of what it was: a method that sees a thing poorly cannot take more',
      says: 'diffraction sees tin oxide poorly, so not finding it clears nothing',
    },
    () => {
      const empty = white({ tests: ['xrd:malachite'] })
      expect(share(empty, 'tin-enriched-corrosion')).toBeGreaterThan(
        share(white({}), 'tin-enriched-corrosion') / 2,
      )
      return failureOf('white-skin', 'skin-phases', 'oxide-hardly-crystalline')
    },
  )

  printed(
    {
      check: 'skins: arsenic beside lead',
      work: 'epa-6200',
      place: null,
      known: 'second-hand',
      tolerance: wholeNumber,
      says: 'arsenic is unreportable beside ten times as much lead, and lead may be called arsenic',
    },
    () => {
      expect(figure('arsenic-lead-limit')).toMatchObject({ value: 10, unit: 'ratio' })
      const early = { date_from: -2200, date_to: -1800 }
      const withoutIt = white({ ...early, tests: ['xrf:Cu+Pb'] })
      expect(share(withoutIt, 'arsenic-rich-surface')).toBeGreaterThan(0.1)
      const late = white({ date_from: 1200, date_to: 1400, tests: ['xrf:Cu+Pb+As'] })
      expect(leader(late)).not.toBe('arsenic-rich-surface')
      return [
        figure('arsenic-lead-limit'),
        failureOf('white-skin', 'skin-elements', 'arsenic-behind-lead'),
        failureOf('white-skin', 'skin-elements', 'lead-read-as-arsenic'),
      ]
    },
  )
})

const golden = (find: Find, more: Partial<Parameters<typeof weighed>[2]> = {}) =>
  weighed('gold-film', find, { material: 'copper-alloy', evidence: ['gold-coloured-film'], ...more })

describe('golden films', () => {
  printed(
    {
      check: 'skins: films of wet ground',
      work: 'mohr-pseudogilding',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'sulphides from wet ground without air look like gilding; in airy ground they do not form',
    },
    () => {
      const wet = golden({ burial: ['waterlogged'] })
      expect(share(wet, 'sulphide-film')).toBeGreaterThan(0.25)
      expect(share(wet, 'mercury-gilding')).toBeGreaterThan(0.1)
      expect(share(golden({ burial: ['free-draining'] }), 'sulphide-film')).toBeLessThan(0.03)
      expect(
        share(golden({ burial: ['waterlogged'], tests: ['xrf:Cu+S+Fe'] }), 'sulphide-film'),
      ).toBeGreaterThan(0.8)
      return stateOf('gold-film', 'gold-film-ground', 'wet')
    },
  )

  printed(
    {
      check: 'skins: black beneath gold',
      work: 'scott-2002',
      place: 'plates 41-43',
      known: 'read',
      tolerance: inWords,
      says: 'a yellow skin over black over metal, from a river, is a film of sulphide',
    },
    () => {
      const river = golden({ burial: ['freshwater'] }, { looked: ['gold-film-beneath:black'] })
      expect(leader(river)).toBe('sulphide-film')
      expect(share(river, 'sulphide-film')).toBeGreaterThan(0.75)
      return stateOf('gold-film', 'gold-film-beneath', 'black')
    },
  )

  printed(
    {
      check: 'skins: Thames finds',
      work: 'johnson-1991',
      place: 'pp. 396–398',
      known: 'read',
      tolerance: inWords,
      says: 'golden films from the foreshore are met on lead and tin too, and look made',
    },
    () => {
      const pewter = golden({ burial: ['intertidal'] }, { material: 'pewter' })
      expect(leader(pewter)).toBe('sulphide-film')
      expect(leader(golden({ burial: ['intertidal'] }))).toBe('sulphide-film')
      return rivalOf('gold-film', 'sulphide-film').priors
    },
  )

  printed(
    {
      check: 'skins: little mercury',
      work: 'chasen-heginbotham-wolfe-2023',
      place: 'Table 2',
      known: 'read',
      tolerance: printedDecimal,
      says: 'spots accepted as amalgam gilding held from 1.2 % mercury up, so five is no cut-off',
    },
    () => {
      const lowest = figure('gilding-mercury-lowest')
      expect(lowest.value).toBe(1.2)
      expect(figure('gilding-mercury-highest').value).toBe(6.4)
      expect(lowest.value).toBeLessThan(figure('gilding-mercury-old-cut-off').value)
      expect(matter('gold-film').contested).toBe('gilding-mercury')
      const found = { tests: ['xrf:Cu+Au+Hg'] } as const
      const amount = (answer: string) =>
        share(golden(found, { looked: [`mercury-amount:${answer}`] }), 'mercury-gilding')
      expect(share(golden(found), 'mercury-gilding')).toBeGreaterThan(0.8)
      expect(amount('few-per-cent')).toBeGreaterThan(0.9)
      expect(amount('old-cut-off-or-more')).toBeCloseTo(amount('few-per-cent'), 1)
      expect(amount('trace-only')).toBeGreaterThan(0.5)
      return [
        stateOf('gold-film', 'gold-film-elements', 'mercury'),
        side('gilding-mercury', 'chasen-heginbotham-wolfe-2023'),
      ]
    },
  )

  printed(
    {
      check: 'skins: mercury of other origin',
      ...guidelines('chapter I.7, section 1.1.2'),
      tolerance: inWords,
      says: 'cinnabar, polish and quicking leave mercury too; none at all does not prove leaf',
    },
    () => {
      const onWood = weighed(
        'gold-film',
        { tests: ['xrf:Au+Hg'] },
        { material: 'wood', evidence: ['gold-coloured-film'] },
      )
      expect(leader(onWood)).toBe('leaf-gilding')
      const without = golden({ date_from: 600, date_to: 900, tests: ['xrf:Cu+Au'] })
      expect(share(without, 'mercury-gilding')).toBeGreaterThan(0.25)
      return [
        failureOf('gold-film', 'gold-film-elements', 'mercury-from-elsewhere'),
        failureOf('gold-film', 'gold-film-elements', 'mercury-gone'),
      ]
    },
  )

  printed(
    {
      check: 'skins: plated within and beneath',
      ...guidelines('chapter I.7, section 1.1.3'),
      tolerance: inWords,
      says: 'gold beneath and within, in blisters: plating by current, where the date allows it',
    },
    () => {
      const looked = ['gold-film-place:everywhere-made', 'gold-film-edge:blisters']
      expect(share(golden({}, { looked }), 'electroplate')).toBeGreaterThan(
        5 * share(golden({}), 'electroplate'),
      )
      expect(leader(golden({ date_from: 1850, date_to: 1900 }, { looked }))).toBe('electroplate')
      expect(share(golden({ date_from: 600, date_to: 900 }, { looked }), 'electroplate')).toBeLessThan(0.05)
      return stateOf('gold-film', 'gold-film-edge', 'blisters')
    },
  )

  printed(
    {
      check: 'skins: thickness of gold',
      ...guidelines('chapter I.7, sections 1.1 and 1.2'),
      tolerance: printedDecimal,
      says: 'leaf is 0.1–1.2 µm, amalgam 1–10, bonded foil 3–10: they overlap',
    },
    () => {
      expect(figure('leaf-thickness-low').value).toBe(0.1)
      expect(figure('leaf-thickness-high')).toMatchObject({ value: 1.2, unit: 'micrometre' })
      expect(figure('amalgam-thickness-low').value).toBeLessThan(figure('leaf-thickness-high').value)
      expect(figure('amalgam-thickness-high').value).toBe(10)
      expect(figure('diffusion-thickness-low').value).toBe(3)
      return [figure('leaf-thickness-high'), figure('amalgam-thickness-low')]
    },
  )
})

describe('metal in rust', () => {
  const specks = (find: Find, looked: readonly string[] = []) =>
    weighed('bright-in-rust', find, { material: 'iron', evidence: ['bright-specks-in-rust'], looked })

  printed(
    {
      check: 'skins: inlay on the radiograph',
      work: 'toth-2016',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'a pattern that no eye sees is read from the radiograph',
    },
    () => {
      const mount = specks({ object_kind: 'mount' })
      expect(share(mount, 'metal-inlay-in-iron')).toBeLessThan(0.5)
      const plate = specks({ object_kind: 'mount', tests: ['radiograph:bright-lines'] }, [
        'rust-plate:pattern',
      ])
      expect(share(plate, 'metal-inlay-in-iron')).toBeGreaterThan(0.85)
      return stateOf('bright-in-rust', 'bright-plate', 'pattern')
    },
  )

  printed(
    {
      check: 'skins: inlay unseen for decades',
      work: 'national-museum-denmark-stirrup',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'inlay lay unseen under thick rust: a reading that finds only iron does not rule it out',
    },
    () => {
      const find = { object_kind: 'spur', tests: ['xrf:Fe'] } as const
      const only = specks(find)
      expect(share(only, 'metal-inlay-in-iron')).toBeGreaterThan(0.05)
      const shown = specks({ ...find, tests: ['xrf:Fe', 'radiograph:bright-lines'] })
      expect(leader(shown)).toBe('metal-inlay-in-iron')
      return stateOf('bright-in-rust', 'bright-radiograph', 'bright-lines')
    },
  )

  printed(
    {
      check: 'skins: gilding unseen by X-rays',
      ...guidelines('chapter I.7, section 2.7'),
      tolerance: 'half of what it was: what a method cannot see it cannot take away',
      says: 'X-rays show a film only where it is dense and thick enough; leaf they do not show',
    },
    () => {
      const glint = (tests: readonly string[]) =>
        weighed('brassy-glint', { tests }, { material: 'iron', seen: ['brassy-glint'] })
      expect(share(glint(['radiograph:core-solid']), 'gilding')).toBeGreaterThan(
        share(glint([]), 'gilding') / 2,
      )
      return failureOf('brassy-glint', 'glint-radiograph', 'too-thin-for-x-rays')
    },
  )
})
