import { fireEvent, render, screen, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { typedOf } from '../../../app/store/what-if/asked-change.ts'
import { KeepQuestion } from '../../../app/store/what-if/keep-question.tsx'
import { Questions } from '../../../app/store/what-if/questions.tsx'
import { answer } from './shown.ts'

const asked: string[] = []
let reply: () => unknown

beforeEach(() => {
  asked.length = 0
  reply = () => ({ answer: answer({ drierByPercent: 10 }) })
  vi.stubGlobal('fetch', async (address: string) => {
    asked.push(address)
    return { json: async () => reply() }
  })
})
afterEach(() => {
  vi.unstubAllGlobals()
  window.history.replaceState(null, '', '/')
})

const questions = () => <Questions first={answer()} typedFirst={typedOf({})} films={[]} />

test('the answer follows what is typed, asked once when typing pauses, and stands in the address', async () => {
  render(questions())
  expect(screen.getAllByText(/About 38 renewals a year/)[0]).toBeDefined()
  await userEvent.type(screen.getByRole('textbox', { name: 'What if the rooms were drier?' }), '10')
  await waitFor(() => expect(screen.getAllByText(/About 14 renewals a year fewer/)[0]).toBeDefined())
  expect(asked).toEqual(['/store/what-if/answer?drier=10'])
  expect(window.location.search).toBe('?drier=10')
})

test('a slider moves the number, and the number the slider', async () => {
  render(questions())
  const slider = screen.getByRole('slider', { name: /tighter/ })
  fireEvent.change(slider, { target: { value: '50' } })
  const number = screen.getByRole<HTMLInputElement>('textbox', { name: 'What if the boxes were tighter?' })
  expect(number.value).toBe('50')
  await userEvent.clear(number)
  await userEvent.type(number, '20')
  expect((slider as HTMLInputElement).value).toBe('20')
  expect(slider.getAttribute('aria-valuetext')).toBe('80 % of what leaks in now.')
})

test('what is no number is told beside it, and the answer before stands', async () => {
  render(questions())
  const number = screen.getByRole('textbox', { name: 'What if they held more gel?' })
  await userEvent.type(number, 'lots')
  expect(screen.getByText('Write a number from 0.25 to 5, not “lots”.')).toBeDefined()
  expect(number.getAttribute('aria-invalid')).toBe('true')
  expect(screen.getAllByText(/About 38 renewals a year/)[0]).toBeDefined()
})

test('an answer that cannot be had is told, and the one before stands', async () => {
  reply = () => {
    throw new Error('no network')
  }
  render(questions())
  await userEvent.type(screen.getByRole('textbox', { name: 'What if the rooms were drier?' }), '3')
  await waitFor(() => expect(screen.getByText(/could not be fetched/)).toBeDefined())
  expect(screen.getAllByText(/About 38 renewals a year/)[0]).toBeDefined()
})

test('films are asked of packs alone', () => {
  const { rerender } = render(questions())
  expect(screen.queryByText('What if packs were of a better film?')).toBeNull()
  const films = [{ id: 'film-fluoropolymer', says: 'clear barrier film, 0.4', known: 'read' }] as const
  rerender(<Questions key="packs" first={answer({}, { packs: 1 })} typedFirst={typedOf({})} films={films} />)
  expect(screen.getByRole('combobox', { name: 'Film instead' })).toBeDefined()
})

test('how much gel is asked once the box is one that is known', async () => {
  reply = () => ({ answer: { box: 'B2', because: 'no-volume' } })
  render(
    <KeepQuestion first={null} typedFirst={{ keep: '', limit: '15', months: '12' }} boxes={['B1', 'B2']} />,
  )
  const box = screen.getByRole('combobox', { name: 'Box' })
  await userEvent.type(box, 'B9')
  expect(screen.getByText('No box is called “B9”.')).toBeDefined()
  await userEvent.clear(box)
  await userEvent.type(box, 'B2')
  await waitFor(() => expect(screen.getAllByText(/Nobody has written how large it is/)[0]).toBeDefined())
  expect(asked).toEqual(['/store/what-if/keep?keep=B2&limit=15&months=12'])
})
