import { render, screen, within } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { headlineOf, WhatIfAnswer } from '../../../app/store/what-if/answer.tsx'
import { endOfScale, UpkeepBars } from '../../../app/store/what-if/bars.tsx'
import { answer } from './shown.ts'

describe('the picture', () => {
  test.each([
    [0, 0],
    [93, 100],
    [100, 100],
    [0.41, 0.5],
    [11, 15],
  ])('a scale for %d ends at %d', (most, end) => expect(endOfScale(most)).toBeCloseTo(end, 9))

  test('draws now alone until something is tried, then both, each told in words', () => {
    const { container, rerender } = render(<UpkeepBars bought={answer().whole} tried={false} />)
    expect(container.querySelectorAll('[data-row]')).toHaveLength(2)
    rerender(<UpkeepBars bought={answer({ drierByPercent: 10 }).whole} tried />)
    const rows = [...container.querySelectorAll('[data-row]')].map((row) => row.getAttribute('data-row'))
    expect(rows).toEqual(['now', 'then', 'now', 'then'])
    expect(screen.getByText('24').closest('p')?.textContent).toBe('then 24, likely 16 to 40')
    const middle = container.querySelector('[data-row="now"] rect')
    expect(middle?.getAttribute('width')).toBe(`${(38 / 60) * 100}%`)
  })
})

describe('the answer', () => {
  test('first says what it buys, or what is', () => {
    expect(headlineOf(answer())).toContain('About 38 renewals a year')
    expect(headlineOf(answer({ drierByPercent: 10 }))).toContain('About 14 renewals a year fewer')
    expect(headlineOf(answer({}, { counted: 0 }))).toBe('Nothing can be reckoned here.')
  })

  test('names what is left out and why, and has the picture as a table', () => {
    render(<WhatIfAnswer shown={answer({ drierByPercent: 10 })} />)
    expect(screen.getByText('B3: nobody has written how much gel it holds.')).toBeDefined()
    const table = screen.getByRole('table', { name: '', hidden: true })
    expect(within(table).getByText('14 (9 to 20)')).toBeDefined()
  })

  test('lists rooms and boxes with links, in as many columns as there is to say', () => {
    render(<WhatIfAnswer shown={answer()} />)
    expect(screen.getByRole('link', { name: 'Hall' }).getAttribute('href')).toBe('/store/what-if?room=Hall')
    const boxes = screen.getByRole('table', { name: /Box by box/ })
    expect(
      within(boxes)
        .getAllByRole('columnheader')
        .map((one) => one.textContent),
    ).toEqual(['Box', 'Room', 'Renewals a year', 'Dry gel a year'])
  })

  test('says what goes into the boxes once', () => {
    render(<WhatIfAnswer shown={answer({ gelTimes: 2 }, { moreGelKg: 1 })} />)
    expect(screen.getByText(/1 kg more of dry gel goes into the boxes once/)).toBeDefined()
  })
})
