import { describe, expect } from 'vitest'
import { failureOf, leader, matter, rivalOf, share, stateOf, weighed } from '../../evidence/at-hand.ts'
import { figure } from '../../said.ts'
import { printed } from '../printed.ts'
import { asLine, inWords } from '../tolerance.ts'

type Find = Parameters<typeof weighed>[1]
type Part = Parameters<typeof weighed>[2]

const on = (material: string, seen: string, ...looked: readonly string[]) =>
  ({ material, seen: [seen], looked }) as Part
const phosphate = 'phosphate-waterlogged'

describe('what the ground and the fire left, weighed', () => {
  printed(
    {
      check: 'corrosion 54, on iron',
      work: 'fell-2004',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'a skin of haematite on iron is of a fire, the more so from burnt ground',
    },
    () => {
      const skin = on('iron', 'red-purple-skin')
      const found = weighed('iron-red-purple', { tests: ['xrd:haematite+magnetite'] }, skin)
      expect(leader(found)).toBe('fire-affected')
      const burnt = weighed(
        'iron-red-purple',
        { tests: ['xrd:haematite+magnetite'], burial: ['ash-burnt'] },
        skin,
      )
      expect(share(burnt, 'fire-affected')).toBeGreaterThan(0.9)
      const rust = weighed('iron-red-purple', { tests: ['xrd:goethite+lepidocrocite'] }, skin)
      expect(share(rust, 'fire-affected')).toBeLessThan(0.5)
      return stateOf('iron-red-purple', 'red-minerals', 'haematite')
    },
  )

  printed(
    {
      check: 'corrosion 55, weighed',
      work: 'mcgowan-prangnell-2006',
      place: null,
      known: 'second-hand',
      tolerance: inWords,
      says: 'a white that turns blue in air, from wet ground, is vivianite',
    },
    () => {
      const find: Find = { burial: ['waterlogged'] }
      const found = weighed('blue-powder', find, on('iron', 'blue-powder', 'blue-change:deepened'))
      expect(share(found, phosphate)).toBeGreaterThan(0.95)
      const stays = weighed(
        'blue-powder',
        { burial: ['dry'] },
        on('iron', 'blue-powder', 'blue-change:the-same'),
      )
      expect(share(stays, phosphate)).toBeLessThan(0.5)
      return stateOf('blue-powder', 'blue-change', 'deepened')
    },
  )

  printed(
    {
      check: 'open texts 11, weighed',
      work: 'parkhurst-appelo-2013',
      place: 'wateq4f, vivianite and siderite',
      known: 'read',
      tolerance: 'one decimal, as computed from the printed constants; the shares are the same number',
      says: 'some 1.4 to 1.8 mg of phosphorus a litre is enough: vivianite by itself is no cess pit',
    },
    () => {
      expect([figure('vivianite-phosphate-low').value, figure('vivianite-phosphate-high').value]).toEqual([
        1.4, 1.8,
      ])
      const from = (burial: 'cess' | 'waterlogged' | 'peat') =>
        share(
          weighed('blue-powder', { burial: [burial], tests: ['xrd:vivianite'] }, on('iron', 'blue-powder')),
          phosphate,
        )
      expect(from('waterlogged')).toBe(from('cess'))
      expect(from('peat')).toBe(from('cess'))
      expect(rivalOf('blue-powder', phosphate).priors.at(-1)!.because).toMatch(/no proof of a cess pit/)
      return [figure('vivianite-phosphate-low'), ...rivalOf('blue-powder', phosphate).priors]
    },
  )

  printed(
    {
      check: 'corrosion 56, weighed',
      work: 'saheb-neff-2010',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'siderite or chukanovite on iron speaks of ground without air',
    },
    () => {
      const black = on('iron', 'black-compact-layer')
      const before = share(weighed('iron-black', {}, black), 'anoxic-sulphide')
      for (const phase of ['siderite', 'chukanovite']) {
        const after = weighed('iron-black', { tests: [`xrd:${phase}+magnetite`] }, black)
        expect(share(after, 'anoxic-sulphide')).toBeGreaterThan(2 * before)
        expect(share(after, 'fire-affected')).toBeLessThan(before)
      }
      return stateOf('iron-black', 'black-minerals', 'carbonate')
    },
  )

  printed(
    {
      check: 'corrosion 57, weighed',
      work: 'remazeilles-2013',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'iron sulphides of wet wood give yellow salts and acid on drying',
    },
    () => {
      const bloom = on(
        'iron',
        'pale-yellow-bloom',
        'yellow-since:after-drying',
        'yellow-beside:wood-or-leather',
      )
      const found = weighed('iron-yellow', { burial: ['waterlogged'], tests: ['xrd:jarosite'] }, bloom)
      expect(share(found, 'sulphide-oxidation') + share(found, 'pyrite-decay')).toBeGreaterThan(0.95)
      const black = weighed(
        'iron-black',
        { burial: ['waterlogged'], tests: ['xrd:greigite+mackinawite'] },
        on('iron', 'black-compact-layer'),
      )
      expect(leader(black)).toBe('anoxic-sulphide')
      return [
        stateOf('iron-yellow', 'yellow-minerals', 'jarosite'),
        stateOf('iron-black', 'black-minerals', 'sulphide'),
      ]
    },
  )
})

describe('lead, tin and silver, weighed', () => {
  printed(
    {
      check: 'open texts 10, weighed',
      work: 'parkhurst-appelo-2013',
      place: 'minteq.v4, cerussite and hydrocerussite',
      known: 'read',
      tolerance: 'whole numbers as computed from the printed constants; the shares are the same number',
      says: 'the two lead carbonates change places at 166 or at 3385 ppm: neither tells of air or of sealing',
    },
    () => {
      expect([figure('lead-carbonate-air-low').value, figure('lead-carbonate-air-high').value]).toEqual([
        166, 3385,
      ])
      const raised = {
        'white-on-lead': 'white-powder',
        'white-crust-on-lead': 'white-hard-crust',
        'grey-on-lead': 'grey-skin',
      }
      for (const [of, seen] of Object.entries(raised)) {
        const shares = (phase: string) =>
          weighed(of, { tests: [`xrd:${phase}`] }, on('lead', seen)).rivals.map(({ id, probability }) => [
            id,
            probability,
          ])
        expect(shares('cerussite'), of).toEqual(shares('hydrocerussite'))
      }
      return [figure('lead-carbonate-air-high'), stateOf('white-on-lead', 'white-minerals', 'carbonate-only')]
    },
  )

  printed(
    {
      check: 'corrosion 38, weighed',
      work: 'papers-lead-medals-2017',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'loose white powder on lead kept in wood is of its vapours',
    },
    () => {
      const fur = on('lead', 'white-powder', 'white-look:loose-fur')
      const inWood = weighed('white-on-lead', { packed_in: ['wood'] }, fur)
      expect(leader(inWood)).toBe('organic-acid-corrosion')
      expect(
        share(inWood, 'organic-acid-corrosion') + share(inWood, 'lead-formate-or-acetate'),
      ).toBeGreaterThan(0.9)
      const foam = weighed('white-on-lead', { packed_in: ['inert-foam'] }, fur)
      expect(share(foam, 'organic-acid-corrosion')).toBeLessThan(share(inWood, 'organic-acid-corrosion'))
      return stateOf('white-on-lead', 'white-packing', 'acid-vapours')
    },
  )

  printed(
    {
      check: 'corrosion 31, weighed',
      work: 'tetreault-2003',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'formate found on lead is of vapours; as a film it is thin and darker',
    },
    () => {
      const powder = weighed(
        'white-on-lead',
        { tests: ['xrd:lead-formate+hydrocerussite'] },
        on('lead', 'white-powder'),
      )
      expect(leader(powder)).toBe('lead-formate-or-acetate')
      const film = on('lead', 'grey-skin', 'grey-change:darker-in-case')
      expect(share(weighed('grey-on-lead', {}, film), 'lead-formate-or-acetate')).toBeGreaterThan(
        share(weighed('grey-on-lead', {}, on('lead', 'grey-skin')), 'lead-formate-or-acetate'),
      )
      return [
        stateOf('white-on-lead', 'white-minerals', 'formate-or-acetate'),
        stateOf('grey-on-lead', 'grey-change', 'darker-in-case'),
      ]
    },
  )

  printed(
    {
      check: 'corrosion 61, weighed',
      work: 'dunkle-2004',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'pewter from the sea: black romarchite, white hydroromarchite, abhurite next to the metal',
    },
    () => {
      const sea: Find = { burial: ['marine'] }
      const black = weighed('lead-black', { ...sea, tests: ['xrd:romarchite'] }, on('pewter', 'black-crust'))
      expect(share(black, 'tin-black-oxide')).toBeGreaterThan(0.95)
      const white = weighed(
        'white-on-lead',
        { ...sea, tests: ['xrd:hydroromarchite'] },
        on('pewter', 'white-powder'),
      )
      expect(leader(white)).toBe('tin-corrosion')
      const warts = weighed('tin-warts', { ...sea, tests: ['xrd:abhurite'] }, on('pewter', 'grey-warts'))
      expect(leader(warts)).toBe('marine-signature')
      return [
        stateOf('lead-black', 'black-crust-minerals', 'tin'),
        stateOf('tin-warts', 'wart-minerals', 'chloride'),
      ]
    },
  )

  printed(
    {
      check: 'open texts B18',
      work: 'leiza-thesaurus',
      place: 'CFC44A',
      known: 'read',
      tolerance: asLine,
      says: 'tin pest is listed below 13 °C; nothing but diffraction ever puts it first',
    },
    () => {
      const limit = figure('tin-pest-temperature').value
      expect(limit).toBe(13)
      const looks = [...stateIds('tin-warts', 'wart-look'), 'none']
      const finds: readonly Find[] = [limit, limit + 1].flatMap((stored_temperature_c) =>
        (['marine', 'clay'] as const).flatMap((ground) =>
          (['wood', 'inert-foam'] as const).flatMap((packed) =>
            ['xrf:Sn+Cl', 'xrf:Sn'].map((test) => ({
              stored_temperature_c,
              burial: [ground],
              packed_in: [packed],
              tests: [test],
            })),
          ),
        ),
      )
      const first = finds.flatMap((find) =>
        looks.map((look) => leader(weighed('tin-warts', find, on('tin', 'grey-warts', `wart-look:${look}`)))),
      )
      expect(first).toHaveLength(96)
      expect(first).not.toContain('tin-pest')
      const cold = (stored_temperature_c: number) =>
        share(weighed('tin-warts', { stored_temperature_c }, on('tin', 'grey-warts')), 'tin-pest')
      expect(cold(limit)).toBeGreaterThan(2 * cold(limit + 1))
      return stateOf('tin-warts', 'wart-cold', 'cold')
    },
  )

  printed(
    {
      check: 'corrosion 68, weighed',
      work: 'conservation-distlist',
      place: '1998/1293',
      known: 'read',
      tolerance: inWords,
      says: 'the claim of tin pest needs diffraction; grey tin found makes it',
    },
    () => {
      const found = weighed('tin-warts', { tests: ['xrd:grey-tin'] }, on('tin', 'grey-warts'))
      expect(leader(found)).toBe('tin-pest')
      expect(['probable', 'settled']).toContain(found.standing)
      return stateOf('tin-warts', 'wart-minerals', 'grey-tin')
    },
  )

  printed(
    {
      check: 'corrosion 62, weighed',
      work: 'marchand-2014',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'grey-lavender and waxy on buried silver is its chloride',
    },
    () => {
      const layer = on('silver', 'lavender-grey-waxy')
      expect(leader(weighed('silver-grey', {}, layer))).toBe('silver-chloride')
      expect(
        share(weighed('silver-grey', { tests: ['xrd:chlorargyrite'] }, layer), 'silver-chloride'),
      ).toBeGreaterThan(0.9)
      return stateOf('silver-grey', 'silver-minerals', 'chloride')
    },
  )

  printed(
    {
      check: 'open texts 15, horn silver',
      work: 'parkhurst-appelo-2013',
      place: 'chlorargyrite and acanthite; which file was not noted',
      known: 'read',
      tolerance: 'one decimal, as computed from the printed constants',
      says: 'silver chloride blackens with traces of sulphide: acanthite on a waxy layer does not make it tarnish',
    },
    () => {
      expect(figure('silver-chloride-blackens').value).toBe(16.7)
      const waxy = on('silver', 'lavender-grey-waxy', 'silver-look:thick-and-waxy')
      expect(leader(weighed('silver-grey', { tests: ['xrd:acanthite'] }, waxy))).toBe('silver-chloride')
      return [figure('silver-chloride-blackens'), failureOf('silver-grey', 'silver-minerals', 'blackened')]
    },
  )
})

function stateIds(of: string, group: string): readonly string[] {
  return matter(of)
    .groups.filter(({ id }) => id === group)
    .flatMap(({ states }) => states.map(({ id }) => id))
}
