import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import { FanChart } from '../../../app/_charts/fan-chart.tsx'
import { fanPicture, fanScale, monthly } from '../../../lib/papers/box-fan.ts'
import { renewalWords } from '../../../lib/wording/box-renewal.ts'
import { day, today } from '../store/lines.ts'

vi.mock('../../../app/_charts/fan-drawing.tsx', () => ({ FanDrawing: () => null }))
vi.stubGlobal(
  'ResizeObserver',
  class {
    observe() {}
    disconnect() {}
  },
)

const first = Date.parse('2026-11-25') / 86_400_000
const days = Array.from({ length: 400 }, (_, index) => first + index)
const rising = (by: number) => days.map((_, index) => 8 + by * index)
const fan = {
  days,
  p10: rising(0.01),
  p25: rising(0.015),
  p50: rising(0.02),
  p75: rising(0.03),
  p90: rising(0.05),
}
const picture = fanPicture({
  fan,
  sightings: [
    { kind: 'strip', on: first - 200, lowRhPercent: 5, highRhPercent: 10, errorRhPercent: 5 },
    { kind: 'logger', on: first - 20, rhPercent: 7, errorRhPercent: 3 },
    { kind: 'lid-loose', on: first - 30 },
    { kind: 'strip', on: first - 900, lowRhPercent: 0, highRhPercent: 5, errorRhPercent: 5 },
  ],
  today,
  limitRhPercent: 15,
  renewOn: { early: day('2027-03-03'), late: day('2027-06-20') },
})

describe('the picture of a forecast', () => {
  test('holds no more points than are drawn, the last day among them', () => {
    expect(picture.ahead.length).toBeLessThanOrEqual(162)
    expect(picture.ahead.at(-1)?.at).toBe(days.at(-1)! * 86_400_000)
  })
  test('shows what was seen as it was seen, and leaves out what is long past', () => {
    expect(picture.seen.map(({ by, between }) => [by, between])).toEqual([
      ['strip', [5, 10]],
      ['logger', [4, 10]],
      ['lid-loose', null],
    ])
  })
  test('its scale holds the widest ribbon and the limit', () => {
    const { from, to } = fanScale(picture)
    expect(from).toBeLessThanOrEqual(4)
    expect(to).toBeGreaterThanOrEqual(28)
  })
  test('a line a month, the last day too', () => {
    const months = monthly(picture.ahead).map(({ at }) => new Date(at).toISOString().slice(0, 7))
    expect(new Set(months.slice(0, -1)).size).toBe(months.length - 1)
  })
})

describe('the forecast of a box', () => {
  test('is told in words and in a table; keys read it day by day', async () => {
    render(<FanChart name="box 14" picture={picture} summary={['The gel is to be renewed some day.']} />)
    expect(screen.getByText('The gel is to be renewed some day.')).toBeDefined()
    expect(screen.getByText('read on a strip')).toBeDefined()
    const reader = screen.getByRole('slider', { name: 'Forecast of box 14' })
    reader.focus()
    await userEvent.keyboard('{Home}')
    expect(reader.getAttribute('aria-valuetext')).toBe(
      '25 November 2026: about 8 %; as likely as not 8 %; eight times in ten 8 %',
    )
    await userEvent.keyboard('T')
    const rows = within(screen.getByRole('table')).getAllByRole('row')
    expect(rows[1]?.textContent).toMatch(/^25 November 2026/)
    expect(screen.getByText(/lid found loose/, { selector: 'details li' })).toBeDefined()
  })
})

describe('the day of renewal', () => {
  const said = (early: string | null, late: string | null) =>
    renewalWords({ early: early === null ? null : day(early), late: late === null ? null : day(late) }, today)
  test.each([
    ['2027-03-03', '2027-06-20', 'likely between 3 March and 20 June 2027'],
    ['2026-12-20', '2027-02-01', 'likely between 20 December 2026 and 1 February 2027'],
    ['2027-03-03', null, 'not likely before 3 March 2027'],
    [null, null, 'farther off than we look ahead'],
    ['2026-05-01', '2026-09-01', 'past its date: it was likely due between 1 May and 1 September 2026'],
    ['2026-11-18', '2026-11-18', 'past its date: the box stood over its limit when it was last read'],
    ['2026-05-01', '2027-01-01', 'perhaps due already, likely before 1 January 2027'],
    ['2026-05-01', null, 'perhaps due already, perhaps not for long'],
  ])('%s to %s: %s', (early, late, words) => {
    expect(said(early, late)).toBe(words)
  })
})
