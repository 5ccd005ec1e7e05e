import { describe, expect, test } from 'vitest'
import { planFind } from '../../lib/field/plan-find.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { record, today } from '../record-at-hand.ts'
import { figure } from '../said.ts'
import { leader, matter, methodsFor, share, weighed } from './at-hand.ts'

type Find = Parameters<typeof weighed>[1]
type Part = Parameters<typeof weighed>[2]

const golden = (looked: readonly string[] = [], material: Part['material'] = 'copper-alloy'): Part => ({
  material,
  evidence: ['gold-coloured-film'],
  looked,
})
const white = (looked: readonly string[] = [], material: Part['material'] = 'copper-alloy'): Part => ({
  material,
  evidence: ['white-metal-sheen'],
  looked,
})
const early = { date_from: 600, date_to: 800 } as const

/** Two answers of the eye that agree. Were they taken for certain, nobody would ask before it is rubbed, dipped or picked off. */
const tempting: readonly [name: string, of: string, first: string, find: Find, part: Part][] = [
  [
    'roots in ploughsoil',
    'weave-pattern',
    'living-roots',
    { burial: ['ploughsoil'] },
    {
      material: 'copper-alloy',
      evidence: ['weave-pattern'],
      looked: ['weave-crossing:branching', 'weave-strand:round-root'],
    },
  ],
  [
    'a sulphide film from wet ground',
    'gold-film',
    'sulphide-film',
    { burial: ['waterlogged'] },
    { ...golden(['gold-film-beneath:black', 'gold-film-edge:no-edge']), seen: ['brassy-film'] },
  ],
  [
    'tarnish before a dip',
    'gold-film',
    'tarnish-colour',
    { proposed: ['silver-dip'] },
    golden(['gold-film-edge:no-edge', 'gold-film-place:everywhere-made'], 'silver'),
  ],
  [
    'tarnish in cut lines before a dip',
    'black-fill-in-silver',
    'silver-sulphide-tarnish',
    { proposed: ['silver-dip'] },
    {
      material: 'silver',
      evidence: ['black-in-cut-lines'],
      looked: ['black-spread:every-hollow', 'black-sits:skin-on-floor'],
    },
  ],
  [
    'rust in layers on a strap',
    'leather-like-layer',
    'layered-corrosion',
    {},
    {
      material: 'iron',
      evidence: ['leather-like-layer'],
      looked: ['leather-surface:gritty', 'leather-edge:fades-into-crust'],
    },
  ],
  [
    'layers of a forging',
    'wood-grain',
    'forging-lamination',
    { object_kind: 'tool' },
    {
      material: 'iron',
      evidence: ['wood-grain'],
      looked: ['grain-texture:opens-like-pages', 'grain-in-break:within-the-metal'],
    },
  ],
  [
    'green crust in an enamelled field',
    'glassy-fill',
    'corrosion-fill',
    { object_kind: 'brooch', date_from: 100, date_to: 250 },
    {
      material: 'copper-alloy',
      evidence: ['glassy-fill'],
      looked: ['fill-edge:no-edge', 'fill-colour:as-the-crust'],
    },
  ],
  [
    'silver by its colour and its rim',
    'white-skin',
    'silvering',
    early,
    white(['skin-tone:lavender', 'skin-edge:lifting-edge']),
  ],
]

describe('surfaces that could be lost', () => {
  test.each(tempting)('%s: two answers of the eye settle nothing', (_name, of, first, find, part) => {
    const found = weighed(of, find, part)
    expect(leader(found)).toBe(first)
    expect(found.standing).not.toBe('settled')
    expect(methodsFor(part, find)).not.toEqual([])
  })

  test('no answer of the eye strikes off anything', () => {
    const certainty = Object.values(knowledge.matters).flatMap(({ id, groups }) =>
      groups
        .filter(({ by, question }) => by === 'eye' && question !== null)
        .flatMap((group) =>
          [...group.states, group.rest].flatMap(({ fits }) =>
            Object.values(fits).includes('excluded') && surfaces.has(id) ? [`${id}/${group.id}`] : [],
          ),
        ),
    )
    expect(certainty).toEqual([])
  })
})

const surfaces: ReadonlySet<string> = new Set([
  'white-skin',
  'white-skin-on-iron',
  'gold-film',
  'bright-in-rust',
  'iron-inlay',
  'green-in-rust',
  'black-fill',
  'black-fill-in-silver',
  'black-in-recesses',
  'black-layer',
  'black-tarnish',
  'glassy-fill',
  'red-fill',
  'white-pegs',
  'chalky-fill',
  'empty-cells',
  'glass-skin',
  'weave-pattern',
  'wood-grain',
  'leather-like-layer',
  'fibres',
  'openwork',
  'cut-lines',
])

describe('what a spectrum tells', () => {
  const hg = { ...early, tests: ['xrf:Cu+Au+Hg'] } as const
  const amount = (answer: string) =>
    share(weighed('gold-film', hg, golden([`mercury-amount:${answer}`])), 'mercury-gilding')

  test('mercury under the lowest accepted reading leaves it open; from there up it counts alike', () => {
    expect(amount('trace-only')).toBeGreaterThan(0.5)
    expect(amount('few-per-cent')).toBeGreaterThan(amount('trace-only'))
    expect(amount('few-per-cent')).toBeCloseTo(amount('old-cut-off-or-more'), 2)
  })

  test('the reading is asked for with what each amount would mean; without mercury nothing is left to ask of it', () => {
    const meant = (tests: readonly string[]) =>
      planFind(record({ tests }, golden()), knowledge, { asOf: today, answers: true })
        .requests.filter(({ method }) => method === 'xrf')
        .flatMap(({ means }) => means.map(({ outcome, interpretation }) => `${outcome}: ${interpretation}`))
    const least = `${figure('gilding-mercury-lowest').value} %`
    expect(meant([])).toContain(`mercury was found, less than ${least}: mercury-gilding`)
    expect(meant(['xrf:Cu+Au'])).toEqual([])
  })

  test('much mercury on wood with red beneath is cinnabar as a rule', () => {
    const found = weighed(
      'gold-film',
      { tests: ['xrf:Au+Hg'] },
      golden(['mercury-amount:old-cut-off-or-more', 'gold-film-beneath:red'], 'wood'),
    )
    expect(leader(found)).toBe('leaf-gilding')
  })

  test('gold without mercury: leaf on a Roman piece, open on a later one, less said where it is corroded', () => {
    const none = { tests: ['xrf:Cu+Au'] } as const
    expect(leader(weighed('gold-film', { ...none, date_from: 50, date_to: 200 }, golden()))).toBe(
      'leaf-gilding',
    )
    const later = weighed('gold-film', { ...none, ...early }, golden())
    expect(later.standing).toBe('open')
    const corroded = weighed('gold-film', { ...none, ...early }, { ...golden(), seen: ['warty-green'] })
    expect(share(corroded, 'mercury-gilding')).toBeGreaterThan(share(later, 'mercury-gilding'))
  })

  test('a little zinc on a treated piece is not brass', () => {
    const treated = { done_already: ['cleaned'], burial: ['waterlogged'], tests: ['xrf:Cu+Zn'] } as const
    const of = (looked: readonly string[]) => weighed('gold-film', treated, golden(looked))
    expect(leader(of(['zinc-amount:little']))).toBe('sulphide-film')
    expect(leader(of(['zinc-amount:as-in-brass']))).toBe('brass-surface')
  })

  test('nickel beneath gold speaks for current; a trace of it in bronze makes no plate', () => {
    const beneath = weighed('gold-film', { tests: ['xrf:Cu+Au+Ni'] }, golden())
    const before = weighed('gold-film', {}, golden())
    expect(share(beneath, 'electroplate')).toBeGreaterThan(5 * share(before, 'electroplate'))
    const trace = weighed('white-skin', { tests: ['xrf:Cu+Sn+Ni'] }, white([], 'bronze'))
    expect(share(trace, 'electroplate')).toBeLessThan(0.15)
  })

  test('arsenic that is not found beside much lead stays as likely as it was', () => {
    const axe = { object_kind: 'tool', date_from: -2300, date_to: -1900 } as const
    const beside = weighed('white-skin', { ...axe, tests: ['xrf:Cu+Pb'] }, white())
    const without = weighed('white-skin', { ...axe, tests: ['xrf:Cu'] }, white())
    expect(share(beside, 'arsenic-rich-surface')).toBeGreaterThan(share(without, 'arsenic-rich-surface'))
    expect(beside.standing).not.toBe('settled')
  })
})

describe('one cause counts once', () => {
  test('minerals that say what the section said add little', () => {
    const odds = (tests: readonly string[], looked: readonly string[]) => {
      const found = weighed('white-skin', { tests }, white(looked))
      return Math.log(share(found, 'tinning') / share(found, 'tin-enriched-corrosion'))
    }
    const section = ['skin-section:tin-copper-layers']
    const before = odds([], [])
    const alone = odds(['xrd:cu6sn5'], []) - before
    const after = odds(['xrd:cu6sn5'], section) - odds([], section)
    expect(alone).toBeGreaterThan(2)
    expect(Math.abs(after)).toBeLessThan(alone / 4)
  })

  test('pairs share the states that tell the same', () => {
    const pairs = [
      ['white-skin', 'skin-phases', 'skin-section', 5],
      ['gold-film', 'gold-film-phases', 'gold-film-section', 2],
      ['white-skin-on-iron', 'iron-skin-section', 'iron-skin-elements', 5],
    ] as const
    for (const [id, own, other, least] of pairs) {
      const { groups } = matter(id)
      const group = groups.find((one) => one.id === own)!
      expect(group.sameCauseAs).toBe(other)
      const ids = new Set(groups.find((one) => one.id === other)!.states.map((one) => one.id))
      expect(group.states.filter((one) => ids.has(one.id))).toHaveLength(least)
    }
  })
})

describe('what is asked first', () => {
  const rusty: readonly [string, Find, Part][] = [
    ['a white film on a spur', { object_kind: 'spur' }, white([], 'iron')],
    [
      'specks in a buckle',
      { object_kind: 'buckle' },
      { material: 'iron', evidence: ['bright-specks-in-rust'] },
    ],
    ['a strip in a blade', { object_kind: 'knife' }, { material: 'iron', evidence: ['contrasting-wire'] }],
    [
      'green in a padlock',
      { object_kind: 'padlock' },
      { material: 'iron', evidence: ['green-stain-in-rust'] },
    ],
    ['lines in a buckle', { object_kind: 'buckle' }, { material: 'iron', evidence: ['cut-lines'] }],
    [
      'leather on a buckle',
      { object_kind: 'buckle' },
      { material: 'iron', evidence: ['leather-like-layer'] },
    ],
  ]
  test.each(rusty)('%s: the radiograph, before any cleaning', (_name, find, part) => {
    const { requests } = planFind(record(find, part), knowledge, { asOf: today })
    expect(requests[0]?.method).toBe('x-radiography')
  })

  test('black inside a pan: the microscope before a sample', () => {
    const pan: Part = {
      material: 'copper-alloy',
      seen: ['black-layer'],
      looked: ['black-layer-place:inside-vessel'],
    }
    const methods = methodsFor(pan, { object_kind: 'vessel' })
    expect(methods).toContain('optical-microscopy')
    expect(methods.indexOf('optical-microscopy')).toBeLessThan(methods.indexOf('xrd'))
    const globules = { ...pan, looked: [...pan.looked!, 'skin-texture:globules'] }
    expect(leader(weighed('black-layer', { object_kind: 'vessel' }, globules))).toBe('tinning')
  })

  test('black lines in a Roman mount: niello leads where the ground has air, and nothing where it is unknown', () => {
    const mount = { object_kind: 'mount', date_from: 150, date_to: 300 } as const
    const lines: Part = { material: 'copper-alloy', evidence: ['black-in-cut-lines'] }
    const airy = weighed('black-fill', { ...mount, burial: ['ploughsoil'] }, lines)
    expect(leader(airy)).toBe('niello')
    expect(airy.standing).not.toBe('settled')
    expect(weighed('black-fill', mount, lines).standing).toBe('open')
    expect(leader(weighed('black-fill', { ...mount, burial: ['waterlogged'] }, lines))).toBe(
      'copper-sulphide',
    )
  })

  test('light lines on the plate and resin in the infrared: pitch', () => {
    const lines = (looked: readonly string[]): Part => ({
      material: 'copper-alloy',
      evidence: ['black-in-cut-lines'],
      looked,
    })
    const found = weighed(
      'black-fill',
      {},
      lines(['fill-radiograph:lines-empty', 'fill-infrared:resin-or-wax']),
    )
    expect(leader(found)).toBe('bitumen-or-resin')
    const waxed = weighed(
      'black-fill',
      { done_already: ['waxed'] },
      lines(['fill-radiograph:lines-empty', 'fill-infrared:resin-or-wax']),
    )
    expect(share(waxed, 'bitumen-or-resin')).toBeLessThan(share(found, 'bitumen-or-resin'))
  })
})
