import { act, fireEvent, render, screen, within } from '@testing-library/react'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { ClimateQuestions } from '../../../app/store/climate/climate-questions.tsx'
import { pageIds, type PageFigures } from '../../../app/store/climate/figures.ts'
import { knowledge } from '../../knowledge-at-hand.ts'

const figures: PageFigures = Object.fromEntries(
  pageIds.map((id) => {
    const { says, value, known, asPrinted } = knowledge.figures[id]!
    return [id, { id, says, value, known, printed: asPrinted }]
  }),
)

beforeEach(() => {
  vi.useFakeTimers()
  render(<ClimateQuestions figures={figures} saltCautions={null} />)
})
afterEach(() => {
  vi.useRealTimers()
})

const question = (name: RegExp) => within(screen.getByRole('region', { name }))
const type = (name: RegExp, text: string) =>
  fireEvent.change(screen.getByRole('textbox', { name }), { target: { value: text } })
const said = (name: RegExp) => screen.getByRole('region', { name }).textContent

describe('questions about humidity', () => {
  test('answers follow what is typed', () => {
    expect(said(/air in the room hold/)).toMatch(/9.3 °C or colder gets wet/)
    type(/^Relative humidity of the room/, '15')
    expect(said(/air in the room hold/)).toMatch(/-6.6 °C or colder gathers frost/)
    type(/^Temperature afterwards/, '5')
    expect(said(/warmer or colder/)).toMatch(
      /the room is at 40 %, a closed box that held the same air at 38 %/,
    )
  })

  test('a decimal comma is read, and a unit that was typed along', () => {
    type(/^Temperature of the room/, '18,0 °C')
    type(/^Relative humidity of the room/, '35 %')
    expect(said(/air in the room hold/)).toMatch(/2.3 °C or colder gets wet/)
  })

  test('what cannot be read is told beside the sentence, and only its questions wait', () => {
    type(/^Temperature of the wall/, 'cold')
    const blank = screen.getByRole('textbox', { name: /^Temperature of the wall/ })
    expect(blank.getAttribute('aria-invalid')).toBe('true')
    expect(document.getElementById(blank.getAttribute('aria-describedby')!)?.textContent).toMatch(
      /“cold” is no number/,
    )
    expect(said(/something colder/)).toMatch(/Mend what is marked/)
    expect(said(/air in the room hold/)).toMatch(/gets wet in this air/)
    type(/^Relative humidity of the room/, '140')
    expect(said(/air in the room hold/)).toMatch(/Mend what is marked/)
    expect(said(/logger really read/)).toMatch(/at about 12.6 %/)
  })

  test('the surface is held against every published humidity of iron, with how each is known', () => {
    const rows = () =>
      question(/something colder/)
        .getAllByRole('row')
        .slice(1)
        .map(({ textContent }) => textContent)
    expect(rows()).toHaveLength(5)
    expect(rows().every((row) => /over, by/.test(row ?? '') && /read/.test(row ?? ''))).toBe(true)
    type(/^Relative humidity of the room/, '10')
    type(/^Temperature of the wall/, '12')
    // 10 % at 20 °C is 16.7 % at 12 °C.
    expect(said(/something colder/)).toMatch(/over 3 of these 5/)
    expect(rows().map((row) => /over, by/.test(row ?? ''))).toEqual([true, true, true, false, false])
  })

  test('frost is told by name below freezing, and the convention always', () => {
    type(/^Temperature of the wall/, '-18')
    expect(said(/something colder/)).toMatch(/Frost gathers on it/)
    expect(said(/air in the room hold/)).toMatch(/counts against liquid water/)
    fireEvent.click(screen.getByRole('radio', { name: /^ice/, hidden: true }))
    expect(said(/air in the room hold/)).toMatch(/counts against ice/)
  })

  test('a pack, a bare find, and a find too thick for one temperature', () => {
    expect(said(/until it is warm/)).toMatch(/Leave the pack closed for at least 4 hours/)
    fireEvent.click(screen.getByRole('radio', { name: 'A bare find' }))
    expect(said(/until it is warm/)).toMatch(/Bare, it stays wet for up to 15 minutes/)
    type(/^Thickness/, '2000')
    expect(said(/until it is warm/)).toMatch(/Thicker than 1,120 mm/)
  })

  test('one salt shifts, two salts tilt, swapped jars are refused', () => {
    expect(said(/logger really read/)).toMatch(/at about 12.6 %.*True humidity is 1.046 times/)
    fireEvent.change(screen.getByRole('combobox', { name: 'Second salt' }), { target: { value: 'none' } })
    expect(said(/logger really read/)).toMatch(/Held against one salt it reads 2.5 points too damp/)
    fireEvent.change(screen.getByRole('combobox', { name: 'Second salt' }), {
      target: { value: 'magnesium-chloride' },
    })
    type(/^Reading over the first salt/, '34.6')
    type(/^Reading over the second salt/, '13.8')
    expect(said(/logger really read/)).toMatch(/names swapped/)
  })

  test('the table has every answer, and is unfolded by its button', () => {
    const region = screen.getByRole('region', { name: 'All of it as a table' })
    const button = within(region).getByRole('button', { name: 'Show the table' })
    fireEvent.click(button)
    expect(button.getAttribute('aria-expanded')).toBe('true')
    const heads = [...region.querySelectorAll('th[scope="rowgroup"]')].map(({ textContent }) => textContent)
    expect(heads).toHaveLength(5)
    const iron = [...region.querySelectorAll('tr')].filter(({ textContent }) =>
      textContent.startsWith('Iron: '),
    )
    expect(iron.map(({ textContent }) => textContent).join(' ')).toMatch(
      /over, by 122 points; the room may be up to 4.4 %/,
    )
    expect(iron).toHaveLength(5)
    type(/^Relative humidity of the room/, 'x')
    // Four of the five stand on the room.
    expect(region.querySelectorAll('th[scope="rowgroup"]')).toHaveLength(1)
  })

  test('the answer is read aloud once typing has paused, not at every key', () => {
    const status = question(/air in the room hold/).getByRole('status')
    type(/^Relative humidity of the room/, '4')
    type(/^Relative humidity of the room/, '45')
    expect(status.textContent).toMatch(/^Anything at 9.3 °C/)
    act(() => {
      vi.advanceTimersByTime(1000)
    })
    expect(status.textContent).toMatch(/^Anything at 7.7 °C/)
  })
})
