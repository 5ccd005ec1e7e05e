import { render, screen, within } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { StatementLine } from '../../app/_statement/statement-line.tsx'
import { Stop } from '../../app/_statement/stop.tsx'
import { knowledge, statement, stop } from './fixture.ts'

const addresses = () => screen.getAllByRole('link', { hidden: true }).map((link) => link.getAttribute('href'))

describe('a statement', () => {
  test('shows its verb, its sentence and how sure it is', () => {
    render(<StatementLine statement={statement} knowledge={knowledge} parts={1} />)
    expect(screen.getByText('Should')).toBeTruthy()
    expect(screen.getByText('Keep it in the driest box.')).toBeTruthy()
    expect(
      within(screen.getByText('Why').closest('summary')!).getByText('supported by published work'),
    ).toBeTruthy()
  })
  test('of a find with several parts says whose line it is', () => {
    render(<StatementLine statement={statement} knowledge={knowledge} parts={2} />)
    expect(screen.getByText('Blade:')).toBeTruthy()
  })
  test('says when it is only to be safe, and what would settle it', () => {
    render(<StatementLine statement={statement} knowledge={knowledge} parts={1} />)
    expect(screen.getByText('To be safe, until you look.').parentElement?.textContent).toBe(
      'To be safe, until you look. blade: Is there metal left inside?',
    )
  })
  test('does not say so of a line that rests on what is recorded', () => {
    render(
      <StatementLine statement={{ ...statement, precautionary: false }} knowledge={knowledge} parts={1} />,
    )
    expect(screen.queryByText('To be safe, until you look.')).toBeNull()
  })
  test('leads down to rule, figure and work', () => {
    render(<StatementLine statement={statement} knowledge={knowledge} parts={1} />)
    expect(addresses()).toEqual([
      '/sources/figures/example-ceiling',
      '/sources/works/example-1999',
      '/sources/decisions/storage-humidity#iron-active',
    ])
    expect(screen.getByText('Core of blade: nobody has looked yet')).toBeTruthy()
  })
  test('keeps what is folded under it', () => {
    const also = { ...statement, rule: 'storage-humidity/other', text: 'And look after the handle.' }
    render(<StatementLine statement={{ ...statement, also: [also] }} knowledge={knowledge} parts={1} />)
    expect(screen.getByText('And look after the handle.')).toBeTruthy()
  })
})

describe('a stop', () => {
  test('stands open: sentence, whom to call and why are in no fold', () => {
    render(<Stop caution={stop} knowledge={knowledge} />)
    for (const words of [stop.text, 'Call Police: desk, 000'])
      expect(screen.getByText(words).closest('details')).toBeNull()
    expect(screen.getAllByText(stop.because)[0]?.closest('details')).toBeNull()
  })
})
