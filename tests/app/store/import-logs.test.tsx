import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { ImportLogs } from '../../../app/store/loggers/import/import-logs.tsx'
import type { LogSaid } from '../../../app/store/loggers/import/received-log.ts'
import type { LogFileRead } from '../../../lib/services/read-log-file.ts'

vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => {} }) }))

const readings = { readings: 4, withHumidity: 4, fromMs: Date.UTC(2026, 3, 3), toMs: Date.UTC(2026, 4, 5) }

/** As the server tells it: the order of dates is open, and the file does not say whose it is. */
function told(said: LogSaid): LogFileRead {
  const serial = said.serials['sensor'] ?? null
  return {
    name: 'april.csv',
    sha256: 'abc',
    form: null,
    problems: [
      { code: 'sensor-error', severity: 'note', line: 3, column: null, found: 'err', count: 1 },
      { code: 'value-unreadable', severity: 'error', line: 7, column: 'RH', found: 'xx', count: 1 },
    ],
    rows: { lines: 5, read: 4, empty: 0, unreadable: 1, repeated: 0, disagreeing: 0, backward: 0 },
    asks:
      (said.answers?.dateOrder ?? null) === null
        ? [
            {
              about: 'date-order',
              answers: ['day-first', 'month-first'],
              proposed: 'day-first',
              because: 'both-orders-fit',
              examples: [{ line: 2, text: '2026-04-03 00:00' }],
            },
          ]
        : [],
    answers: { timeZone: 'UTC', dateOrder: said.answers?.dateOrder ?? null, temperatureUnit: null },
    channels: [{ channel: 'sensor', serial, logger: null, ...readings, lands: [], nowhere: null }],
    kept: null,
  } as unknown as LogFileRead
}

const asked: (readonly [string, LogSaid])[] = []

beforeEach(() => {
  asked.length = 0
  vi.stubGlobal('fetch', (address: string, { body }: { readonly body: FormData }) => {
    const said = JSON.parse(body.get('said') as string) as LogSaid
    asked.push([address.split('/').at(-1)!, said])
    const read = told(said)
    const kept = {
      fileId: 'f',
      alreadyThere: false,
      readAnew: false,
      readingsAdded: 4,
      conflicts: 0,
      newLoggers: ['4411'],
      read,
    }
    return Promise.resolve({ json: () => Promise.resolve(address.endsWith('keep') ? { kept } : { read }) })
  })
})

const known = { zone: 'UTC', zones: ['UTC'], serials: ['4411'], boxes: ['TW-B01'] }

async function choose(): Promise<HTMLElement> {
  render(<ImportLogs project="p" known={known} />)
  await userEvent.upload(screen.getByLabelText(/Choose logger files/), new File(['x'], 'april.csv'))
  return screen.findByRole('region', { name: 'april.csv' })
}

describe('bringing in a logger file', () => {
  test('it is told first: what it leaves open, with both dates a line could be, and what was not read', async () => {
    const card = await choose()
    expect(asked.map(([doing]) => doing)).toEqual(['check'])
    expect(await within(card).findByText(/line 2: 3 April 2026, or 4 March 2026/)).toBeDefined()
    const wrong = within(card).getByRole('region', { name: 'What is wrong in april.csv' })
    expect(within(wrong).getAllByRole('row')).toHaveLength(2)
    expect(within(card).getByRole('button', { name: 'Keep this file' })).toHaveProperty('disabled', true)
  })
  test('answered once it is kept: order, logger, box', async () => {
    const card = await choose()
    await userEvent.click(await within(card).findByRole('button', { name: 'day, month, year (likely)' }))
    await userEvent.type(await within(card).findByLabelText('Which logger is it of?'), '4411')
    await userEvent.click(within(card).getByRole('button', { name: 'Of this one' }))
    await userEvent.type(await within(card).findByLabelText('In which box did it stand?'), 'TW-B01')
    await userEvent.click(within(card).getByRole('button', { name: 'Keep this file' }))
    expect(await within(card).findByText('4 readings kept; 4411 entered in the register.')).toBeDefined()
    const [doing, said] = asked.at(-1)!
    expect([doing, said.answers?.dateOrder, said.serials, said.boxes]).toEqual([
      'keep',
      'day-first',
      { sensor: '4411' },
      { '4411': 'TW-B01' },
    ])
  })
  test('what the server cannot be asked is said, and the file is still there to be tried again', async () => {
    const working = globalThis.fetch
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('no network')))
    const card = await choose()
    expect((await within(card).findByRole('alert')).textContent).toMatch(/could not be reached/)
    vi.stubGlobal('fetch', working)
    await userEvent.click(within(card).getByRole('button', { name: 'Try again' }))
    expect(await within(card).findByText('In which order are its dates written?')).toBeDefined()
    expect(within(card).queryByRole('alert')).toBeNull()
  })
})
