import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import { Question } from '../../../app/intake/_plan/question.tsx'
import type { LookNext } from '../../../lib/engine/plan.ts'
import { knowledge } from '../fixture.ts'

const core: LookNext = {
  fact: 'blade.core',
  why: 'It decides how dry.',
  wouldSettle: ['storage'],
  asks: 'Is there metal left inside?',
  tell: 'A radiograph shows it.',
  answers: ['solid', 'partial', 'none'],
}
const burial: LookNext = { ...core, fact: 'burial', asks: 'What kind of ground?' }

describe('a question', () => {
  test('names the part, says how to look and what it could change', () => {
    render(<Question questions={[core]} knowledge={knowledge} onAnswer={() => {}} />)
    expect(screen.getByRole('heading').textContent).toBe('Blade: Is there metal left inside?')
    expect(screen.getByText('A radiograph shows it.')).toBeTruthy()
    expect(screen.getByText(/It could change how it is kept/)).toBeTruthy()
  })
  test('takes an answer to the part it asked about', async () => {
    const onAnswer = vi.fn()
    render(<Question questions={[core]} knowledge={knowledge} onAnswer={onAnswer} />)
    await userEvent.click(screen.getByRole('button', { name: /^solid metal/ }))
    expect(onAnswer).toHaveBeenCalledWith('blade', 'core', 'solid')
  })
  test('offers of a long list only what would change something here, each with how to tell it', () => {
    const seen: LookNext = { ...core, fact: 'blade.seen', answers: ['bright-orange-spots', 'loose-flakes'] }
    render(<Question questions={[seen]} knowledge={knowledge} onAnswer={() => {}} />)
    const spots = screen.getByRole('button', { name: /orange spots/i })
    const word = knowledge.vocabulary.fields['seen']?.values.find(({ id }) => id === 'bright-orange-spots')
    expect(word!.tell).not.toBe('')
    expect(spots.textContent).toContain(word!.tell)
    expect(screen.queryByRole('button', { name: /pale green powder/i })).toBeNull()
  })
  test('always lets one say that it cannot be told', async () => {
    const onAnswer = vi.fn()
    render(<Question questions={[core]} knowledge={knowledge} onAnswer={onAnswer} />)
    await userEvent.click(screen.getByRole('button', { name: 'I can’t tell' }))
    expect(onAnswer).toHaveBeenCalledWith('blade', 'core', 'unknown')
  })
  test('asks one thing at a time, and another when asked to', async () => {
    render(<Question questions={[core, burial]} knowledge={knowledge} onAnswer={() => {}} />)
    expect(screen.queryByText('What kind of ground?')).toBeNull()
    await userEvent.click(screen.getByRole('button', { name: 'Ask me something else' }))
    expect(screen.getByRole('heading').textContent).toBe('What kind of ground?')
  })
  test('lets a list be answered with none', async () => {
    const onAnswer = vi.fn()
    render(<Question questions={[burial]} knowledge={knowledge} onAnswer={onAnswer} />)
    await userEvent.click(screen.getByRole('button', { name: 'None of these' }))
    expect(onAnswer).toHaveBeenCalledWith(null, 'burial', 'none')
  })
})
