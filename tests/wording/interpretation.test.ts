import { describe, expect, test } from 'vitest'
import type { Interpretation } from '../../lib/engine/plan.ts'
import { chanceWords, likelyWords } from '../../lib/wording/interpretation.ts'
import { raisedWords, standingWords, stoodOf } from '../../lib/wording/standing.ts'
import { interpretation, interpretations, knowledge } from '../app/evidence/fixture.ts'

describe('how likely a thing is', () => {
  test.each([
    [1, [1, 1], 'certain by the record'],
    [0, [0, 0], 'ruled out by the record'],
    [0.97, [0.9, 0.99], 'more than 9 in 10'],
    [0.96, [0.8, 0.99], 'more than 9 in 10 (8 or more)'],
    [0.94, [0.86, 0.98], 'about 9 in 10 (9 to nearly 10)'],
    [0.42, [0.3, 0.52], 'about 4 in 10 (3 to 5)'],
    [0.42, [0.4, 0.44], 'about 4 in 10'],
    [0.1, [0.03, 0.3], 'about 1 in 10 (less than 1 to 3)'],
    [0.08, [0.04, 0.13], 'about 1 in 10 (1 or less)'],
    [0.05, [0.05, 0.05], 'about 1 in 10'],
    [0.049, [0.01, 0.09], 'a few in 100'],
    [0.03, [0.01, 0.2], 'a few in 100 (up to 2 in 10)'],
    [0.004, [0, 0.01], 'less than 1 in 100'],
  ] as const)('%d is told in tenths at most', (chance, range, words) => {
    expect(likelyWords(chance, range)).toBe(words)
  })
  test('never reads as certain or impossible unless the record says so', () => {
    for (let at = 1; at < 1000; at++) expect(chanceWords(at / 1000)).not.toMatch(/10 in 10|\b0 in 10|record/)
  })
})

const stood = (standing: Interpretation['standing'], ...rivals: readonly Interpretation[]) =>
  stoodOf(rivals.map((rival) => ({ ...rival, standing })))[0]!

describe('how a matter stands', () => {
  const tin = interpretation('tinning', 0.5, [0.3, 0.6])
  const silver = interpretation('silvering', 0.4, [0.3, 0.5])
  const solder = interpretation('solder', 0.1, [0.05, 0.2])

  test.each([
    ['probable', 'Probably tinning'],
    ['likelier', 'Likelier tinning than silvering'],
    ['open', 'Cannot be told apart yet: tinning or silvering'],
    ['settled', 'As good as settled: tinning'],
  ] as const)('%s is said in words', (standing, words) => {
    expect(standingWords(stood(standing, tin, silver, solder), knowledge)).toBe(words)
  })
  test('an analysis that the record names settles it', () => {
    const known = stood(
      'settled',
      interpretation('silvering', 1, [1, 1]),
      interpretation('tinning', 0, [0, 0]),
    )
    expect(standingWords(known, knowledge)).toBe('Settled by analysis: silvering')
  })
  test('an open matter names all that reach as far as the first does', () => {
    const far = { ...solder, range: [0.05, 0.35] as const }
    expect(standingWords(stood('open', tin, silver, far), knowledge)).toBe(
      'Cannot be told apart yet: tinning, silvering or solder line',
    )
  })
  test('matters of two parts stay apart, and say whose they are only where there are several', () => {
    const other = { ...tin, component: 'pin' }
    const [first, second] = stoodOf([...interpretations, other])
    expect([first?.component, first?.rivals.length, second?.component]).toEqual(['plate', 3, 'pin'])
    expect(raisedWords(first!, knowledge, 2)).toBe('White metal sheen (plate)')
    expect(raisedWords(first!, knowledge, 1)).toBe('White metal sheen')
  })
})
