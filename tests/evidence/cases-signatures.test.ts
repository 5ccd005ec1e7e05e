import { describe, expect, test } from 'vitest'
import { leader, share, weighed } from './at-hand.ts'

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

describe('signatures', () => {
  test.each<[string, string, Find, Part, string]>([
    [
      'fire: black with a red to purple skin from burnt ground',
      'iron-black',
      { burial: ['ash-burnt'] },
      iron(['black-compact-layer', 'red-purple-skin']),
      'fire-affected',
    ],
    [
      'fire: fine red oxide within the metal, whatever the ground',
      'red-layer',
      {},
      bronze(['red-layer'], 'red-section:fine-oxide-inside-metal'),
      'fire-affected',
    ],
    [
      'fire: red with black oxide named by diffraction',
      'red-layer',
      { burial: ['ash-burnt'], tests: ['xrd:tenorite'] },
      bronze(['red-layer', 'black-layer']),
      'fire-affected',
    ],
    [
      'fire: black oxide on copper alloy',
      'black-layer',
      { burial: ['ash-burnt'], tests: ['xrd:tenorite'] },
      bronze(['black-layer']),
      'copper-oxide-burnt',
    ],
    [
      'fire: melted lead with yellow',
      'lead-red-yellow',
      { burial: ['ash-burnt'] },
      lead(['red-yellow-layer'], 'fire-signs:melted'),
      'fire-affected',
    ],
    [
      'no air: a sooty film on iron beside wet wood',
      'iron-black',
      { burial: ['waterlogged'] },
      iron(['black-compact-layer'], 'iron-black-look:fine-black-film'),
      'anoxic-sulphide',
    ],
    [
      'no air: bright bronze of a bog with a brassy film',
      'bare-metal',
      { burial: ['peat'] },
      bronze(['bare-metal', 'brassy-film']),
      'anoxic-sulphide',
    ],
    [
      'no air: black lead of wet ground',
      'lead-black',
      { burial: ['waterlogged'] },
      lead(['black-crust']),
      'anoxic-sulphide',
    ],
    [
      'phosphate: white that turned blue, from wet ground without a cess pit',
      'blue-powder',
      { burial: ['waterlogged'] },
      iron(['blue-powder'], 'blue-change:deepened'),
      'phosphate-waterlogged',
    ],
    [
      'sea: shells in the lump',
      'iron-concretion',
      { burial: ['marine'] },
      iron(['soil-concretion'], 'lump-look:shells-or-coral'),
      'marine-signature',
    ],
    [
      'sea: green over black sulphide',
      'compact-green',
      { burial: ['marine'], tests: ['xrd:chalcocite'] },
      bronze(['compact-green']),
      'marine-signature',
    ],
    [
      'sea: pewter with warts',
      'tin-warts',
      { burial: ['marine'] },
      of('pewter', ['grey-warts']),
      'marine-signature',
    ],
    [
      'sea: horn silver',
      'silver-grey',
      { burial: ['marine'] },
      of('silver', ['lavender-grey-waxy']),
      'silver-chloride',
    ],
  ])('%s', (_, id, find, part, first) => {
    expect(leader(weighed(id, find, part))).toBe(first)
  })

  test('green from the sea: three of its explanations hold chloride, and together they lead', () => {
    const found = weighed('compact-green', { burial: ['marine'] }, bronze(['compact-green']))
    const chloride = ['stable-chloride-crust', active, 'marine-signature']
    expect(chloride.reduce((sum, id) => sum + share(found, id), 0)).toBeGreaterThan(0.5)
  })

  test('vivianite is as likely from a bog as from a cess pit', () => {
    const from = (burial: 'cess' | 'peat') =>
      share(weighed('blue-powder', { burial: [burial] }, iron(['blue-powder'])), 'phosphate-waterlogged')
    expect(from('cess')).toBe(from('peat'))
  })
})
