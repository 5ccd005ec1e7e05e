import { render, screen, within } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { Chosen } from '../../../app/bench/analyses/chosen.tsx'
import { HoursForm } from '../../../app/bench/analyses/hours-form.tsx'
import { isoDate } from '../../../lib/base/calendar.ts'
import { assemble } from '../../../lib/evidence/assemblage.ts'
import { readHours } from '../../../lib/evidence/assemblage-hours.ts'
import { assemblageFind } from '../../../lib/services/assemblage-finds.ts'
import type { AnalysesShown } from '../../../lib/services/plan-analyses.ts'
import type { ConditionRecord } from '../../../lib/record/record.ts'
import { knowledge } from '../../knowledge-at-hand.ts'

const today = isoDate('2026-11-25')!
const sheen = (find_number: string, more: Partial<ConditionRecord> = {}): ConditionRecord => ({
  find_number,
  components: [{ component: 'body', material: 'copper-alloy', evidence: ['white-metal-sheen'] }],
  ...more,
})

function shown(
  records: readonly ConditionRecord[],
  hours: Readonly<Record<string, string>>,
  sampling = false,
): AnalysesShown {
  const typed = Object.entries(hours)
  const read = readHours(typed, knowledge)
  const finds = records.flatMap((one) => assemblageFind(one.find_number, one, knowledge, today) ?? [])
  const allowances = read.ok ? read.value : []
  return {
    project: { id: 'p', name: 'Tollgate Wharf', invented: true, createdAt: 0 } as AnalysesShown['project'],
    today,
    flaws: read.ok || typed.length === 0 ? [] : read.problems,
    assemblage:
      allowances.length === 0 ? null : assemble(finds, { allowances, sampling, further: 4 }, knowledge),
    finds: records.length,
    open: finds.length,
    names: new Map(records.map((one) => [one.find_number, one.find_number])),
  }
}

const three = [sheen('TW-1'), sheen('TW-2', { significance: 'high' }), sheen('TW-3', { significance: 'low' })]

describe('what is chosen', () => {
  test('stands by method, each find with its question and how far that settles it, and no bits', () => {
    const { container } = render(<Chosen shown={shown(three, { xrf: '0.6' })} knowledge={knowledge} />)
    const table = within(screen.getByRole('region', { name: 'Finds for X-ray fluorescence' })).getByRole(
      'table',
    )
    const [, row, ...more] = within(table).getAllByRole('row')
    expect(more).toEqual([])
    expect(within(row!).getByRole('link', { name: 'TW-2' }).getAttribute('href')).toBe('/finds/TW-2')
    expect(row!.textContent).toMatch(/What is .*\?.*Settles .* of the question/)
    expect(container.textContent).not.toMatch(/\bbits?\b|0\.\d/)
  })

  test('says what each further hour would buy, its bar unseen by whoever hears it', () => {
    render(<Chosen shown={shown(three, { xrf: '0.6' })} knowledge={knowledge} />)
    const section = screen.getByRole('heading', { name: 'What further hours would buy' }).parentElement!
    const lines = within(section).getAllByRole('listitem')
    expect(lines.map(({ textContent }) => textContent)).toEqual([
      'On average, an hour of those given.',
      expect.stringMatching(/^Another hour of X-ray fluorescence would settle .* for TW-1 and TW-3\.$/),
      'A second further hour of X-ray fluorescence would buy nothing more.',
    ])
    for (const bar of section.querySelectorAll('[style]'))
      expect(bar.closest('[aria-hidden="true"]')).not.toBeNull()
  })

  test('says what was left out and why', () => {
    const held = [
      sheen('TW-1', { hazards_noticed: ['ammunition-like'] }),
      sheen('TW-2', { needed_for: ['luminescence-dating'] }),
    ]
    render(<Chosen shown={shown(held, { xrf: '2', 'sem-eds': '2' })} knowledge={knowledge} />)
    const list = screen.getByRole('heading', { name: 'Left out' }).parentElement!
    expect(
      within(list)
        .getAllByRole('listitem')
        .map(({ textContent }) => textContent!.split(':')[0]),
    ).toEqual(['Scanning electron microscopy with analysis', 'TW-1', 'X-ray fluorescence, TW-2'])
    expect(screen.getByText('Nothing is sent there.')).toBeDefined()
  })

  test('says what to do where no hours are given, nothing stands open, or nothing is recorded', () => {
    const { rerender, container } = render(<Chosen shown={shown(three, {})} knowledge={knowledge} />)
    expect(container.textContent).toMatch(/^On 3 of 3 finds something stands open\. Give the hours/)
    rerender(
      <Chosen
        shown={shown([{ find_number: 'TW-4', components: [{ component: 'body', material: 'lead' }] }], {
          xrf: '1',
        })}
        knowledge={knowledge}
      />,
    )
    expect(container.textContent).toMatch(
      /^Nothing that is recorded of these finds has more than one explanation/,
    )
    rerender(<Chosen shown={shown([], {})} knowledge={knowledge} />)
    expect(container.textContent).toBe('No find is recorded in this project yet.')
  })
})

describe('the form', () => {
  test('asks for hours method by method, keeps what was typed, and folds away what takes samples', () => {
    const { container } = render(
      <HoursForm knowledge={knowledge} typed={{ xrf: '6' }} sampling={false} flaws={[]} />,
    )
    expect(screen.getByLabelText<HTMLInputElement>('X-ray fluorescence [hours]').defaultValue).toBe('6')
    expect(container.querySelector('details')!.open).toBe(false)
    expect(within(container.querySelector('details')!).getByLabelText('Metallography [hours]')).toBeDefined()
    expect(screen.queryByLabelText(/Luminescence/)).toBeNull()
  })

  test('lists what is wrong on top, each line leading to its field, and says the same beside it', () => {
    const typed = { xrf: 'some', 'sem-eds': '-1' }
    const { flaws } = shown(three, typed)
    const { container } = render(
      <HoursForm knowledge={knowledge} typed={typed} sampling={false} flaws={flaws} />,
    )
    const links = within(screen.getByRole('alert')).getAllByRole('link')
    for (const link of links) {
      const field = container.querySelector(link.getAttribute('href')!)!
      expect(field.getAttribute('aria-invalid')).toBe('true')
      const described = field.getAttribute('aria-describedby')!.split(' ').at(-1)!
      expect(container.querySelector(`#${described}`)!.textContent).toBe(link.textContent)
    }
    expect(links).toHaveLength(2)
    expect(container.querySelector('details')!.open).toBe(true)
  })
})
