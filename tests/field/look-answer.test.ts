import { describe, expect, test } from 'vitest'
import { askedOf, recordOfLook, withLook, withTest } from '../../lib/field/look-answer.ts'
import { record, today } from '../record-at-hand.ts'

const before = record(
  { box: 'B-3', recorded_by: 'hut', burial: ['damp'], notes: 'from the ditch' },
  { material: 'bronze', looked: ['skin-edge:unknown', 'skin-place:show-side'] },
)
const occasion = { on: today, by: 'Ana', box: 'B-7' }
const after = (fact: string, ...answers: string[]) => recordOfLook(before, fact, answers, occasion)

describe('what a question is about', () => {
  test('is read from the name the plan gives it', () => {
    expect(askedOf('burial')).toEqual({ part: null, field: 'burial', question: null, test: null })
    expect(askedOf('inner.plate.core')).toEqual({
      part: 'inner.plate',
      field: 'core',
      question: null,
      test: null,
    })
    expect(askedOf('body.looked:skin-edge')).toEqual({
      part: 'body',
      field: 'looked',
      question: 'skin-edge',
      test: null,
    })
    expect(askedOf('body.magnet')).toEqual({ part: 'body', field: 'tests', question: null, test: 'magnet' })
    expect(askedOf('magnet')).toBeNull()
    expect(askedOf('body.shoe-size')).toBeNull()
    expect(askedOf('body.looked')).toBeNull()
  })
})

describe('a cell of closer looks', () => {
  test('takes an answer beside the others, and in the place of an earlier one', () => {
    expect(withLook('', 'skin-edge:none')).toBe('skin-edge:none')
    expect(withLook('skin-edge:none;skin-place:show-side', 'skin-edge:lifting-edge')).toBe(
      'skin-place:show-side; skin-edge:lifting-edge',
    )
    expect(withLook('something else', 'skin-edge:none')).toBe('something else; skin-edge:none')
  })
})

describe('the record of a look', () => {
  test('says all that the one before says, of its own day, in the box where the find lies', () => {
    expect(after('state_now', 'dry')).toEqual({
      ...before,
      state_now: 'dry',
      recorded_by: 'Ana',
      recorded_on: today,
      box: 'B-7',
    })
    expect(recordOfLook(before, 'state_now', ['dry'], { ...occasion, box: null })).not.toHaveProperty('box')
  })
  test('holds an answer in the place of an earlier one to the same question', () => {
    expect(after('body.looked:skin-edge', 'lifting-edge')!.components[0]!.looked).toEqual([
      'skin-place:show-side',
      'skin-edge:lifting-edge',
    ])
    expect(before.components[0]!.looked).toEqual(['skin-edge:unknown', 'skin-place:show-side'])
  })
  test('holds the pull of a magnet among the tests, of this part and in the place of an earlier one', () => {
    expect(after('body.magnet', 'weak')!.tests).toEqual(['body/magnet:weak'])
    const pulled = { ...before, tests: ['body/magnet:none', 'xrf:Fe'] }
    expect(recordOfLook(pulled, 'body.magnet', ['unknown'], occasion)!.tests).toEqual([
      'xrf:Fe',
      'body/magnet:unknown',
    ])
    expect(withTest('xrf:Fe; body/magnet:none', 'body/magnet:strong')).toBe('xrf:Fe; body/magnet:strong')
    expect(withTest('pin/magnet:none', 'body/magnet:strong')).toBe('pin/magnet:none; body/magnet:strong')
    expect(after('body.magnet', 'hard')).toBeNull()
    expect(after('lid.magnet', 'weak')).toBeNull()
  })
  test('holds several of a list, none and cannot tell', () => {
    const seen = (...answers: string[]) => after('body.seen', ...answers)?.components[0]!.seen
    expect(seen('compact-green', 'red-layer')).toEqual(['compact-green', 'red-layer'])
    expect(seen('none')).toEqual(['none'])
    expect(seen('unknown')).toEqual(['unknown'])
    expect(after('body.core', 'unknown')!.components[0]!.core).toBe('unknown')
  })
  test('does not hide behind a later one', () => {
    const ahead = { ...before, recorded_on: '2027-01-01' as typeof today }
    expect(recordOfLook(ahead, 'state_now', ['dry'], occasion)!.recorded_on).toBe('2027-01-01')
  })
  test.each([
    ['body.seen', ['purple-stripes']],
    ['body.seen', ['none', 'compact-green']],
    ['body.core', ['solid', 'none']],
    ['body.looked:skin-edge', ['show-side']],
    ['body.looked:skin-tail', ['none']],
    ['lid.core', ['solid']],
    ['core', ['solid']],
    ['body.burial', ['damp']],
    ['notes', ['unknown']],
    ['find_number', ['TW-2']],
    ['state_now', []],
  ])('is not made of %s %j', (fact, answers) => {
    expect(recordOfLook(before, fact, answers, occasion)).toBeNull()
  })
})
