import { describe, expect, it } from 'vitest'
import { nearestWithin } from '../../lib/logger/near-limit.ts'
import { every, hour } from './at-hand.ts'

describe('the reading nearest to a limit', () => {
  const series = every(hour, [10, 13, 15.1, 12, Number.NaN])

  it('is the highest within an upper one, the lowest within a lower one', () => {
    expect(nearestWithin(series, 15, 'above')).toBe(13)
    expect(nearestWithin(series, 15.1, 'above')).toBe(15.1)
    expect(nearestWithin(series, 11, 'below')).toBe(12)
  })

  it('is no reading at the floor of the logger', () => {
    expect(nearestWithin(every(hour, [10, 10, 30]), 15, 'above', 10)).toBeNull()
  })

  it('is none where none was within', () => {
    expect(nearestWithin(series, 9, 'above')).toBeNull()
    expect(nearestWithin(every(hour, []), 15, 'above')).toBeNull()
  })
})
