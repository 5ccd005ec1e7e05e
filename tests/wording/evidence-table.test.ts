import { describe, expect, test } from 'vitest'
import { grades, odds } from '../../lib/evidence/grades.ts'
import {
  circumstanceWords,
  failureOften,
  failureShows,
  gradeMeans,
  gradeOrder,
  oddsMeans,
  oddsOrder,
} from '../../lib/wording/evidence-table.ts'
import { mattersBySight } from '../../lib/wording/evidence-index.ts'
import { knowledge, matter } from '../app/evidence/fixture.ts'
import { knowledge as whole } from '../knowledge-at-hand.ts'

describe('how words become numbers', () => {
  test('is told from the one place where they do', () => {
    expect(gradeOrder.toSorted()).toEqual(Object.keys(grades).toSorted())
    expect(oddsOrder.toSorted()).toEqual(Object.keys(odds).toSorted())
    expect(gradeOrder.map(gradeMeans)).toEqual([
      'about 3 in 4 (6 in 10 to 9 in 10)',
      'about half (3 in 10 to 6 in 10)',
      'about 1 in 7 (1 in 13 to 1 in 4)',
      'about 1 in 30 (1 in 100 to 1 in 17)',
      'about 1 in 500 (1 in 2,000 to 1 in 100)',
    ])
    expect(oddsMeans('usual')).toBe('the measure for the others')
    expect(oddsMeans('uncommon')).toBe('about 1 in 9 of a usual one (1 in 17 to 1 in 5)')
  })
})

describe('the tables of a matter', () => {
  const group = matter.groups[2]!
  const [failure] = group.failures

  test('say how a look goes wrong, how often, and what it then shows', () => {
    expect(failureOften(failure!, knowledge)).toBe('occasional: about 1 in 7 (1 in 13 to 1 in 4)')
    expect(failureShows(failure!, group)).toBe('it does not show elements')
    expect(failureShows({ ...failure!, as: 'shown' }, group)).toBe('it shows elements')
  })
  test('say how often a crust hides a line, from its physics', () => {
    const failures = Object.values(whole.matters).flatMap(({ groups }) =>
      groups.flatMap((one) => one.failures),
    )
    const deep = failures.filter(({ how }) => 'depth' in how)
    expect(deep.length).toBeGreaterThan(0)
    for (const one of deep)
      expect(failureOften(one, whole)).toMatch(
        /^as often as the line \w+ [KLM][αβ]\d? does not come out through [\d.]+ to [\d.]+ µm of .+: (never|always|about \d in 10|a few in 100|more than 9 in 10|less than 1 in 100)$/,
      )
  })
  test('name circumstances by the words of the record', () => {
    expect(circumstanceWords([{ fact: 'core', any: ['solid'] }], knowledge)).toBe('Core: solid metal')
  })
})

describe('the list of matters', () => {
  const asked = (search: string) =>
    mattersBySight(whole, search).flatMap(({ seen }) =>
      seen.flatMap(({ matters }) => matters.map(({ id }) => id)),
    )

  test('holds every matter under everything that raises it', () => {
    expect(new Set(asked(''))).toEqual(new Set(Object.keys(whole.matters)))
    expect(asked('')).toHaveLength(
      Object.values(whole.matters).reduce((sum, { about }) => sum + about.length, 0),
    )
  })
  test('is searched by what is seen, by the question and by the explanations', () => {
    expect(asked('white metal SHEEN')).toContain('white-skin')
    expect(new Set(asked('golden film'))).toEqual(new Set(['gold-film']))
    expect(asked('mercury')).toContain('gold-film')
    expect(asked('nothing like it')).toEqual([])
  })
})
