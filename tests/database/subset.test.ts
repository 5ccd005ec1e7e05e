import { describe, expect, it } from 'vitest'
import { engines } from './engines.ts'
import { banned, outsideSubset } from './subset.ts'

describe('the ban list', () => {
  it.each(banned)('catches a $what', ({ what, example }) => {
    expect(outsideSubset(example)).toBe(what)
  })

  it('lets ordinary statements pass, whatever their columns are called', () => {
    expect(
      outsideSubset(
        'insert into "find" ("id") values ($1) on conflict ("site_id", "find_number") do nothing returning "id"',
      ),
    ).toBeNull()
    expect(outsideSubset(`select "trigger" from "json" where "a" like $1 escape '!'`)).toBeNull()
    expect(outsideSubset('create index if not exists "a" on "find" ("sort_key", "id")')).toBeNull()
  })
})

describe('the engines tried', () => {
  it('are both, where nothing may be left out', () => {
    const all = process.env['QUIETMETAL_REQUIRE_BROWSER'] === '1' ? ['sqlite', 'postgresql'] : ['sqlite']
    expect(engines).toEqual(expect.arrayContaining(all))
  })
})
