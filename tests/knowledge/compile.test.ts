import { describe, expect, test } from 'vitest'
import { compile } from '../../lib/knowledge/compile/compile.ts'
import { flawLine } from '../../lib/wording/flaws.ts'
import { allFlaws, compiled, flawsOf } from './small-content.ts'

const rule = (id: string) =>
  compiled()
    .knowledge.decisions.flatMap(({ rules }) => rules)
    .find((one) => one.id === id)!

describe('compiled knowledge', () => {
  test('the small content has no flaw of the compiler', () => {
    expect(compiled().flaws).toEqual([])
  })

  test('decisions stand after those they read', () => {
    expect(compiled().knowledge.decisions.map(({ id }) => id)).toEqual([
      'activity',
      'packing',
      'storage-humidity',
    ])
  })

  test('figures stand as numbers in cells and effects, and in words in sentences', () => {
    expect(rule('damp').when).toEqual([
      { fact: 'stored_rh_percent', interval: { above: 60, figures: ['damp-limit'] } },
    ])
    expect(rule('going-on').then).toEqual({ kind: 'band', to: 20 })
    expect(rule('going-on').text).toBe('Keep it at 20 % or below.')
  })

  test('a single one prints as one', () => {
    const changes = { 'decisions/packing.yaml': [['Keep it dry.', 'Look after {figure:round}.']] } as const
    expect(compiled(changes).knowledge.decisions[1]!.rules[0]!.text).toBe('Look after 1 day.')
  })

  test('the sources of a rule are its own and those of its figures', () => {
    expect(rule('dry-metal').sources).toEqual([
      { work: 'common-practice', place: null, says: 'supports', known: 'common-practice' },
      { work: 'quoted-1998', place: 'p. 2', says: 'supports', known: 'second-hand' },
    ])
  })

  test('a source named twice keeps its weaker mark', () => {
    const changes = {
      'decisions/activity.yaml': [['known: second-hand }]\n    examples', 'known: memory }]\n    examples']],
    } as const
    const damp = compiled(changes).knowledge.decisions[0]!.rules.find(({ id }) => id === 'damp')!
    expect(damp.sources.map(({ known }) => known)).toEqual(['memory'])
  })

  test('a must on a band is a limit, the rest a preference unless said', () => {
    expect([rule('going-on').level, rule('at-rest').level]).toEqual(['limit', 'limit'])
    const unsaid = compiled({ 'decisions/storage-humidity.yaml': [['    level: limit\n', '']] })
    expect(unsaid.knowledge.decisions[2]!.rules.map(({ level }) => level)).toEqual(['preference', 'limit'])
  })

  test('the hash follows the content and not the order of files or keys', () => {
    const hash = compiled().knowledge.hash
    expect(hash).toMatch(/^sha256-[0-9a-f]{64}$/)
    const key = [
      ['{ id: percent, label: percent, printed: "%" }', '{ printed: "%", label: percent, id: percent }'],
    ] as const
    expect(compiled({ 'vocabulary/units.yaml': key }).knowledge.hash).toBe(hash)
    expect(compiled({ 'figures/invented.yaml': [['value: 20', 'value: 21']] }).knowledge.hash).not.toBe(hash)
  })
})

describe('flaws carry file and line', () => {
  test.each([
    [
      'unknown-key',
      { 'works/invented.yaml': [['title: Seen', 'titel: Seen, title: Seen']] },
      'content/works/invented.yaml:2',
    ],
    [
      'missing-key',
      { 'decisions/packing.yaml': [['    because: It rusts.\n', '']] },
      'content/decisions/packing.yaml:10',
    ],
    [
      'wrong-form',
      { 'figures/invented.yaml': [['value: 20', 'value: twenty']] },
      'content/figures/invented.yaml:5',
    ],
    ['unreadable', { 'works/invented.yaml': '- { id: a,\n- b' }, 'content/works/invented.yaml'],
    ['out-of-place', { 'vocabulary/other.yaml': '- a' }, 'content/vocabulary/other.yaml:1'],
    [
      'file-name',
      { 'decisions/packing.yaml': [['decision: packing', 'decision: parcels']] },
      'content/decisions/packing.yaml:2',
    ],
    [
      'digits',
      { 'decisions/packing.yaml': [['text: Keep it dry.', 'text: Keep it below 12 %.']] },
      'content/decisions/packing.yaml:16',
    ],
    [
      'stray-brace',
      { 'decisions/packing.yaml': [['text: Keep it dry.', 'text: Keep {it} dry.']] },
      'content/decisions/packing.yaml:16',
    ],
    [
      'text-missing',
      { 'decisions/packing.yaml': [['    text: Keep it dry.\n', '']] },
      'content/decisions/packing.yaml:10',
    ],
    [
      'unknown-value',
      { 'decisions/packing.yaml': [['when: { activity: [active] }', 'when: { activity: [activ] }']] },
      'content/decisions/packing.yaml:12',
    ],
    [
      'cell-kind',
      {
        'decisions/activity.yaml': [['when: { core: [solid, partial],', 'when: { core: { to: damp-limit },']],
      },
      'content/decisions/activity.yaml:21',
    ],
    [
      'interval-ends',
      { 'decisions/activity.yaml': [['{ above: damp-limit }', '{ above: damp-limit, from: damp-limit }']] },
      'content/decisions/activity.yaml:12',
    ],
    [
      'empty-range',
      { 'decisions/activity.yaml': [['{ above: damp-limit }', '{ above: damp-limit, to: iron-ceiling }']] },
      'content/decisions/activity.yaml:12',
    ],
    [
      'wrong-unit',
      {
        'figures/invented.yaml': [
          ['value: 60\n  as-printed: "60"\n  unit: percent', 'value: 60\n  as-printed: "60"\n  unit: day'],
        ],
      },
      'content/decisions/activity.yaml:12',
    ],
    [
      'then-form',
      { 'decisions/packing.yaml': [['then: { say: iron-kept-dry }', 'then: { answer: iron-kept-dry }']] },
      'content/decisions/packing.yaml:13',
    ],
    [
      'level-form',
      { 'decisions/packing.yaml': [['    strength: should', '    level: warn\n    strength: should']] },
      'content/decisions/packing.yaml:14',
    ],
    [
      'known-better',
      { 'figures/invented.yaml': [['known: memory', 'known: read']] },
      'content/figures/invented.yaml:29',
    ],
    [
      'standing-place',
      { 'decisions/packing.yaml': [['place: null', 'place: p. 1']] },
      'content/decisions/packing.yaml:18',
    ],
    [
      'override-self',
      { 'decisions/packing.yaml': [['    strength: should', '    overrides: [dry]\n    strength: should']] },
      'content/decisions/packing.yaml:14',
    ],
    [
      'cycle',
      { 'decisions/activity.yaml': [['facts: [core,', 'facts: [packing, core,']] },
      'content/decisions/activity.yaml:8',
    ],
    [
      'duplicate',
      {
        'vocabulary/contacts.yaml':
          '- { id: conservator, label: a, means: a }\n- { id: conservator, label: b, means: b }',
      },
      'content/vocabulary/contacts.yaml:2',
    ],
  ] as const)('%s', (code, changes, at) => {
    const lines = flawsOf(code, changes as never).map(flawLine)
    expect(lines.length).toBeGreaterThan(0)
    expect(lines[0]).toContain(at)
  })

  test.each([
    ['work', { 'decisions/packing.yaml': [['work: house-rule', 'work: houserule']] }, 'house-rule'],
    [
      'figure',
      { 'decisions/storage-humidity.yaml': [['rh: { to: iron-ceiling }', 'rh: { to: iron-cieling }']] },
      'iron-ceiling',
    ],
    ['unit', { 'figures/invented.yaml': [['unit: day', 'unit: days']] }, 'day'],
    ['fact', { 'decisions/packing.yaml': [['when: { activity:', 'when: { activty:']] }, 'activity'],
    [
      'answer',
      { 'decisions/activity.yaml': [['then: { answer: quiet }', 'then: { answer: quite }']] },
      'quiet',
    ],
    [
      'code',
      { 'decisions/packing.yaml': [['then: { say: iron-kept-dry }', 'then: { say: iron-kept-drry }']] },
      'iron-kept-dry',
    ],
    [
      'contact',
      { 'decisions/packing.yaml': [['    strength: should', '    call: conservater\n    strength: should']] },
      'conservator',
    ],
    [
      'contested',
      {
        'decisions/packing.yaml': [['    strength: should', '    contested: nothing\n    strength: should']],
      },
      null,
    ],
    [
      'rule',
      { 'decisions/packing.yaml': [['    strength: should', '    overrides: [wet]\n    strength: should']] },
      null,
    ],
    [
      'hazard',
      { 'vocabulary/text-words.yaml': '- { words: [grenade], not: [], hazard: amunition-like }' },
      'ammunition-like',
    ],
  ] as const)('unknown %s, with the nearest that there is', (kind, changes, near) => {
    const flaws = flawsOf('unknown-id', changes as never)
    expect(flaws.map(({ about }) => [about.kind, about.near])).toContainEqual([kind, near])
  })

  test('one entry that cannot be read does not hide the next', () => {
    const broken = compiled({ 'figures/invented.yaml': [['value: 20', 'value: twenty']] })
    expect(Object.keys(broken.knowledge.figures)).toEqual(['damp-limit', 'remembered-ceiling', 'round'])
  })

  test('no content at all is no fault', () => {
    expect(compile([]).flaws).toEqual([])
    expect(compile([{ file: 'content/works/a.yaml', text: '' }]).flaws).toEqual([])
    expect(compile([{ file: 'content/decisions/a.yaml', text: '[1, {' }]).flaws.length).toBeGreaterThan(0)
  })

  test('every flaw found has a sentence', () => {
    const broken = allFlaws({
      'decisions/packing.yaml': [['when: { activity: [active] }', 'when: { activity: [activ], seen: [] }']],
    })
    for (const flaw of broken) expect(flawLine(flaw)).toMatch(/^content.*:\d+ {2}(error|warning) {2}.+[.:]$/)
  })
})
