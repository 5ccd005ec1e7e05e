import { describe, expect, test } from 'vitest'
import { knowledge } from '../knowledge-at-hand.ts'
import { leader, matter, share, weighed } from './at-hand.ts'

type Weighing = Parameters<typeof weighed>

/** Small finds of iron, lead, tin, silver and zinc, and what must come first. */
interface Case {
  readonly name: string
  readonly matter: string
  readonly find: Weighing[1]
  readonly part: Weighing[2]
  readonly first: string
  /** What the first keeps at the least. */
  readonly least?: number
}

const iron = (seen: string, looked: readonly string[] = []) =>
  ({ material: 'iron', seen: [seen], looked }) as Weighing[2]
const of = (material: string, seen: string, looked: readonly string[] = []) =>
  ({ ...iron(seen, looked), material }) as Weighing[2]

const told: readonly Case[] = [
  {
    name: 'brown beads in the cracks of iron are weeping iron',
    matter: 'orange-droplets',
    find: {},
    part: iron('orange-droplets', ['drop-look:amber-beads', 'drop-place:cracks-and-pits']),
    first: 'active-chloride-corrosion',
    least: 0.8,
  },
  {
    name: 'clear dew on bag and find alike is condensation',
    matter: 'orange-droplets',
    find: {},
    part: iron('orange-droplets', ['drop-look:clear-water', 'drop-place:everywhere']),
    first: 'condensation',
  },
  {
    name: 'sticky drops on waxed iron are the wax',
    matter: 'orange-droplets',
    find: { done_already: ['waxed'] },
    part: iron('orange-droplets', ['drop-look:gummy-drops']),
    first: 'coating-residue',
  },
  {
    name: 'a film of lepidocrocite on bare metal is new rust from damp',
    matter: 'orange-spots',
    find: { tests: ['xrd:lepidocrocite'] },
    part: iron('bright-orange-spots', ['spot-place:thin-film-on-metal']),
    first: 'damp-rust',
  },
  {
    name: 'an orange that runs on in the soil is soil',
    matter: 'orange-spots',
    find: {},
    part: iron('bright-orange-spots', ['spot-place:in-the-soil']),
    first: 'soil-stain',
  },
  {
    name: 'a clear film lifting from lacquered iron is the lacquer',
    matter: 'orange-blisters',
    find: { done_already: ['lacquered'] },
    part: iron('dry-orange-blisters', ['blister-shell:clear-film']),
    first: 'coating-residue',
  },
  {
    name: 'cracks full of soil with old crumbs below are old',
    matter: 'iron-cracks',
    find: {},
    part: iron('lamination-cracks', ['crack-walls:soil-filled', 'fresh-debris:old-with-soil']),
    first: 'old-damage-quiet',
  },
  {
    name: 'a net of cracks in waterlogged iron that dries is the drying',
    matter: 'iron-cracks',
    find: { burial: ['waterlogged'], state_now: 'drying' },
    part: iron('lamination-cracks', ['crack-run:like-dried-mud']),
    first: 'drying-damage',
  },
  {
    name: 'orange furry flakes that leave orange scars are active',
    matter: 'iron-flakes',
    find: {},
    part: iron('loose-flakes', ['flake-scar:orange-scar', 'flake-inside:orange-needles']),
    first: 'active-chloride-corrosion',
    least: 0.9,
  },
  {
    name: 'a black of wet ground that went brown in air was sulphide',
    matter: 'iron-black',
    find: { burial: ['waterlogged'] },
    part: iron('black-compact-layer', ['iron-black-change:turned']),
    first: 'anoxic-sulphide',
  },
  {
    name: 'soft black on cast iron from the sea is graphite that kept the shape',
    matter: 'iron-black',
    find: { burial: ['marine'] },
    part: of('cast-iron', 'black-compact-layer', ['iron-black-look:greasy-grey']),
    first: 'marine-signature',
    least: 0.9,
  },
  {
    name: 'an even inky film is an old treatment',
    matter: 'iron-black',
    find: {},
    part: iron('black-compact-layer', ['iron-black-look:inky-film']),
    first: 'tannic-coating',
  },
  {
    name: 'blue beside copper in which copper is found is of the copper',
    matter: 'blue-powder',
    find: { burial: ['free-draining'], tests: ['xrf:Cu+Fe'] },
    part: iron('blue-powder', ['iron-blue-place:beside-copper']),
    first: 'copper-from-neighbour',
  },
  {
    name: 'blue grains that went pink are gel of the box',
    matter: 'blue-powder',
    find: { packed_in: ['with-gel'] },
    part: iron('blue-powder', ['blue-change:turned-pink']),
    first: 'indicator-gel',
  },
  {
    name: 'yellow earth on iron of dry ground is earth',
    matter: 'iron-yellow',
    find: { burial: ['free-draining'] },
    part: iron('pale-yellow-bloom', ['yellow-look:earthy']),
    first: 'soil-stain',
  },
  {
    name: 'a lump of shells from the sea is a concretion round iron',
    matter: 'iron-concretion',
    find: { burial: ['marine'] },
    part: iron('soil-concretion', ['lump-look:shells-or-coral']),
    first: 'marine-signature',
    least: 0.9,
  },
  {
    name: 'firm white that was there when lifted is old carbonate',
    matter: 'white-on-lead',
    find: { packed_in: ['inert-foam'] },
    part: of('lead', 'white-powder', ['white-look:firm-grains', 'white-change:there-when-lifted']),
    first: 'quiet-lead-carbonate',
  },
  {
    name: 'massicot on molten lead of a burnt layer is of the fire',
    matter: 'lead-red-yellow',
    find: { burial: ['ash-burnt'], tests: ['xrd:massicot'] },
    part: of('lead', 'red-yellow-layer', ['fire-signs:melted']),
    first: 'fire-affected',
    least: 0.9,
  },
  {
    name: 'silver split along a bend with a clean face was worked too hard',
    matter: 'silver-cracks',
    find: {},
    part: of('silver', 'brittle-cracks', ['silver-crack-run:at-bends', 'silver-break:bright-smooth']),
    first: 'stress-crack',
  },
  {
    name: 'white where card touched zinc is of the card',
    matter: 'white-on-zinc',
    find: { packed_in: ['cardboard'] },
    part: of('zinc', 'white-powder', ['white-zinc-place:beside-card-or-wood']),
    first: 'organic-acid-corrosion',
  },
]

describe('metals, told apart', () => {
  test.each(told)('$name', ({ matter: id, find, part, first, least = 0.5 }) => {
    const found = weighed(id, find, part)
    expect(leader(found)).toBe(first)
    expect(share(found, first)).toBeGreaterThan(least)
    expect(['likelier', 'probable', 'settled']).toContain(found.standing)
  })
})

describe('metals, not told apart', () => {
  const open: readonly Omit<Case, 'first'>[] = [
    {
      name: 'an ordinary crust from clay',
      matter: 'orange-crust',
      find: { burial: ['clay'] },
      part: iron('orange-brown-crust'),
    },
    {
      name: 'drops on iron beside glass',
      matter: 'orange-droplets',
      find: {},
      part: iron('orange-droplets', ['drop-place:beside-glass']),
    },
    {
      name: 'blue on iron of dry ground',
      matter: 'blue-powder',
      find: { burial: ['free-draining'] },
      part: iron('blue-powder'),
    },
    {
      name: 'dull spots that are the same as a year ago',
      matter: 'orange-spots',
      find: {},
      part: iron('bright-orange-spots', ['iron-change:the-same', 'fresh-debris:old-with-soil']),
    },
  ]
  test.each(open)('$name', ({ matter: id, find, part }) => {
    expect(weighed(id, find, part).standing).toBe('open')
  })
})

describe('what a clear result may not do', () => {
  /** Diffraction, Raman and silver nitrate, in every matter that holds active corrosion of iron possible. */
  const readings = Object.values(knowledge.matters)
    .filter(({ where }) => where.some((cell) => 'any' in cell && cell.any.includes('iron')))
    .filter(({ rivals }) => rivals.some(({ id }) => id === 'active-chloride-corrosion'))
    .flatMap(({ id, groups }) =>
      groups
        .filter(({ by }) => ['xrd', 'raman', 'chloride-test'].includes(by))
        .flatMap(({ id: group, states, rest }) =>
          [...states, { id: 'rest', ...rest }].map((state) => ({
            at: `${id}/${group}/${state.id}`,
            fits: state.fits,
          })),
        ),
    )

  test('no reading is rare or excluded where iron is active', () => {
    expect(readings.length).toBeGreaterThan(40)
    const clearing = readings.filter(({ fits }) =>
      ['rare', 'excluded'].includes(fits['active-chloride-corrosion']!),
    )
    expect(clearing.map(({ at }) => at)).toEqual([])
  })
})

describe('where matters of metals are raised', () => {
  test('white powder on lead and on zinc are two matters', () => {
    expect(() => weighed('white-on-lead', {}, of('zinc', 'white-powder'))).toThrow('raised 0 times')
    expect(() => weighed('white-on-zinc', {}, of('lead', 'white-powder'))).toThrow('raised 0 times')
  })

  test('what is seen on iron is not asked of bronze', () => {
    expect(() => weighed('orange-crust', {}, of('bronze', 'orange-brown-crust'))).toThrow('raised 0 times')
  })

  test('what is settled as active puts the chloride on record', () => {
    for (const id of ['orange-spots', 'iron-cracks', 'iron-flakes', 'orange-crust']) {
      const active = matter(id).rivals.find((rival) => rival.id === 'active-chloride-corrosion')!
      expect(active.settled?.tests, id).toEqual(['xrd:akaganeite'])
    }
  })

  test('what is settled as quiet states nothing that would loosen anything', () => {
    const quiet = ['old-damage-quiet', 'burial-rust-crust', 'quiet-lead-carbonate', 'burial-oxide-layer']
    for (const id of ['orange-spots', 'iron-cracks', 'orange-crust', 'white-on-lead', 'iron-black'])
      for (const rival of matter(id).rivals.filter((one) => quiet.includes(one.id)))
        expect(rival.settled, `${id}/${rival.id}`).toBeNull()
  })
})
