import { act, render, screen, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { Walk } from '../../../app/store/walk/walk.tsx'
import type { WalkEntry, WalkStop } from '../../../lib/papers/walk-list.ts'

const device = vi.hoisted(() => ({ kept: new Map<string, unknown>() }))

// The device's own store, as far as the walk needs it.
vi.mock('../../../app/store/walk/entries.ts', () => ({
  loadEntries: () => Promise.resolve([...device.kept.values()]),
  keepEntry: (entry: WalkEntry) => Promise.resolve(void device.kept.set(entry.id, entry)),
  dropEntry: (id: string) => Promise.resolve(void device.kept.delete(id)),
  forgetOld: () => Promise.resolve(),
}))

const stop = (box: string, more: Partial<WalkStop> = {}): WalkStop => ({
  box,
  room: 'Metal store',
  shelf: 'A',
  tub: false,
  needs: 'needs ≤ 15 %',
  lastSeen: null,
  wrong: null,
  stops: [],
  readOn: null,
  ...more,
})
const stops = [
  stop('TW-B01'),
  stop('TW-B02', { stops: ['Keep away. (TW-7)'] }),
  stop('TW-T01', { tub: true }),
]
const entries = () => [...device.kept.values()] as readonly WalkEntry[]
const heading = (name: string) => screen.findByRole('heading', { name })

let sent: readonly string[] = []

beforeEach(() => {
  device.kept.clear()
  sent = []
  vi.stubGlobal('scrollTo', () => {})
  vi.stubGlobal('fetch', (_: string, { body }: { readonly body: string }) => {
    const { entries: all } = JSON.parse(body) as { readonly entries: readonly WalkEntry[] }
    sent = [...sent, ...all.map(({ box }) => box)]
    return Promise.resolve({ json: () => Promise.resolve({ ok: true, ids: all.map(({ id }) => id) }) })
  })
})

describe('a walk through the store', () => {
  test('one tap an answer, one for the next box; what was written is on the device at once', async () => {
    render(<Walk project="p" stops={stops} />)
    await heading('TW-B01')
    await userEvent.click(screen.getByLabelText('10 to 15'))
    await userEvent.click(screen.getByLabelText('not seated'))
    await userEvent.click(screen.getByRole('button', { name: 'Keep, next box' }))
    await heading('TW-B02')
    expect(screen.getByText('1 of 3 read, shelf A')).toBeDefined()
    expect(screen.getByText(/TW-B01: strip between 10 and 15 %, lid not seated/)).toBeDefined()
    expect(entries().map(({ box, seen, sentMs }) => [box, seen.strip, seen.lid, sentMs])).toEqual([
      ['TW-B01', [10, 15], 'not-seated', null],
    ])
  })
  test('a stop stands above what is asked of its box', async () => {
    render(<Walk project="p" stops={[stops[1]!]} />)
    await heading('TW-B02')
    expect(screen.getByText(/Keep away/).textContent).toBe('Stop. Do not open it. Keep away. (TW-7)')
  })
  test('a tub is asked for its water, not for a strip', async () => {
    render(<Walk project="p" stops={[stops[2]!]} />)
    await heading('TW-T01')
    expect(screen.queryByText('The strip reads between, in %')).toBeNull()
    await userEvent.click(screen.getByLabelText('I changed its water just now'))
    await userEvent.click(screen.getByRole('button', { name: 'Keep, next box' }))
    expect(entries()[0]?.seen.waterChanged).toBe(true)
    await heading('Every box is read')
  })
  test('passing by writes nothing', async () => {
    render(<Walk project="p" stops={stops} />)
    await heading('TW-B01')
    await userEvent.click(screen.getByRole('button', { name: 'Pass by' }))
    await heading('TW-B02')
    expect(entries()).toEqual([])
  })
  test('the last one can be taken back, answers and all, before it is sent', async () => {
    render(<Walk project="p" stops={stops} />)
    await heading('TW-B01')
    await userEvent.click(screen.getByLabelText('10 to 15'))
    await userEvent.click(screen.getByRole('button', { name: 'Keep, next box' }))
    await heading('TW-B02')
    await userEvent.click(screen.getByRole('button', { name: 'Take back' }))
    await heading('TW-B01')
    expect(entries()).toEqual([])
    expect(screen.getByLabelText<HTMLInputElement>('10 to 15').checked).toBe(true)
  })
  test('without network it waits and says so; with one it is sent, and sent once', async () => {
    const working = globalThis.fetch
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('no network')))
    render(<Walk project="p" stops={stops} />)
    await heading('TW-B01')
    await userEvent.click(screen.getByLabelText('5 to 10'))
    await userEvent.click(screen.getByRole('button', { name: 'Keep, next box' }))
    await userEvent.click(screen.getByRole('button', { name: 'Send now' }))
    await screen.findByText(/1 box kept on this device; no network/)
    vi.stubGlobal('fetch', working)
    await userEvent.click(screen.getByRole('button', { name: 'Send now' }))
    await screen.findByText('All that you wrote is in the store.')
    act(() => void dispatchEvent(new Event('online')))
    expect(sent).toEqual(['TW-B01'])
    expect(entries()[0]?.sentMs).not.toBeNull()
  })
  test('a scanner that types goes to the box; so does a tap on the list', async () => {
    render(<Walk project="p" stops={stops} />)
    await heading('TW-B01')
    await userEvent.setup({ delay: null }).keyboard('TW-B02{Enter}')
    await heading('TW-B02')
    await userEvent.click(screen.getByRole('button', { name: /^TW-T01/ }))
    await waitFor(() => expect(screen.getByRole('heading', { name: 'TW-T01' })).toBeDefined())
  })
  test('what this device kept before counts as read', async () => {
    const first = render(<Walk project="p" stops={stops} />)
    await heading('TW-B01')
    await userEvent.click(screen.getByLabelText('5 to 10'))
    await userEvent.click(screen.getByRole('button', { name: 'Keep, next box' }))
    first.unmount()
    render(<Walk project="p" stops={stops} />)
    await heading('TW-B02')
    expect(screen.getByText(/^1 of 3 read/)).toBeDefined()
  })
})
