import { render, screen, within } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { Requests } from '../../../app/_plan/requests.tsx'
import type { Request } from '../../../lib/engine/plan.ts'
import { statement } from '../fixture.ts'
import { interpretations, knowledge, request } from './fixture.ts'

const shown = (one: Partial<Request> = {}, tellsChanges = true) =>
  render(
    <Requests
      requests={[{ ...request, ...one }]}
      interpretations={interpretations}
      knowledge={knowledge}
      parts={2}
      tellsChanges={tellsChanges}
    />,
  )
const fact = (name: string) => screen.getByText(name).nextElementSibling?.textContent

describe('a request to a laboratory', () => {
  test('says what it would settle, who does it, how long it takes and what it costs the find', () => {
    const { container } = shown()
    expect(fact('Would settle')).toBe('Most of the question')
    expect(fact('Who')).toBe('A trained user')
    expect(fact('Time')).toBe('About 20 minutes, after 15 minutes once to set up (common practice)')
    expect(fact('Costs the find')).toBe(
      'It is touched, and nothing is taken. The owner must have agreed in writing.',
    )
    expect(container.textContent).not.toMatch(/\bbits?\b/)
  })
  test('gives each answer with its chance, what would lead then, and what the plan would say', () => {
    shown()
    const table = screen.getByRole('table', { hidden: true })
    expect(within(table).getByText('What is the white skin?', { exact: false }).textContent).toBe(
      'What is the white skin? (plate) Group elements',
    )
    expect(
      [...table.querySelectorAll('tbody tr')].map((tr) => [...tr.children].map((cell) => cell.textContent)),
    ).toEqual([
      [
        'It shows elements',
        'about 6 in 10',
        'Tinning, more than 9 in 10',
        'Relative humidity: 35 % or below.',
      ],
      ['It does not show elements', 'about 4 in 10', 'Silvering, about 7 in 10', 'nothing more'],
    ])
  })
  test('does not claim that nothing would change where nobody worked it out', () => {
    const { container } = shown({}, false)
    expect(screen.queryByText('The plan would then also say')).toBeNull()
    expect(container.textContent).not.toMatch(/nothing more|say nothing/)
  })
  test('says plainly that a conservator must agree', () => {
    shown({ ifConservatorAgrees: true })
    expect(screen.getByText(/only if a conservator agrees/).closest('details')).toBeNull()
  })
  test('says how it can mislead here, from which work', () => {
    shown()
    const fold = screen.getByText('How it can mislead here').closest('details')!
    expect(fold.textContent).toContain('A crust hides it')
    expect(fold.querySelector('a')?.getAttribute('href')).toBe('/sources/works/example-1999')
  })
  test('leads to the tables it was weighed from, and to no rule that is not there', () => {
    const { container } = shown()
    expect(screen.getByRole('link', { name: 'What is the white skin?' }).getAttribute('href')).toBe(
      '/sources/evidence/white-skin',
    )
    expect(container.querySelector('a[href^="/sources/decisions/evidence"]')).toBeNull()
  })
  test('keeps the line of a rule, and what both would ask for later', () => {
    const rule = { ...statement, rule: 'requests/some-rule', text: 'Have it looked at first.' }
    const later = { ...statement, code: 'xrf', rule: 'evidence/white-skin', text: 'What else is it?' }
    shown({ basis: [{ ...rule, also: [later] }] })
    expect(screen.getByText('Have it looked at first.')).toBeTruthy()
    expect(screen.getByText('X-ray fluorescence: What else is it?')).toBeTruthy()
  })
  test('says nothing of gain and answers where no matter hangs on it', () => {
    shown({ gainBits: null, means: [], misleads: [] })
    expect(screen.queryByText('Would settle')).toBeNull()
    expect(screen.queryByRole('table', { hidden: true })).toBeNull()
  })
})
