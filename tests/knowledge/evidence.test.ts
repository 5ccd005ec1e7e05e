import { describe, expect, test } from 'vitest'
import type { FlawCode } from '../../lib/knowledge/flaw.ts'
import { flawLine } from '../../lib/wording/flaws.ts'
import { compiled, flawsOf as flawsOfContent, type Changes } from './small-content.ts'
import { evidenceFiles } from './small-evidence.ts'

const matterFile = 'evidence/white-skin.yaml'
const flawsOf = <Code extends FlawCode>(code: Code, changes: Changes) =>
  flawsOfContent(code, changes, evidenceFiles).map(({ about }) => about)
const inMatter = (...pairs: (readonly [string, string])[]): Changes => ({ [matterFile]: pairs })

describe('compiled evidence', () => {
  const { knowledge, flaws, used } = compiled({}, evidenceFiles)
  const matter = knowledge.matters['white-skin']!

  test('has no flaw, and counts works and figures as used', () => {
    expect(flaws.map(flawLine)).toEqual([])
    expect([...used.figures]).toEqual(expect.arrayContaining(['thin-crust', 'thick-crust', 'long-time']))
    expect([...used.works]).toContain('remembered-1997')
  })

  test('a state of a question is the answer of that name, a state of its own its cells', () => {
    expect(matter.groups[0]!.states[0]!.when).toEqual([{ fact: 'looked.skin-edge', any: ['lifting-edge'] }])
    expect(matter.groups[1]!.states[0]!.when).toEqual([{ fact: 'xrf', any: ['Ag'] }])
  })

  test('priors, what would be settled, and ways to go wrong are linked', () => {
    expect(matter.rivals[0]!.priors.map(({ when, odds }) => [when, odds])).toEqual([
      [[{ fact: 'material', any: ['bronze'] }], 'usual'],
      [[], 'common'],
    ])
    expect(matter.rivals[0]!.settled).toEqual({
      part: { role: 'coating', material: 'tin' },
      seen: ['grey-skin'],
      tests: ['xrf:Sn'],
    })
    expect(matter.rivals[1]!.settled).toBeNull()
    expect(matter.groups[1]!.failures.map(({ how, of, as }) => ({ how, of, as }))).toEqual([
      {
        how: { depth: { line: 'Sn La1', through: 'cassiterite', crustUm: [20, 200] } },
        of: null,
        as: 'rest',
      },
      { how: { grade: 'occasional' }, of: ['silvering'], as: 'tin' },
    ])
    expect(matter.groups[1]!.failures[0]!.figures).toEqual(['thick-crust', 'thin-crust'])
  })

  test('methods count in minutes, and are known as the weaker of their figures', () => {
    expect(knowledge.methods['xrf']!.minutes).toEqual({
      setUp: 5,
      each: 120,
      figures: ['long-time', 'short-time'],
      known: 'memory',
    })
  })
})

describe('a slip in a matter', () => {
  test('in a key, a code, a question, an answer, a method', () => {
    expect(flawsOf('unknown-key', inMatter(['says: it lifts', 'sais: it lifts']))).toEqual([
      { key: 'states.0.sais', near: 'says' },
    ])
    expect(flawsOf('unknown-id', inMatter(['by: xrd', 'by: xdr']))).toEqual([
      { kind: 'method', id: 'xdr', near: null },
    ])
    expect(flawsOf('unknown-id', inMatter(['question: skin-edge', 'question: skin-egde']))).toEqual([
      { kind: 'question', id: 'skin-egde', near: 'skin-edge' },
    ])
    expect(flawsOf('unknown-id', inMatter(['{ id: thin-edge,', '{ id: thin-egde,']))).toEqual([
      { kind: 'question-answer', id: 'thin-egde', near: 'thin-edge' },
    ])
    const codes = { 'vocabulary/codes-evidence-small.yaml': [['id: silvering', 'id: silvred']] } as const
    expect(flawsOf('unknown-id', codes)).toEqual([{ kind: 'code', id: 'silvering', near: null }])
  })

  test('in an observation, a fact, a value', () => {
    expect(flawsOf('unknown-id', inMatter(['white-metal-sheen', 'white-metal-shine']))).toEqual([
      { kind: 'observation', id: 'white-metal-shine', near: 'white-metal-sheen' },
    ])
    expect(flawsOf('one-of', inMatter(['{ evidence: white-metal-sheen }', '{}']))).toEqual([
      { wants: ['evidence', 'seen'], found: [] },
    ])
    expect(flawsOf('unknown-id', inMatter(['when: { material:', 'when: { metal:']))).toMatchObject([
      { kind: 'fact', id: 'metal' },
    ])
    expect(flawsOf('unknown-value', inMatter(['[bronze]', '[bronz]']))).toEqual([
      { fact: 'material', value: 'bronz', near: 'bronze' },
    ])
  })

  test('in what would be settled', () => {
    const flaws = flawsOf(
      'unknown-id',
      inMatter([
        'role: coating, material: tin }, seen: [grey-skin], tests: ["xrf:Sn"]',
        'role: coat, material: tim }, seen: [gray-skin], tests: ["xfr:Sn"]',
      ]),
    )
    expect(flaws).toMatchObject([
      { kind: 'role' },
      { kind: 'material' },
      { kind: 'observation' },
      { kind: 'test' },
    ])
  })

  test('in the name of the file', () => {
    expect(flawsOf('matter-file', inMatter(['matter: white-skin', 'matter: white-coat']))).toEqual([
      { matter: 'white-coat', expected: 'white-skin' },
    ])
  })

  test('digits in a sentence', () => {
    expect(flawsOf('digits', inMatter(['says: it lifts', 'says: it lifts by 2 mm']))).toHaveLength(1)
  })
})

describe('grades', () => {
  test('stand for every rival and for nobody else', () => {
    expect(
      flawsOf('grade-missing', inMatter(['{ tinning: rare, silvering: frequent,', '{ silvering: frequent,'])),
    ).toEqual([{ at: 'white-skin/skin-edge/lifting-edge', rival: 'tinning' }])
    expect(
      flawsOf(
        'unknown-id',
        inMatter([
          '{ tinning: rare, silvering: frequent,',
          '{ tinning: rare, gilding: rare, silvering: frequent,',
        ]),
      ),
    ).toMatchObject([{ kind: 'rival', id: 'gilding' }])
    expect(
      flawsOf(
        'grade-missing',
        inMatter(['{ says: neither was found, fits: { tinning: rare,', '{ says: neither was found, fits: {']),
      ),
    ).toEqual([{ at: 'white-skin/skin-elements/rest', rival: 'tinning' }])
  })

  test('are words of the five', () => {
    expect(flawsOf('wrong-form', inMatter(['silvering: frequent', 'silvering: often']))).toMatchObject([
      { key: 'states.0.fits.silvering', found: 'often' },
    ])
  })
})

describe('odds', () => {
  test('the last holds always and none before it does', () => {
    expect(
      flawsOf('prior-order', inMatter(['{ odds: common,', '{ when: { material: [brass] }, odds: common,'])),
    ).toEqual([{ rival: 'tinning', last: true }])
    expect(
      flawsOf('prior-order', inMatter(['{ when: { material: [bronze] }, odds: usual', '{ odds: usual'])),
    ).toEqual([{ rival: 'tinning', last: false }])
  })
})

describe('odds that never count', () => {
  test('because earlier ones hold wherever they do', () => {
    const before = (cells: string) =>
      inMatter([
        '      - { odds: common,',
        `      - { when: ${cells}, odds: seldom, because: So., sources: [] }\n      - { odds: common,`,
      ])
    expect(flawsOf('prior-covered', before('{ material: [bronze], burial: [marine] }'))).toEqual([
      { rival: 'tinning', at: 1 },
    ])
    expect(flawsOf('prior-covered', before('{ material: [bronze, brass] }'))).toEqual([])
  })
})

describe('states', () => {
  test('stand once', () => {
    expect(flawsOf('duplicate', inMatter(['{ id: tin, says: tin', '{ id: silver, says: tin']))).toMatchObject(
      [{ kind: 'state', id: 'silver' }],
    )
  })

  test('have cells or a question, not both and not neither', () => {
    expect(
      flawsOf(
        'state-when',
        inMatter(['says: it lifts\n', 'says: it lifts\n        when: { seen: [grey-skin] }\n']),
      ),
    ).toEqual([{ state: 'skin-edge/lifting-edge', question: 'skin-edge' }])
    expect(flawsOf('state-when', inMatter([' when: { xrf: [Sn] },', '']))).toEqual([
      { state: 'skin-elements/tin', question: null },
    ])
  })

  test.each([
    ['the same cells', '{ xrf: [Sn] }', '{ xrf: [Ag] }', true],
    ['narrower cells', '{ xrf: [Sn] }', '{ xrf: [Ag], material: [bronze] }', true],
    ['some of the values', '{ xrf: [Ag] }, fits', '{ xrf: [Ag, Sn] }, fits', true],
    ['other values', '{ xrf: [Sn] }', '{ xrf: [Sn, Ag] }', false],
  ])('%s after an earlier one: never counts is %s', (_, from, to, speaks) => {
    expect(flawsOf('state-covered', inMatter([from, to]))).toEqual(
      speaks ? [{ state: 'skin-elements/tin', by: 'silver' }] : [],
    )
  })

  test('of one single value, being it covers not being another', () => {
    const record = (first: string, second: string) =>
      inMatter(
        ['by: xrf', 'by: record'],
        ['when: { xrf: [Ag] }', `when: { material: ${first} }`],
        ['when: { xrf: [Sn] }', `when: { material: ${second} }`],
      )
    expect(flawsOf('state-covered', record('{ none: [brass] }', '[bronze]'))).toHaveLength(1)
    expect(flawsOf('state-covered', record('{ none: [brass] }', '[brass]'))).toEqual([])
  })

  test('read a result of the method that finds them', () => {
    expect(
      flawsOf('state-unmeasured', inMatter(['when: { xrf: [Sn] }', 'when: { seen: [grey-skin] }'])),
    ).toEqual([{ state: 'skin-elements/tin', by: 'xrf', wants: ['xrf'] }])
  })

  test('answer a question that is answered in the same way', () => {
    const question = { 'questions/small.yaml': [['by: eye', 'by: xrf']] } as const
    expect(flawsOf('by-differs', question)).toEqual([
      { group: 'skin-edge', by: 'eye', question: 'skin-edge', of: 'xrf' },
    ])
  })
})

describe('ways to go wrong', () => {
  test('show a state of the group, befall a rival, and say how often', () => {
    expect(flawsOf('unknown-id', inMatter(['as: tin,', 'as: tine,']))).toMatchObject([
      { kind: 'state', id: 'tine' },
    ])
    expect(flawsOf('unknown-id', inMatter(['of: [silvering]', 'of: [silverin]']))).toEqual([
      { kind: 'rival', id: 'silverin', near: 'silvering' },
    ])
    expect(flawsOf('one-of', inMatter([' grade: occasional,', '']))).toEqual([
      { wants: ['grade', 'depth'], found: [] },
    ])
  })

  test('name a line, a matrix and two figures in micrometres, the lower first', () => {
    expect(flawsOf('unknown-id', inMatter(['Sn La1', 'Sn Lb7']))).toMatchObject([{ kind: 'line', id: 'Lb7' }])
    expect(flawsOf('unknown-id', inMatter(['Sn La1', 'Pb La1']))).toMatchObject([
      { kind: 'element', id: 'Pb' },
    ])
    expect(flawsOf('unknown-id', inMatter(['cassiterite', 'malachite']))).toMatchObject([{ kind: 'matrix' }])
    expect(flawsOf('wrong-unit', inMatter(['[thin-crust,', '[iron-ceiling,']))).toEqual([
      { figure: 'iron-ceiling', unit: 'percent', wants: ['micrometre'] },
    ])
    expect(
      flawsOf('empty-range', inMatter(['[thin-crust, thick-crust]', '[thick-crust, thin-crust]'])),
    ).toEqual([{ from: 200, to: 20 }])
  })
})

describe('questions, elements, matrices, methods', () => {
  test('no question writes the answers that all have', () => {
    const none = { 'questions/small.yaml': [['id: thin-edge', 'id: none']] } as const
    expect(flawsOf('standing-answer', none)).toEqual([{ answer: 'none' }])
  })

  test('energies rise, and an edge stands twice at most', () => {
    const falling = { 'elements/small.yaml': [['[4, 1500]', '[3, 1500]']] } as const
    expect(flawsOf('energies-fall', falling)).toEqual([{ element: 'sn', from: 4, to: 3 }])
    const thrice = { 'elements/small.yaml': [['[4, 1500]', '[4, 1500], [4, 1600]']] } as const
    expect(flawsOf('energies-fall', thrice)).toEqual([{ element: 'sn', from: 4, to: 4 }])
  })

  test('mass fractions sum to one, of elements that are there', () => {
    const short = { 'matrices/small.yaml': [['[O, 0.212]', '[O, 0.12]']] } as const
    expect(flawsOf('fractions-sum', short)).toEqual([{ matrix: 'cassiterite', sum: 0.908 }])
    const unknown = { 'matrices/small.yaml': [['[O, 0.212]', '[Xx, 0.212]']] } as const
    expect(flawsOf('unknown-id', unknown)).toMatchObject([{ kind: 'element', id: 'Xx' }])
  })

  test('a method that takes something says so, and its time is in minutes or hours', () => {
    const powder = { 'methods/small.yaml': [['sampling: true', 'sampling: false']] } as const
    expect(flawsOf('harm-differs', powder)).toEqual([
      { method: 'xrd', harm: 'loose-powder', key: 'sampling' },
    ])
    const cut = { 'methods/small.yaml': [['harm: loose-powder', 'harm: cut']] } as const
    expect(flawsOf('harm-differs', cut)).toEqual([{ method: 'xrd', harm: 'cut', key: 'leave' }])
    const days = {
      'methods/small.yaml': [['set-up: short-time, each: long-time', 'set-up: round, each: long-time']],
    } as const
    expect(flawsOf('wrong-unit', days)).toEqual([{ figure: 'round', unit: 'day', wants: ['minute', 'hour'] }])
  })
})
