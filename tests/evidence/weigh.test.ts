import { describe, expect, test } from 'vitest'
import { grades, odds, within } from '../../lib/evidence/grades.ts'
import { evenPlaces, mappings, shared } from '../../lib/evidence/places.ts'
import { standingOf } from '../../lib/evidence/standing.ts'
import { weigh, type Weighed } from '../../lib/evidence/weigh.ts'
import type { Group, Matter } from '../../lib/knowledge/evidence.ts'
import { stated, type Fact, type Facts } from '../../lib/record/fact.ts'
import { base, baseOf, edge, facts, fits, prior, skin, state } from './small-base.ts'

const xrf = (...found: readonly string[]): Fact => ({ has: found, may: 'any', said: 'stated' })
const only = (of: Record<string, Fact> = {}, find: Facts = {}, matter: Matter = skin): Weighed =>
  weigh(facts(of, find), baseOf(matter))[0]!
const rivalOf = (weighed: Weighed, id: string) => weighed.rivals.find((rival) => rival.id === id)!

describe('words as numbers', () => {
  test('keep the order of the words, none of the bands of frequency reaching into the next but one', () => {
    for (const bands of [Object.values(grades), Object.values(odds)]) {
      bands.forEach(([low, middle, high], at) => {
        expect(low).toBeLessThan(middle)
        expect(middle).toBeLessThan(high)
        if (at > 0) expect(middle).toBeLessThan(bands[at - 1]![0] + 1e-12)
        if (at > 1) expect(high).toBeLessThanOrEqual(bands[at - 2]![0])
      })
    }
  })

  test('reach the ends and the middle of their bands', () => {
    expect([0, 0.5, 1].map((place) => within(grades.rare, place))).toEqual([
      0.01,
      0.03,
      expect.closeTo(0.06, 12),
    ])
  })

  test('are spread evenly over their bands, word by word and cell by cell, and apart from each other', () => {
    const one = evenPlaces('one')
    const other = evenPlaces('other')
    expect([...one].sort((a, b) => a - b)).toEqual(
      Array.from({ length: mappings }, (_, at) => (at + 0.5) / mappings),
    )
    expect([...evenPlaces('one')]).toEqual([...one])
    const together = Array.from(one, (place, at) => (place - 0.5) * (other[at]! - 0.5)).reduce(
      (a, b) => a + b,
    )
    expect(Math.abs((together * 12) / mappings)).toBeLessThan(0.4)
    const joined = Array.from({ length: 10_000 }, (_, at) =>
      shared((at % 100) / 100, Math.floor(at / 100) / 100),
    )
    for (const tenth of [0.1, 0.3, 0.5, 0.9])
      expect(joined.filter((place) => place < tenth).length / 10_000).toBeCloseTo(tenth, 1)
  })
})

describe('weighing', () => {
  test('comes near what the middles of the words give by hand', () => {
    const weighed = only({ material: stated('bronze'), 'looked.edge': stated('lifting') })
    // Odds 1, 0.037, 0.33; fits of the state scaled over those of the group.
    const hand = {
      tin: (1 * 0.03) / (0.03 + 0.45 + 0.45),
      silver: (0.037 * 0.45) / (0.45 + 0.15 + 0.45),
      'high-tin': (0.33 * 0.002) / (0.002 + 0.03 + 0.75),
    }
    const sum = hand.tin + hand.silver + hand['high-tin']
    for (const [id, share] of Object.entries(hand))
      expect(rivalOf(weighed, id).probability).toBeCloseTo(share / sum, 1)
  })

  test('raises nothing that nobody saw, and nothing where it surely is not so', () => {
    expect(
      weigh({ find: {}, components: [{ name: 'body', facts: { material: stated('bronze') } }] }, base),
    ).toEqual([])
    expect(weigh(facts({ material: stated('gold') }), base)).toEqual([])
    expect(weigh(facts({ material: stated('metal-unidentified') }), base)).toHaveLength(1)
    const [weighed] = weigh(facts(), base)
    expect(weighed).toMatchObject({ matter: 'skin', component: 'body', part: 0, about: 'white-metal-sheen' })
  })

  test('takes the first prior that surely holds; where it is open, between them, and the range is the wider', () => {
    const silver = (material: string) => rivalOf(only({ material: stated(material) }), 'silver')
    const [copper, bronze, open] = [silver('copper'), silver('bronze'), silver('metal-unidentified')]
    expect(copper.probability).toBeGreaterThan(open.probability)
    expect(open.probability).toBeGreaterThan(bronze.probability)
    const ratio = ({ range: [low, high] }: typeof open) => high / low
    expect(ratio(open)).toBeGreaterThan(ratio(copper) * 1.1)
    expect(ratio(open)).toBeGreaterThan(ratio(bronze) * 1.1)
  })

  test('of a special case that may hold lets the general one weigh as much', () => {
    const matter = {
      ...skin,
      rivals: [
        skin.rivals[0]!,
        {
          ...skin.rivals[1]!,
          priors: [
            ...Array.from({ length: 4 }, (_, at) =>
              prior('exceptional', { fact: 'object_kind', any: [`kind-${at}`] }),
            ),
            prior('usual'),
          ],
        },
      ],
    } // four of five priors say exceptional
    const { probability } = rivalOf(only({}, {}, matter), 'silver')
    // Half of 1 and half of 0.012, against 1.
    expect(probability).toBeGreaterThan(0.27)
    expect(probability).toBeLessThan(0.4)
  })

  test('tells what speaks for each and against it, how strongly, and on whose word', () => {
    const weighed = only({ xrf: xrf('Ag', 'Cu'), 'looked.edge': stated('none') })
    const [pull] = rivalOf(weighed, 'silver').for
    expect(pull).toMatchObject({
      group: 'elements',
      states: ['silver'],
      says: ['it shows silver'],
      strength: 'strong',
    })
    expect(pull!.sources).not.toEqual([])
    expect(rivalOf(weighed, 'tin').against.map(({ group }) => group)).toContain('elements')
    for (const { for: speaks, against } of weighed.rivals) {
      for (const { times } of speaks) expect(times).toBeGreaterThan(1)
      for (const { times } of against) expect(times).toBeLessThan(1)
    }
  })

  test('of a failure that may have shown this says so, and is the less moved by it', () => {
    const clean = only({ xrf: xrf('Cu'), seen: stated('none') })
    const crusted = only({ xrf: xrf('Cu'), seen: stated('compact-green') })
    const moved = (weighed: Weighed) =>
      Math.abs(rivalOf(weighed, 'high-tin').probability - rivalOf(only(), 'high-tin').probability)
    expect(moved(crusted)).toBeLessThan(moved(clean))
    const failures = (weighed: Weighed) =>
      weighed.rivals.flatMap((rival) => [...rival.for, ...rival.against].flatMap((pull) => pull.failures))
    expect(failures(clean)).not.toContain('crust')
    const foundTin = only({ xrf: xrf('Sn', 'Cu') })
    expect(failures(foundTin)).toContain('spread')
  })

  test('groups of one kind of evidence count once each, however often they are said', () => {
    const twice = { ...skin, groups: [...skin.groups, { ...edge, id: 'edge-again', question: 'edge-again' }] }
    const once = rivalOf(only({ 'looked.edge': stated('lifting') }, {}, twice), 'silver').probability
    expect(once).toBe(rivalOf(only({ 'looked.edge': stated('lifting') }), 'silver').probability)
  })
})

test('evidence without end stays evidence: every number is one, however sure it gets', () => {
  const groups = Array.from({ length: 24 }, (_, at): Group => ({
    ...edge,
    id: `edge-${at}`,
    question: `edge-${at}`,
    states: [state('lifting', fits('typical', 'excluded', 'excluded'))],
    rest: { says: 'none', fits: fits('excluded', 'typical', 'typical') },
  }))
  const seen = Object.fromEntries(groups.map(({ question }) => [`looked.${question}`, stated('lifting')]))
  for (const { probability, range, ...pulls } of only(seen, {}, { ...skin, groups }).rivals) {
    expect([probability, ...range].every((number) => number >= 0 && number <= 1)).toBe(true)
    expect(pulls.for.length + pulls.against.length).toBe(24)
    for (const { times } of [...pulls.for, ...pulls.against]) expect(times > 0 && times < 1e6).toBe(true)
  }
})

describe('a matter that the record itself settles', () => {
  const coated = (material: string, knownBy: string, ...more: readonly { name: string; facts: Facts }[]) => {
    const [body] = facts().components
    const coating = { role: stated('coating'), material: stated(material), known_by: stated(knownBy) }
    return { find: {}, components: [body!, { name: 'coating', facts: coating }, ...more] }
  }

  test('has the part that was analysed as its answer', () => {
    const [weighed] = weigh(coated('silver', 'analysis'), base)
    expect(weighed).toMatchObject({ standing: 'settled', settledBy: 'silver' })
    expect(weighed!.rivals.map(({ id, probability }) => [id, probability])).toEqual([
      ['silver', 1],
      ['tin', 0],
      ['high-tin', 0],
    ])
  })

  test('is not settled by what somebody took it for', () => {
    for (const word of ['assumed', 'label', 'seen'])
      expect(weigh(coated('silver', word), base)[0]!.settledBy).toBeNull()
  })

  test('is not settled where two parts show the skin, or two coats of different rivals are named', () => {
    const second = { name: 'pin', facts: facts().components[0]!.facts }
    expect(weigh(coated('silver', 'analysis', second), base).map(({ settledBy }) => settledBy)).toEqual([
      null,
      null,
    ])
    const tin = {
      name: 'tin',
      facts: { role: stated('coating'), material: stated('tin'), known_by: stated('analysis') },
    }
    expect(weigh(coated('silver', 'analysis', tin), base)[0]!.settledBy).toBeNull()
  })
})

describe('how a matter stands', () => {
  type Told = readonly [probability: number, low: number, high: number]
  const told = (rivals: readonly Told[], measured: boolean) =>
    standingOf(
      rivals.map(([probability, low, high]) => ({ probability, range: [low, high] })),
      measured,
    )
  const standing = (...rivals: readonly Told[]) => told(rivals, true)

  test('by eyes alone is never settled', () => {
    const sure: readonly Told[] = [
      [0.99, 0.97, 0.995],
      [0.01, 0.005, 0.03],
    ]
    expect(told(sure, true)).toBe('settled')
    expect(told(sure, false)).toBe('probable')
  })

  test('is named from probability and range together', () => {
    expect(standing([0.96, 0.9, 0.98], [0.04, 0.02, 0.1])).toBe('settled')
    expect(standing([0.7, 0.55, 0.8], [0.3, 0.2, 0.45])).toBe('probable')
    expect(standing([0.45, 0.4, 0.5], [0.3, 0.2, 0.35], [0.25, 0.2, 0.3])).toBe('likelier')
    expect(standing([0.6, 0.45, 0.75], [0.4, 0.25, 0.55])).toBe('likelier')
    expect(standing([0.55, 0.35, 0.75], [0.45, 0.25, 0.65])).toBe('open')
    expect(standing([0.9, 0.05, 0.99], [0.1, 0.01, 0.95])).toBe('open')
  })
})
