import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import '../../../app/_drawings/all.ts'
import { LookCard } from '../../../app/_look/look-card.tsx'
import { shownQuestion } from '../../../app/_look/shown.ts'
import type { LookNext } from '../../../lib/engine/plan.ts'
import { knowledge } from '../../knowledge-at-hand.ts'

function question(fact: string, answers: readonly string[] = []): LookNext {
  const asked = fact.split('looked:')[1]
  const words =
    asked === undefined ? knowledge.vocabulary.fields[fact.split('.').at(-1)!]! : knowledge.questions[asked]!
  return { fact, why: 'Because.', wouldSettle: ['surface'], asks: words.asks, tell: words.tell, answers }
}

function put(one: LookNext) {
  const sent = vi.fn()
  const shown = shownQuestion(one, knowledge)!
  const { container } = render(
    <LookCard
      question={one}
      shown={shown}
      knowledge={knowledge}
      questions={3}
      heading={<h2>{one.asks}</h2>}
      other={<button type="button">Ask me something else</button>}
      form={{
        onSubmit: (event) => {
          event.preventDefault()
          sent(new FormData(event.currentTarget, event.nativeEvent.submitter).getAll('answer'))
        },
      }}
    />,
  )
  return { sent, container, shown }
}

describe('a closer look', () => {
  test('shows all its answers side by side, each a button with its drawing, its words and what to look for', async () => {
    const { sent, container } = put(question('body.looked:skin-edge'))
    const { answers } = knowledge.questions['skin-edge']!
    for (const { label, tell } of answers) {
      const button = screen.getByRole('button', { name: new RegExp(`^${label}`) })
      expect(button.textContent).toContain(tell)
      expect(button.querySelector('svg')?.getAttribute('aria-hidden')).toBe('true')
    }
    const ids = [...container.querySelectorAll('[id]')].map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    await userEvent.click(screen.getByRole('button', { name: new RegExp(`^${answers[2]!.label}`) }))
    expect(sent).toHaveBeenCalledWith([answers[2]!.id])
  })

  test('can always be answered with none, with cannot tell, or with another question', async () => {
    const { sent } = put(question('body.looked:skin-edge'))
    await userEvent.click(screen.getByRole('button', { name: 'None of these' }))
    await userEvent.click(screen.getByRole('button', { name: 'I can’t tell' }))
    expect(sent.mock.calls).toEqual([[['none']], [['unknown']]])
    expect(screen.getByRole('button', { name: 'Ask me something else' })).toBeTruthy()
  })

  test('says what it could change and how much is left', () => {
    put(question('body.looked:skin-edge'))
    expect(screen.getByText('Because. It could change what the surface is taken for.')).toBeTruthy()
    expect(screen.getByText('Two more after this would settle most of it.')).toBeTruthy()
  })

  test('of a list takes several, and shows beside each what it is taken for', async () => {
    const { sent, container } = put(
      question('body.seen', ['orange-droplets', 'loose-flakes', 'dry-orange-blisters']),
    )
    await userEvent.click(screen.getByRole('checkbox', { name: /^Orange droplets/ }))
    await userEvent.click(screen.getByRole('checkbox', { name: /^Loose flakes/ }))
    await userEvent.click(screen.getByRole('button', { name: 'That is what I see' }))
    expect(sent).toHaveBeenCalledWith(['orange-droplets', 'loose-flakes'])
    const alike = container.querySelector<HTMLElement>('label:has(input[value=orange-droplets]) + div')!
    expect(
      within(alike)
        .getAllByRole('figure')
        .map((one) => one.querySelector('strong')!.textContent),
    ).toEqual(['Orange droplets', 'Dry orange blisters'])
  })

  test('of a list stands next to its look-alikes', () => {
    const { shown } = put(question('body.seen', ['orange-droplets', 'loose-flakes', 'dry-orange-blisters']))
    expect(shown.answers.map(({ id }) => id)).toEqual([
      'orange-droplets',
      'dry-orange-blisters',
      'loose-flakes',
    ])
  })

  test('of a choice that holds all there is, none of these is that nobody could tell', async () => {
    const { sent } = put(question('body.fragility'))
    await userEvent.click(screen.getByRole('button', { name: 'None of these' }))
    expect(sent).toHaveBeenCalledWith(['unknown'])
  })
})
