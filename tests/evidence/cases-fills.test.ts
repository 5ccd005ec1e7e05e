import { describe, expect, test } from 'vitest'
import { leader, share, weighed } from './at-hand.ts'

type Weighing = Parameters<typeof weighed>
type Part = Weighing[2]

/** Small finds, and what must come first; `open`: the first two cannot be told apart yet. */
const roman = { date_from: 150, date_to: 300 }
const ironAge = { date_from: -450, date_to: -300 }

const lines = (material: 'silver' | 'bronze' | 'iron', more: Partial<Part> = {}): Part => ({
  material,
  evidence: ['black-in-cut-lines'],
  ...more,
})

interface Case {
  readonly name: string
  readonly matter: string
  readonly find: Weighing[1]
  readonly part: Part
  readonly first: string
  /** What the first keeps at the least. */
  readonly least?: number
}

const told: readonly Case[] = [
  {
    name: 'black in lines of silver is likelier niello than all else, before anybody looked closer',
    matter: 'black-fill-in-silver',
    find: {},
    part: lines('silver'),
    first: 'niello',
  },
  {
    name: 'a flush body that keeps to lines cut in silver is niello',
    matter: 'black-fill-in-silver',
    find: roman,
    part: lines('silver', { looked: ['black-sits:flush-body', 'black-spread:design-only'] }),
    first: 'niello',
    least: 0.8,
  },
  {
    name: 'a skin that runs on over plain silver is not',
    matter: 'black-fill-in-silver',
    find: roman,
    part: lines('silver', { looked: ['black-sits:skin-on-floor', 'black-spread:plain-faces'] }),
    first: 'silver-sulphide-tarnish',
  },
  {
    name: 'black in the hollows of silver is tarnish until more is known',
    matter: 'black-in-recesses',
    find: {},
    part: { material: 'silver', evidence: ['black-in-recesses'] },
    first: 'silver-sulphide-tarnish',
    least: 0.5,
  },
  {
    name: 'silver and sulphur in a flush line of bronze are niello',
    matter: 'black-fill',
    find: { ...roman, tests: ['xrf:Cu+Ag+S'] },
    part: lines('bronze', { looked: ['black-sits:flush-body'] }),
    first: 'niello',
  },
  {
    name: 'a black that shines and chips like glass is glass',
    matter: 'black-fill',
    find: {},
    part: lines('bronze', { looked: ['black-sits:flush-body', 'black-look:glass-like'] }),
    first: 'black-enamel',
    least: 0.7,
  },
  {
    name: 'black strips that lift from iron are inlay gone black',
    matter: 'black-fill',
    find: {},
    part: lines('iron', { looked: ['black-sits:proud-or-lifting', 'black-spread:design-only'] }),
    first: 'blackened-inlay',
    least: 0.7,
  },
  {
    name: 'black all over bronze of wet ground is its own sulphide',
    matter: 'black-layer',
    find: { burial: ['waterlogged'], tests: ['xrd:chalcocite+covellite'] },
    part: { material: 'bronze', seen: ['black-layer'] },
    first: 'copper-sulphide',
    least: 0.8,
  },
  {
    name: 'black with burnt bone in it went through the fire',
    matter: 'black-layer',
    find: { burial: ['ash-burnt'] },
    part: { material: 'bronze', seen: ['black-layer'], looked: ['fire-signs:charcoal-or-bone'] },
    first: 'copper-oxide-burnt',
    least: 0.7,
  },
  {
    name: 'manganese beside copper names a black that came with the water',
    matter: 'black-layer',
    find: { burial: ['waterlogged'], tests: ['xrf:Cu+Mn+Fe'] },
    part: { material: 'bronze', seen: ['black-layer'], looked: ['black-layer-edge:spots-and-branches'] },
    first: 'manganese-black',
    least: 0.7,
  },
  {
    name: 'black over waxy grey from the sea is chloride',
    matter: 'black-tarnish',
    find: { burial: ['marine'] },
    part: { material: 'silver', seen: ['black-tarnish'], looked: ['tarnish-look:over-waxy-grey'] },
    first: 'silver-chloride',
  },
  {
    name: 'several colours in a pattern are enamel',
    matter: 'glassy-fill',
    find: {},
    part: {
      material: 'copper-alloy',
      evidence: ['glassy-fill'],
      looked: ['fill-colour:several-in-pattern', 'fill-edge:clings-to-walls'],
    },
    first: 'enamel',
    least: 0.8,
  },
  {
    name: 'warts of the colour of the crust are crust',
    matter: 'glassy-fill',
    find: {},
    part: {
      material: 'copper-alloy',
      evidence: ['glassy-fill'],
      looked: ['fill-colour:as-the-crust', 'fill-surface:warts-or-crystals'],
    },
    first: 'corrosion-fill',
    least: 0.8,
  },
  {
    name: 'a red skin on the metal is copper oxide',
    matter: 'red-fill',
    find: {},
    part: { material: 'copper-alloy', evidence: ['red-fill'], looked: ['red-break:red-by-metal'] },
    first: 'corrosion-fill',
    least: 0.6,
  },
  {
    name: 'clear red set with a seam in gold is stone',
    matter: 'red-fill',
    find: {},
    part: {
      material: 'gold',
      evidence: ['red-fill'],
      looked: ['red-break:deep-clear-red', 'fill-edge:set-with-a-seam'],
    },
    first: 'gemstone',
    least: 0.7,
  },
  {
    name: 'canals under the microscope are bone, whatever the fashion',
    matter: 'white-pegs',
    find: ironAge,
    part: { material: 'bronze', evidence: ['white-pegs'], looked: ['fill-under-microscope:bone-canals'] },
    first: 'bone-or-ivory',
    least: 0.7,
  },
  {
    name: 'colour beneath chalk that clings to its walls is enamel',
    matter: 'chalky-fill',
    find: {},
    part: {
      material: 'copper-alloy',
      seen: ['chalky-fill'],
      looked: ['chalk-below:glass-or-colour', 'fill-edge:clings-to-walls'],
    },
    first: 'enamel',
    least: 0.7,
  },
  {
    name: 'undercut grooves in iron held wire',
    matter: 'empty-cells',
    find: {},
    part: { material: 'iron', evidence: ['empty-cells'], looked: ['cell-shape:narrow-undercut-lines'] },
    first: 'lost-metal-inlay',
    least: 0.8,
  },
  {
    name: 'rainbow leaves, dry and firm below, came from the ground',
    matter: 'glass-skin',
    find: { burial: ['damp'] },
    part: {
      material: 'glass',
      seen: ['iridescence'],
      looked: ['glass-skin:rainbow-leaves', 'glass-feel:dry-and-firm'],
    },
    first: 'buried-glass-weathering',
    least: 0.8,
  },
  {
    name: 'a net of cracks and a wet skin are glass that decays now',
    matter: 'glass-skin',
    find: { date_from: 1650, date_to: 1750 },
    part: {
      material: 'glass',
      seen: ['glass-flaking'],
      looked: ['glass-skin:net-of-cracks', 'glass-feel:wet-or-slippery'],
    },
    first: 'unstable-glass',
    least: 0.8,
  },
  {
    name: 'drops on a cold find that are gone when it is warm are water of the air',
    matter: 'glass-drops',
    find: { state_now: 'damp' },
    part: {
      material: 'enamel',
      seen: ['droplets-on-glass'],
      looked: ['drops-when:after-cold', 'drops-where:glass-and-metal'],
    },
    first: 'condensation',
    least: 0.8,
  },
]

const open: readonly Omit<Case, 'first' | 'least'>[] = [
  {
    name: 'a white peg that is even like chalk',
    matter: 'white-pegs',
    find: {},
    part: { material: 'bronze', evidence: ['white-pegs'], looked: ['peg-surface:even-chalk'] },
  },
  {
    name: 'a black layer on bronze, and nothing looked at',
    matter: 'black-layer',
    find: {},
    part: { material: 'bronze', seen: ['black-layer'] },
  },
  {
    name: 'glass or stone in a gold ring, by eye',
    matter: 'glassy-fill',
    find: { object_kind: 'ring' },
    part: {
      material: 'gold',
      evidence: ['glassy-fill'],
      looked: ['fill-edge:set-with-a-seam', 'fill-surface:flat-facets'],
    },
  },
]

describe('fills and layers, by small cases', () => {
  test.each(told)('$name', ({ matter, find, part, first, least = 0.4 }) => {
    const found = weighed(matter, find, part)
    expect(leader(found)).toBe(first)
    expect(share(found, first)).toBeGreaterThan(least)
    expect(found.standing).not.toBe('open')
  })

  test.each(open)('cannot be told apart yet: $name', ({ matter, find, part }) => {
    expect(weighed(matter, find, part).standing).toBe('open')
  })

  test('the black of silver and of all else is weighed once, never twice', () => {
    expect(() => weighed('black-fill', {}, lines('silver'))).toThrow('0 times')
    expect(() => weighed('black-fill-in-silver', {}, lines('bronze'))).toThrow('0 times')
    expect(() => weighed('black-layer', {}, { material: 'lead', seen: ['black-crust'] })).toThrow('0 times')
  })

  test('a diffraction that finds nothing leaves niello standing', () => {
    const before = share(weighed('black-fill-in-silver', roman, lines('silver')), 'niello')
    const after = share(
      weighed('black-fill-in-silver', { ...roman, tests: ['xrd:quartz'] }, lines('silver')),
      'niello',
    )
    expect(after).toBeGreaterThan(before / 3)
  })
})
