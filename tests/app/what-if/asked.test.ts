import { describe, expect, test } from 'vitest'
import { readKeep } from '../../../app/store/what-if/asked-keep.ts'
import { queryOf, readChange, readNumber, typedOf } from '../../../app/store/what-if/asked-change.ts'

const typed = (words: Readonly<Record<string, string>>) => readChange(typedOf(words))

describe('what an address or a form asks', () => {
  test('nothing asked leaves the store as it is', () => {
    expect(typed({})).toEqual({
      change: { drierByPercent: 0, leakLessPercent: 0, gelTimes: 1, film: null },
      wrong: {},
    })
  })
  test.each([
    ['10', 10],
    ['-5', -5],
    ['−5', -5],
    [' 7,5 ', 7.5],
  ])('%s is read as %d', (text, value) => {
    expect(typed({ drier: text }).change.drierByPercent).toBe(value)
  })
  test.each([['ten'], ['1e9'], ['99'], ['NaN'], ['--1']])(
    '%s is told to be wrong and left as it is',
    (text) => {
      const { change, wrong } = typed({ drier: text, gel: '2' })
      expect(change).toMatchObject({ drierByPercent: 0, gelTimes: 2 })
      expect(wrong.drier).toContain(`not “${text}”`)
    },
  )
  test('a film is tried only where both are known and differ', () => {
    const film = { film: 'film-high-density-polyethylene', film_then: 'film-fluoropolymer' }
    expect(typed(film).change.film).toEqual({ now: film.film, then: film.film_then })
    expect(typed({ ...film, film_then: film.film }).change.film).toBeNull()
    expect(typed({ ...film, film: 'cling film' }).change.film).toBeNull()
  })
  test('goes back into an address, without what was left empty', () => {
    expect(queryOf({ box: 'TW-B01', room: 'Hall' }, typedOf({ drier: ' 10 ' }))).toBe('box=TW-B01&drier=10')
    expect(queryOf({}, typedOf({}))).toBe('')
  })
  test('a number is one only within its ends', () => {
    expect(['3', '2.9', '', '61'].map((text) => readNumber(text, { from: 3, to: 60 }))).toEqual([
      3,
      null,
      null,
      null,
    ])
  })
})

test('how much gel: months are days, what cannot be read is as it is first offered, and told', () => {
  expect(readKeep({ keep: ' B1 ', limit: '12', months: '24' })).toEqual({
    box: 'B1',
    limitRhPercent: 12,
    days: 731,
    wrong: {},
  })
  const { limitRhPercent, days, wrong, box } = readKeep({ limit: 'low', months: '0' })
  expect([limitRhPercent, days, box]).toEqual([15, 365, null])
  expect(Object.keys(wrong)).toEqual(['limit', 'months'])
})
