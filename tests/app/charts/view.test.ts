import { describe, expect, test } from 'vitest'
import { tableOf } from '../../../lib/papers/store-chart-table.ts'
import {
  humidityScale,
  middlesOf,
  placeIn,
  shifted,
  viewWithin,
  zoomedRound,
} from '../../../lib/papers/store-chart.ts'
import { at, ground, viewOf, whole } from './readings.ts'

const view = viewOf(whole.fromMs, whole.toMs)

describe('a view of readings', () => {
  test('says range, time above the limit, the worst with its moment, and what is missing', () => {
    expect(view.summary).toEqual([
      'Read: up to 27.4 %, at times below what the logger can read (5 %); the highest on 14 March 2026, 08:00.',
      'Above 15 % for 2 h, from 14 March 2026.',
      'No readings for 2 h, in 1 gap.',
    ])
  })
  test('a stretch within limits says so, and one without readings says that', () => {
    expect(viewOf(at(0), at(2)).summary).toEqual([
      'Read: 8 to 9.4 %; the highest on 14 March 2026, 00:00.',
      'Never above 15 %.',
    ])
    expect(viewOf(at(4), at(6)).summary).toEqual(['Nothing was read in this stretch.'])
  })
  test('gaps are gaps: no value stands in them', () => {
    expect(view.gaps).toEqual([{ fromMs: at(4), toMs: at(6) }])
    expect(view.stretches.rhLow.slice(3, 7)).toEqual([5, null, null, 12])
  })
  test('the scale holds the readings, the limit and the floor', () => {
    expect(humidityScale(viewOf(at(0), at(2)), ground)).toMatchObject({ from: 4, to: 16 })
  })
  test('the table behind it loses neither lowest nor highest', () => {
    const rows = tableOf(view, ground)
    expect(rows).toHaveLength(10)
    expect(rows[4]).toMatchObject({ humidity: 'nothing read', temperature: 'nothing read' })
    expect(rows[8]).toMatchObject({ from: '14 March 2026, 08:00', humidity: '27 to 27.4 %' })
  })
})

describe('moving a view', () => {
  test('nearer keeps the moment in its place', () => {
    const nearer = zoomedRound(whole, at(8), 0.5)
    expect(placeIn(nearer, { fromMs: at(8), toMs: at(9) })?.from).toBe(80)
  })
  test('never past either end, never shorter than an hour', () => {
    expect(viewWithin(whole, shifted(whole, 0.5))).toEqual(whole)
    expect(viewWithin(whole, { fromMs: at(9), toMs: at(14) })).toEqual({ fromMs: at(5), toMs: at(10) })
    const narrow = viewWithin(whole, { fromMs: at(5), toMs: at(5) + 1000 })
    expect(narrow.toMs - narrow.fromMs).toBe(3_600_000)
  })
  test('the places to stand on are the middles of what was read', () => {
    expect(middlesOf(view)[0]).toBeCloseTo(0.05)
    expect(middlesOf(view).at(-1)).toBeCloseTo(0.95)
  })
})
