import { render, screen, within } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { AtRisk } from '../../../app/store/report/at-risk.tsx'
import { BoxByBox } from '../../../app/store/report/box-by-box.tsx'
import { BoxNames } from '../../../app/store/report/box-names.tsx'
import { Drier } from '../../../app/store/report/drier.tsx'
import { Events } from '../../../app/store/report/events.tsx'
import { GelUsed } from '../../../app/store/report/gel-used.tsx'
import { InShort } from '../../../app/store/report/in-short.tsx'
import { Movements } from '../../../app/store/report/movements.tsx'
import { StateBar } from '../../../app/store/report/state-bar.tsx'
import { States } from '../../../app/store/report/states.tsx'
import { year } from './year.ts'

const cells = (row: HTMLElement) =>
  within(row)
    .getAllByRole('cell')
    .map((cell) => cell.textContent)

describe('the bar of states', () => {
  test('is drawn in shares, each with a pattern of its own, and told in words', () => {
    const counts = {
      'in-band': 1,
      over: 3,
      'cannot-tell': 0,
      'renewed-unread': 0,
      'not-read': 0,
      'no-limit': 0,
    }
    const { container } = render(<StateBar counts={counts} />)
    const stretches = [...container.querySelectorAll<SVGRectElement>('rect[data-state]')]
    expect(stretches.map((one) => [one.dataset['state'], one.getAttribute('width')])).toEqual([
      ['in-band', '25%'],
      ['over', '75%'],
    ])
    expect(new Set(stretches.map((one) => one.style.fill)).size).toBe(2)
    expect(screen.getAllByRole('listitem').map((item) => item.textContent)).toEqual(['1 in band', '3 over'])
  })
})

describe('the year', () => {
  test('is told in short first', () => {
    render(<InShort told={year} />)
    const said = screen.getAllByRole('listitem').map((item) => item.textContent)
    expect(said[0]).toMatch(/^Of 4 boxes, tubs apart, 1 stood in band, 1 stood over/)
    expect(said).toHaveLength(7)
  })

  test('tells what drier rooms would save only while it runs, for it is of today', () => {
    render(<InShort told={{ ...year, running: false }} />)
    expect(screen.queryByText(/points drier/)).toBeNull()
  })

  test('tells by room how boxes stood, and names those to see to', () => {
    render(<States told={year} />)
    const rows = within(screen.getByRole('table')).getAllByRole('row').slice(1)
    expect(rows.map(cells)).toEqual([
      ['2', '1', '1', '0', '0'],
      ['2', '0', '0', '1', '1'],
    ])
    expect(screen.getByText(/^Over:/).parentElement?.textContent).toBe('Over: B2.')
    expect(screen.getByText(/Rests on 3 strips/)).toBeDefined()
  })

  test('has a table behind its months, and what is in stock', () => {
    const { container } = render(<GelUsed told={year} />)
    const months = container.querySelector('details table')!
    expect(months.querySelectorAll('tbody tr')).toHaveLength(24)
    expect(months.querySelector('tbody tr:nth-child(3)')?.textContent).toBe('March 2026100500 g0')
    expect(screen.getByText('In stock today: 12 kg of dry gel.')).toBeDefined()
    expect(screen.getByText(/^Overdue:/).parentElement?.textContent).toBe('Overdue: B2.')
  })

  test('names finds at risk with hours, the worst, and links', () => {
    render(<AtRisk told={year} />)
    const rows = within(screen.getByRole('table')).getAllByRole('row').slice(1)
    expect(rows.map((row) => within(row).getByRole('rowheader').textContent)).toEqual(['B3', 'B2'])
    expect(cells(rows[0]!)).toEqual(['Hall', '1', '12 %', '27 %', '41 h', '', '1 April 2026'])
    expect(screen.getByText('TW-0003').getAttribute('href')).toBe('/finds/f-B3')
    expect(within(rows[0]!).getByRole('link').getAttribute('href')).toBe('/store/boxes/id-B3')
  })

  test('tells of water, lids, tubs, movements and savings, each with what it rests on', () => {
    render(
      <>
        <Events told={year} />
        <Movements told={year} />
        <Drier told={year} />
      </>,
    )
    expect(screen.getByText('1 June 2026, Hall, by a leak: it reached B3.')).toBeDefined()
    expect(screen.getByText(/In 2 tubs of wet finds the water was changed 5 times/)).toBeDefined()
    expect(screen.getByText('37 days')).toBeDefined()
    expect(screen.getByText('out still')).toBeDefined()
    expect(screen.getByRole('link', { name: 'Try something else' }).getAttribute('href')).toBe(
      '/store/what-if?drier=10',
    )
    expect(screen.getAllByText(/^Rests on/)).toHaveLength(3)
    expect(screen.getByText(/^B2: what was read strays.*about 6.2 are reckoned for it/)).toBeDefined()
  })

  test('has every box in a line, folded, and its tables as files', () => {
    const { container } = render(<BoxByBox told={year} />)
    expect(container.querySelectorAll('details tbody tr')).toHaveLength(4)
    expect(container.querySelector('details')?.open).toBe(false)
    expect(screen.getByRole('link', { name: 'movements' }).getAttribute('href')).toBe(
      '/store/report/file?year=2026&format=csv&table=movements',
    )
  })
})

test('few boxes are named at once, many folded', () => {
  const names = Array.from({ length: 41 }, (_, at) => `B${at}`)
  const { container, rerender } = render(<BoxNames says="Over" names={names.slice(0, 3)} />)
  expect(container.textContent).toBe('Over: B0, B1 and B2.')
  rerender(<BoxNames says="Over" names={names} />)
  expect(screen.getByText('Over: 41 boxes')).toBeDefined()
})
