import { describe, expect, it } from 'vitest'
import type { IsoDate } from '../../lib/base/calendar.ts'
import {
  overlapping,
  readSalts,
  rowsOfLogger,
  saltsText,
  standDays,
  standOn,
  withRows,
} from '../../lib/record/logger-register.ts'
import type { Stand } from '../../lib/record/store-loggers.ts'

const day = (text: string) => text as IsoDate
const stand = (box: string, from?: string, to?: string): Stand => ({
  box,
  ...(from === undefined ? {} : { from: day(from) }),
  ...(to === undefined ? {} : { to: day(to) }),
})

describe('where a logger stood', () => {
  const stood = [
    stand('B2', '2026-03-01'),
    stand('B1', '2026-01-01', '2026-03-01'),
    stand('B3', '2026-06-01', '2026-07-01'),
  ]

  it('ends where it was carried on, and the day of carrying belongs to the new place', () => {
    expect(standDays(stood).map(({ stand: { box }, from, to }) => [box, from, to])).toEqual([
      ['B1', '2026-01-01', '2026-02-28'],
      ['B2', '2026-03-01', '2026-05-31'],
      ['B3', '2026-06-01', '2026-07-01'],
    ])
  })

  it.each([
    ['2025-12-31', undefined],
    ['2026-01-01', 'B1'],
    ['2026-03-01', 'B2'],
    ['2026-07-01', 'B3'],
    ['2026-07-02', undefined],
  ])('on %s is %s', (on, box) => {
    expect(standOn(stood, day(on))?.box).toBe(box)
  })

  it('is a quarrel only where one stand was written to last into the next', () => {
    expect(overlapping(stood)).toEqual([])
    const late = stand('B1', '2026-01-01', '2026-03-02')
    expect(overlapping([late, stand('B2', '2026-03-01')])).toHaveLength(1)
    expect(overlapping([stand('B1', '2026-01-01'), stand('B2', '2026-01-01')])).toHaveLength(1)
    expect(overlapping([stand('B1'), stand('B2')])).toHaveLength(1)
    expect(overlapping([stand('B1'), stand('B2', '2026-01-01')])).toEqual([])
  })
})

describe('the register', () => {
  const rows = [
    { serial: 'L1', model: 'small', box: 'B1', from: day('2026-01-01'), to: day('2026-03-01') },
    { serial: 'L1', model: 'small', box: 'B2', from: day('2026-03-01'), extra: { shelf: 'top' } },
  ]

  it('takes rows into a logger and gives them back', () => {
    const logger = withRows(null, 'L1', rows)
    expect(logger.stood).toHaveLength(2)
    expect(rowsOfLogger(logger)).toEqual(rows)
    expect(withRows(logger, 'L1', rows)).toEqual(logger)
  })

  it('replaces a stand that began on the same day, and keeps the others', () => {
    const logger = withRows(withRows(null, 'L1', rows), 'L1', [
      { serial: 'L1', box: 'B7', from: day('2026-03-01') },
    ])
    expect(logger.stood.map(({ box }) => box)).toEqual(['B1', 'B7'])
    expect(logger.model).toBe('small')
  })

  it('reads salts and writes them again', () => {
    const text = 'lithium chloride 11.31:13.8@2026-01-02; magnesium chloride 33.07:34.6'
    const salts = readSalts(text)!
    expect(salts).toEqual([
      { salt: 'lithium chloride', trueRhPercent: 11.31, readRhPercent: 13.8, on: '2026-01-02' },
      { salt: 'magnesium chloride', trueRhPercent: 33.07, readRhPercent: 34.6 },
    ])
    expect(saltsText(salts)).toBe(text)
    expect(readSalts('about right')).toBeNull()
    const odd = withRows(null, 'L1', [{ serial: 'L1', salts: 'about right' }])
    expect(rowsOfLogger(odd)).toEqual([{ serial: 'L1', extra: { salts: 'about right' } }])
    const placed = { serial: 'L1', box: 'B1', from: day('2026-01-01'), salts: 'about right' }
    const { salts: unread, ...rest } = placed
    expect(rowsOfLogger(withRows(null, 'L1', [placed]))).toEqual([{ ...rest, extra: { salts: unread } }])
  })
})
