import { describe, expect, test } from 'vitest'
import { certain } from '../../lib/evidence/standing.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import type { seen as signs } from '../../lib/record/ids.ts'
import { leader, matter, share, weighed } from './at-hand.ts'

const active = 'active-chloride-corrosion'
type Part = Parameters<typeof weighed>[2]
const bronze = (seen: (typeof signs)[number], ...looked: readonly string[]): Part => ({
  material: 'copper-alloy',
  seen: [seen],
  ...(looked.length > 0 ? { looked } : {}),
})

describe('light green on copper alloy', () => {
  test('loose in pits, and back again after it was cleaned off: active chloride, hardly anything else', () => {
    const seen = bronze('pale-green-powder', 'green-form:powder-in-pits', 'green-history:came-back')
    const found = weighed('pale-green', {}, seen)
    expect(leader(found)).toBe(active)
    expect(found.standing).toBe('probable')
  })

  test('nothing but its colour known and a clear silver nitrate test: cannot be told apart', () => {
    const found = weighed('pale-green', { tests: ['silver-nitrate:negative'] }, bronze('pale-green-powder'))
    expect(found.standing).toBe('open')
    expect(share(found, active)).toBeGreaterThan(0.2)
  })

  test('fur on a piece kept in a wooden drawer, its formate named by infrared: the drawer', () => {
    const seen = bronze('pale-green-powder', 'green-form:fur-or-needles', 'green-infrared:formate-or-acetate')
    expect(leader(weighed('pale-green', { packed_in: ['wood'] }, seen))).toBe('organic-acid-corrosion')
  })

  test('beside enamel, with sodium copper formate: the alkali of the enamel', () => {
    const seen = bronze('pale-green-powder', 'green-beside:glass-or-enamel')
    const found = weighed('pale-green', { tests: ['xrd:sodium-copper-formate'] }, seen)
    expect(leader(found)).toBe('glass-alkali-product')
  })

  test('out of the casting holes of a hollow figure: cannot be told from active chloride yet', () => {
    const found = weighed('pale-green', {}, bronze('pale-green-powder', 'green-beside:opening-to-core'))
    expect(found.standing).toBe('open')
    expect(share(found, 'core-salt-efflorescence')).toBeGreaterThan(share(found, active))
  })

  test('hard knobs with red beneath, malachite and no chloride at the metal: the ordinary crust', () => {
    const seen = bronze('warty-green', 'green-form:firm-crust', 'chip-below:red-then-metal')
    expect(leader(weighed('warty-green', { tests: ['xrd:malachite+cuprite'] }, seen))).toBe(
      'carbonate-patina',
    )
  })

  test('mounds with something waxy at their foot: active chloride', () => {
    const seen = bronze('warty-green', 'green-form:open-warts', 'chip-below:waxy-grey')
    expect(leader(weighed('warty-green', {}, seen))).toBe(active)
  })
})

describe('waxy matter, seams and crusts', () => {
  test('waxy in pits under the red: nantokite, settled by eye as far as words can', () => {
    const found = weighed('waxy-green', {}, bronze('waxy-grey-green', 'waxy-place:in-pits-or-under-red'))
    expect(leader(found)).toBe(active)
    expect(share(found, active)).toBeGreaterThanOrEqual(certain)
  })

  test('waxy with drips over crust and soil on a waxed piece: the wax', () => {
    const seen = bronze('waxy-grey-green', 'waxy-place:coat-over-all')
    expect(leader(weighed('waxy-green', { done_already: ['waxed'] }, seen))).toBe('wax-or-resin-left')
  })

  test('a line on the whole joint is flux; the same green away from the joint opens the question again', () => {
    const on = weighed('green-seam', {}, bronze('raised-green-along-seam', 'seam-line:whole-joint-evenly'))
    const beyond = weighed(
      'green-seam',
      {},
      bronze('raised-green-along-seam', 'seam-line:spots-beyond-the-joint'),
    )
    expect(leader(on)).toBe('solder-or-flux-line')
    expect(leader(beyond)).toBe(active)
    expect(beyond.standing).toBe('open')
  })

  test('compact green from salt ground: chloride and carbonate cannot be told apart by colour', () => {
    const seen = bronze('compact-green', 'crust-colour:mid-to-dark-green')
    const found = weighed('compact-green', { burial: ['saline'] }, seen)
    expect(found.standing).toBe('open')
  })

  test('greasy turquoise beside leather: soap', () => {
    const seen = bronze('waxy-turquoise', 'green-beside:leather-fat-or-wax', 'green-shine:greasy')
    expect(leader(weighed('waxy-turquoise', {}, seen))).toBe('copper-soap')
  })
})

describe('blue, red, bare, silver, white', () => {
  test('pale blue all over after a bath, chalconatronite: the bath', () => {
    const find = { done_already: ['desalinated'], tests: ['xrd:chalconatronite'] } as const
    expect(leader(weighed('blue-green-powder', find, bronze('pale-blue-powder')))).toBe(
      'soda-treatment-residue',
    )
  })

  test('glitter in a hollow: azurite; earth by bone that turned blue in the air: vivianite', () => {
    const grains = bronze(
      'deep-blue-crust',
      'blue-look:glittering-grains',
      'blue-crust-place:inside-a-hollow',
    )
    expect(leader(weighed('deep-blue', {}, grains))).toBe('azurite-crust')
    const earth = bronze('deep-blue-crust', 'blue-look:earthy-spots', 'blue-since:turned-blue-in-air')
    expect(leader(weighed('deep-blue', {}, earth))).toBe('phosphate-waterlogged')
  })

  test('red under green is cuprite; red laid bare on a cleaned piece is what cleaning left', () => {
    expect(leader(weighed('red-layer', {}, bronze('red-layer', 'red-lie:under-the-green')))).toBe(
      'cuprite-layer',
    )
    const bare = bronze('red-layer', 'red-lie:over-all-bare')
    expect(leader(weighed('red-layer', { done_already: ['cleaned'] }, bare))).toBe('stripped-surface')
  })

  test('bare and sharp out of soaked ground was kept bright by it', () => {
    const find = { burial: ['waterlogged'] } as const
    const seen = bronze('bare-metal', 'bare-look:smooth-with-old-detail')
    expect(leader(weighed('bare-metal', find, seen))).toBe('anoxic-sulphide')
  })

  test('green on silver: all over it is the alloy, at the edges a plating, against a neighbour a stain', () => {
    const on = (answer: string) =>
      leader(
        weighed(
          'green-on-silver',
          {},
          {
            material: 'silver',
            seen: ['green-on-silver'],
            looked: [`silver-green-lie:${answer}`],
          },
        ),
      )
    expect(on('all-over')).toBe('base-silver-corrosion')
    expect(on('edges-and-wear')).toBe('silvering')
    expect(on('facing-a-neighbour')).toBe('green-from-neighbour')
  })

  test('white needles as it dried are salt of the ground; on glass the first thought is its own alkali', () => {
    const needles = bronze('salt-bloom', 'bloom-look:needles-or-crystals', 'white-bloom-since:as-it-dried')
    expect(leader(weighed('salt-bloom', {}, needles))).toBe('soluble-ground-salt')
    const glass = { material: 'glass', seen: ['salt-bloom'] } as const
    expect(leader(weighed('salt-bloom', {}, glass))).toBe('glass-alkali-product')
  })
})

/** One in thirty is what "rare" means; below it a word would have to say "excluded", and no test of copper alloy may. */
const rare = 1 / 30
/** So much of the odds one negative result may leave at least: less would be as good as clearing. */
const leftByOneNegative = 0.25

describe('what never clears copper alloy', () => {
  const suspects = ['pale-green', 'warty-green', 'waxy-green'] as const
  const others = ['green-seam', 'compact-green', 'blue-green-powder', 'waxy-turquoise'] as const
  const seenOf = (id: string) => bronze(matter(id).about[0]!.value as (typeof signs)[number])
  const negatives = [
    'xrd:malachite+cuprite',
    'xrd:cuprite',
    'xrd:unknown-phase',
    'raman:malachite',
    'raman:cuprite',
    'silver-nitrate:negative',
  ] as const
  const oddsOf = (probability: number) => probability / (1 - probability)

  test.each([...suspects, ...others])(
    '%s: one negative result leaves a quarter of its odds at least',
    (id) => {
      const before = oddsOf(share(weighed(id, {}, seenOf(id)), active))
      for (const result of negatives) {
        const after = oddsOf(share(weighed(id, { tests: [result] }, seenOf(id)), active))
        expect(after / before, result).toBeGreaterThan(leftByOneNegative)
      }
    },
  )

  test.each([...suspects, 'green-seam'])(
    '%s: all of them together leave more than what settles a matter',
    (id) => {
      const all = ['silver-nitrate:negative', 'xrf:Cu', 'oxygen-uptake:none']
      for (const mineral of ['malachite', 'cuprite']) {
        const tests = [...all, `xrd:${mineral}`, `raman:${mineral}`]
        expect(share(weighed(id, { tests }, seenOf(id)), active), mineral).toBeGreaterThan(1 - certain)
      }
    },
  )

  test.each(suspects)('%s: no answer to any question and no result brings it below one in thirty', (id) => {
    for (const group of matter(id).groups) {
      for (const state of group.states) {
        const tests = state.when.flatMap((cell) =>
          'any' in cell && ['xrd', 'raman', 'xrf', 'silver_nitrate', 'oxygen_uptake'].includes(cell.fact)
            ? [`${cell.fact.replace('_', '-')}:${cell.any[0]}`]
            : [],
        )
        const looked = group.question === null ? [] : [`${group.question}:${state.id}`]
        if (tests.length + looked.length === 0) continue
        const found = weighed(id, { tests }, { ...seenOf(id), ...(looked.length > 0 ? { looked } : {}) })
        expect(share(found, active), `${group.id}/${state.id}`).toBeGreaterThan(rare)
      }
    }
  })

  test('every way to miss it is written where it can be missed', () => {
    for (const id of [...suspects, ...others]) {
      for (const group of knowledge.matters[id]!.groups.filter(
        ({ by }) => by === 'xrd' || by === 'chloride-test',
      )) {
        const missing = group.failures.filter(({ of }) => of?.includes(active))
        expect(missing.length, `${id}/${group.id}`).toBeGreaterThan(0)
      }
    }
  })
})
