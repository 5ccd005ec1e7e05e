import { render, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { LoggerChart } from '../../../app/_charts/logger-chart.tsx'
import { at, ground, viewOf, whole } from './readings.ts'

// What is drawn is looked at in a browser; here it is the words, the keys and the table.
vi.mock('../../../app/_charts/logger-drawing.tsx', () => ({
  HumidityDrawing: () => null,
  TemperatureDrawing: () => null,
}))
vi.stubGlobal(
  'ResizeObserver',
  class {
    observe() {}
    disconnect() {}
  },
)

const asked: string[] = []

beforeEach(() => {
  asked.length = 0
  vi.stubGlobal('fetch', (address: string) => {
    asked.push(address)
    const query = new URL(address, 'http://here').searchParams
    const view = viewOf(Number(query.get('from')), Number(query.get('to')))
    return Promise.resolve({ json: () => Promise.resolve({ view }) })
  })
})

const show = () =>
  render(
    <LoggerChart
      name="logger 4411"
      first={viewOf(whole.fromMs, whole.toMs)}
      whole={whole}
      ground={ground}
      address="/view?limit=15"
    />,
  )
const reader = () => screen.getByRole('slider', { name: 'Readings of logger 4411' })

describe('the chart of a logger', () => {
  test('tells in words what it draws, before one touches it', () => {
    show()
    expect(screen.getByText(/Above 15 % for 2 h/)).toBeDefined()
    expect(screen.getByText(/No readings for 2 h/)).toBeDefined()
    expect(screen.getByText('below 5 %, which this logger cannot read')).toBeDefined()
  })
  test('arrow keys move a line that says what was read under it', async () => {
    show()
    reader().focus()
    await userEvent.keyboard('{ArrowRight}')
    expect(reader().getAttribute('aria-valuetext')).toBe(
      '14 March 2026, 00:00 to 01:00: 9 to 9.4 %, 18 to 19 °C',
    )
    await userEvent.keyboard('{ArrowRight}{ArrowRight}')
    expect(reader().getAttribute('aria-valuetext')).toMatch(/at times below what the logger can read/)
    await userEvent.keyboard('{ArrowRight}{ArrowRight}')
    expect(reader().getAttribute('aria-valuetext')).toMatch(/nothing was read$/)
    await userEvent.keyboard('{End}{ArrowLeft}')
    expect(reader().getAttribute('aria-valuetext')).toBe(
      '14 March 2026, 08:00 to 09:00: 27 to 27.4 %, 18 to 19 °C, above the limit',
    )
  })
  test('Shift and arrows mark a stretch, Enter shows it, a button shows all again', async () => {
    show()
    reader().focus()
    await userEvent.keyboard('{End}{Shift>}{ArrowLeft}{ArrowLeft}{ArrowLeft}{/Shift}{Enter}')
    await waitFor(() => expect(asked).toHaveLength(1))
    const query = new URL(asked[0]!, 'http://here').searchParams
    expect(Number(query.get('from'))).toBeCloseTo(at(6.5), -5)
    expect(Number(query.get('to'))).toBeCloseTo(at(9.5), -5)
    await waitFor(() => expect(screen.queryByText(/No readings/)).toBeNull())
    await userEvent.click(screen.getByRole('button', { name: 'All of it' }))
    await waitFor(() => expect(screen.getByText(/No readings for 2 h/)).toBeDefined())
  })
  test('T opens the table behind it and goes there', async () => {
    show()
    reader().focus()
    await userEvent.keyboard('t')
    const table = await screen.findByRole('table')
    expect(within(table).getAllByRole('row')).toHaveLength(11)
    expect(document.activeElement?.textContent).toBe('The same as a table')
  })
  test('a view that cannot be fetched leaves the one before, and says so', async () => {
    vi.stubGlobal('fetch', () => Promise.reject(new Error('no network')))
    show()
    await userEvent.click(screen.getByRole('button', { name: 'Nearer' }))
    expect((await screen.findByRole('alert')).textContent).toMatch(/could not be fetched/)
    expect(screen.getByText(/Above 15 % for 2 h/)).toBeDefined()
  })
})
