import { describe, expect, test } from 'vitest'
import { formReader } from '../../../app/store/_forms/read-form.ts'
import { today } from './lines.ts'

const reader = (fields: Readonly<Record<string, string>>) => {
  const form = new FormData()
  for (const [name, value] of Object.entries(fields)) form.set(name, value)
  return formReader(form)
}

describe('what was filled in', () => {
  test('numbers in any usual writing', () => {
    const form = reader({ a: '0,5', b: ' 12.5 ', c: '1 000' })
    const range = { from: 0, to: 2000 }
    expect([form.number('a', range), form.number('b', range), form.number('c', range)]).toEqual([
      0.5, 12.5, 1000,
    ])
    expect(form.wrong).toEqual({})
  })
  test('all that is wrong is told at once, and what was given stays', () => {
    const form = reader({ kg: 'much', on: '2026-02-30', later: '2027-01-01', note: 'kept' })
    form.number('kg', { from: 0, to: 10 })
    form.day('on', today)
    form.day('later', today)
    form.needed('name', 'Write a name.')
    expect(Object.keys(form.wrong)).toEqual(['kg', 'on', 'later', 'name'])
    expect(form.wrong['kg']).toBe('Write a number from 0 to 10, not “much”.')
    expect(form.given()).toMatchObject({ kg: 'much', note: 'kept' })
  })
  test('an empty number is no number, never nought', () => {
    expect(reader({ kg: '' }).number('kg', { from: 0, to: 10 })).toBeUndefined()
  })
  test('out of range is refused, not cut off', () => {
    const form = reader({ rh: '120' })
    expect(form.number('rh', { from: 0, to: 100 })).toBeUndefined()
    expect(form.wrong['rh']).toBeDefined()
  })
})
