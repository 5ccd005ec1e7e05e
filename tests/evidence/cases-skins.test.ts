import { describe, expect, test } from 'vitest'
import { leader, matter, share, weighed } from './at-hand.ts'

type Weighing = Parameters<typeof weighed>
type Find = Weighing[1]
type Part = Weighing[2]

interface Case {
  readonly name: string
  readonly matter: string
  readonly find: Find
  readonly part: Part
  readonly first: string
  /** What the first keeps at the least. */
  readonly least: number
}

const white = (looked: readonly string[] = [], material: Part['material'] = 'copper-alloy'): Part => ({
  material,
  evidence: ['white-metal-sheen'],
  looked,
})
const golden = (looked: readonly string[] = [], material: Part['material'] = 'copper-alloy'): Part => ({
  material,
  evidence: ['gold-coloured-film'],
  looked,
})
const rusty = (
  evidence: 'bright-specks-in-rust' | 'contrasting-wire' | 'green-stain-in-rust',
  looked: readonly string[] = [],
): Part => ({ material: 'iron', evidence: [evidence], looked })
const medieval = { date_from: 1200, date_to: 1400 }

/** Small finds, and what must come first. */
const told: readonly Case[] = [
  {
    name: 'drips inside a vessel: tinned',
    matter: 'white-skin',
    find: { object_kind: 'vessel', tests: ['xrf:Cu+Sn'] },
    part: white(['skin-place:inside-a-vessel', 'skin-edge:drips-or-wipes']),
    first: 'tinning',
    least: 0.5,
  },
  {
    name: 'white through an old break, without an edge: the metal itself is white',
    matter: 'white-skin',
    find: {},
    part: white(['skin-break:white-through', 'skin-edge:fades-into-the-metal', 'skin-place:on-every-face']),
    first: 'high-tin-surface',
    least: 0.7,
  },
  {
    name: 'a smooth grey-green skin in patches that go with the crust: left by the ground',
    matter: 'white-skin',
    find: medieval,
    part: white([
      'skin-tone:grey-green',
      'skin-place:patches-like-the-crust',
      'skin-edge:fades-into-the-metal',
    ]),
    first: 'tin-enriched-corrosion',
    least: 0.8,
  },
  {
    name: 'lavender with a lifting rim and silver in it: silvered',
    matter: 'white-skin',
    find: { ...medieval, tests: ['xrf:Cu+Ag'] },
    part: white(['skin-tone:lavender', 'skin-edge:lifting-edge']),
    first: 'silvering',
    least: 0.9,
  },
  {
    name: 'arsenic without tin on early metal: rich in arsenic',
    matter: 'white-skin',
    find: { date_from: -2200, date_to: -1800, tests: ['xrf:Cu+As'] },
    part: white(),
    first: 'arsenic-rich-surface',
    least: 0.6,
  },
  {
    name: 'grey only where a pin sat: solder',
    matter: 'white-skin',
    find: { object_kind: 'brooch', tests: ['xrf:Cu+Sn+Pb'] },
    part: white(['skin-place:where-a-part-sat', 'skin-edge:along-a-joint']),
    first: 'solder-or-flux-line',
    least: 0.8,
  },
  {
    name: 'nickel on a modern piece: plated by current',
    matter: 'white-skin',
    find: { date_from: 1880, date_to: 1930, tests: ['xrf:Ni+Cu+Zn'] },
    part: white(),
    first: 'electroplate',
    least: 0.7,
  },
  {
    name: 'a pale film within the rust of a spur: tinned iron',
    matter: 'white-skin-on-iron',
    find: { ...medieval, object_kind: 'spur' },
    part: white(['iron-skin-place:within-the-rust', 'iron-skin-tone:silvery-film'], 'iron'),
    first: 'tinning',
    least: 0.7,
  },
  {
    name: 'frosty crystals and zinc on a modern sheet: galvanised',
    matter: 'white-skin-on-iron',
    find: { date_from: 1900, date_to: 1950, tests: ['xrf:Fe+Zn'] },
    part: white(['iron-skin-tone:spangles-or-white-bloom'], 'iron'),
    first: 'zinc-coat',
    least: 0.9,
  },
  {
    name: 'gold with mercury, worn on high places: gilded with mercury',
    matter: 'gold-film',
    find: { ...medieval, tests: ['xrf:Cu+Au+Hg'] },
    part: golden(['gold-film-edge:worn-on-high-places']),
    first: 'mercury-gilding',
    least: 0.9,
  },
  {
    name: 'a film over old breaks and soil: sulphide',
    matter: 'gold-film',
    find: { burial: ['waterlogged'] },
    part: golden(['gold-film-place:over-breaks-or-soil']),
    first: 'sulphide-film',
    least: 0.75,
  },
  {
    name: 'yellow only where it was scraped, with zinc: the brass itself',
    matter: 'gold-film',
    find: { tests: ['xrf:Cu+Zn'] },
    part: golden(['gold-film-place:only-where-scraped']),
    first: 'brass-surface',
    least: 0.8,
  },
  {
    name: 'a golden shade on silver without gold: tarnish',
    matter: 'gold-film',
    find: { tests: ['xrf:Ag+Cu'] },
    part: golden(['gold-film-edge:no-edge'], 'silver'),
    first: 'tarnish-colour',
    least: 0.8,
  },
  {
    name: 'glitter in wet wood: sulphides of iron',
    matter: 'brassy-glint',
    find: { burial: ['waterlogged'] },
    part: { material: 'wood', seen: ['brassy-glint'], looked: ['glint-form:cubes-or-grains'] },
    first: 'anoxic-sulphide',
    least: 0.9,
  },
  {
    name: 'golden flakes in the soil on a dry knife: mica',
    matter: 'brassy-glint',
    find: { burial: ['free-draining'], object_kind: 'knife' },
    part: {
      material: 'iron',
      seen: ['brassy-glint'],
      looked: ['glint-form:thin-flakes', 'glint-place:in-wood-or-soil-too'],
    },
    first: 'mica-in-soil',
    least: 0.9,
  },
  {
    name: 'pools at the joints of a padlock: brazed',
    matter: 'bright-in-rust',
    find: { object_kind: 'padlock', tests: ['radiograph:dense-specks'] },
    part: rusty('bright-specks-in-rust', ['rust-plate:pools-at-joints', 'bright-colour:yellow']),
    first: 'brazing-or-brass-plating',
    least: 0.8,
  },
  {
    name: 'a line without a step along a blade: a weld',
    matter: 'iron-inlay',
    find: { object_kind: 'knife' },
    part: rusty('contrasting-wire', ['wire-course:along-the-length', 'wire-seat:no-step']),
    first: 'weld-or-slag-line',
    least: 0.7,
  },
  {
    name: 'green that turned blue: iron phosphate',
    matter: 'green-in-rust',
    find: { burial: ['cess'] },
    part: rusty('green-stain-in-rust', ['rust-green-kind:turned-blue']),
    first: 'phosphate-waterlogged',
    least: 0.6,
  },
  {
    name: 'green round one spot of a knife: a rivet',
    matter: 'green-in-rust',
    find: { object_kind: 'knife' },
    part: rusty('green-stain-in-rust', ['rust-green-place:round-one-spot']),
    first: 'copper-alloy-part',
    least: 0.8,
  },
  {
    name: 'a strip that fills a seam of a copper vessel, with lead: solder',
    matter: 'inlay-in-other-metal',
    find: { object_kind: 'vessel', tests: ['xrf:Pb+Sn+Cu'] },
    part: {
      material: 'copper-alloy',
      evidence: ['contrasting-wire'],
      looked: ['wire-seat:in-a-seam', 'wire-course:along-a-joint'],
    },
    first: 'solder-or-flux-line',
    least: 0.85,
  },
]

describe('skins, films and wires', () => {
  test.each(told)('$name', ({ matter: of, find, part, first, least }) => {
    const found = weighed(of, find, part)
    expect(leader(found)).toBe(first)
    expect(share(found, first)).toBeGreaterThan(least)
  })

  const open: readonly [name: string, of: string, find: Find, part: Part][] = [
    ['a grey skin on bronze', 'white-skin', {}, { material: 'bronze', seen: ['grey-skin'] }],
    ['a golden shade on silver', 'gold-film', {}, golden([], 'silver')],
    [
      'bright specks in a buckle',
      'bright-in-rust',
      { object_kind: 'buckle' },
      rusty('bright-specks-in-rust'),
    ],
    ['green in the rust', 'green-in-rust', {}, rusty('green-stain-in-rust')],
  ]
  test.each(open)('%s cannot be told apart yet', (_name, of, find, part) => {
    expect(weighed(of, find, part).standing).toBe('open')
  })

  test('tin found does not part tinning from what the ground leaves; a section does', () => {
    const tin = weighed('white-skin', { tests: ['xrf:Cu+Sn'] }, white())
    expect(share(tin, 'tin-enriched-corrosion')).toBeGreaterThan(0.1)
    expect(share(tin, 'high-tin-surface')).toBeGreaterThan(0.03)
    const cut = weighed('white-skin', {}, white(['skin-section:two-phases-throughout']))
    expect(leader(cut)).toBe('high-tin-surface')
  })

  test('who looked and could not tell knows as much as before', () => {
    const before = weighed('gold-film', {}, golden())
    const after = weighed('gold-film', {}, golden(['gold-film-beneath:unknown', 'gold-film-edge:unknown']))
    expect(after.rivals.map(({ id, probability }) => [id, probability])).toEqual(
      before.rivals.map(({ id, probability }) => [id, probability]),
    )
  })

  test('no skin is asked about on a metal it cannot be news on', () => {
    const raised = (part: Part) => () => weighed('gold-film', {}, part)
    expect(raised(golden([], 'gold'))).toThrow(/0 times/)
    expect(() => weighed('white-skin', {}, white([], 'silver'))).toThrow(/0 times/)
    expect(() => weighed('white-skin', {}, white([], 'iron'))).toThrow(/0 times/)
  })

  test('what a matter states when it is settled names a coat, a joint, an inlay or what adheres', () => {
    const mine = [
      'white-skin',
      'white-skin-on-iron',
      'gold-film',
      'brassy-glint',
      'bright-in-rust',
      'iron-inlay',
      'green-in-rust',
      'inlay-in-other-metal',
    ]
    const roles = mine.flatMap((id) => matter(id).rivals.flatMap(({ settled }) => settled?.part?.role ?? []))
    expect(new Set(roles)).toEqual(new Set(['coating', 'solder', 'inlay', 'adhering', 'rivet']))
  })
})
