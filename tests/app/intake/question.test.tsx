import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import '../../../app/_drawings/all.ts'
import { Question } from '../../../app/intake/_plan/question.tsx'
import type { LookNext } from '../../../lib/engine/plan.ts'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
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

const edge: LookNext = {
  ...core,
  fact: 'blade.looked:skin-edge',
  asks: 'How does the skin end?',
  answers: ['lifting-edge'],
}
const looking: Knowledge = {
  ...knowledge,
  questions: {
    'skin-edge': {
      id: 'skin-edge',
      asks: 'How does the skin end?',
      tell: '',
      why: '',
      by: 'eye',
      answers: [{ id: 'lifting-edge', label: 'A rim that lifts', tell: 'Curled up.' }],
    },
  },
}

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
    const word = knowledge.vocabulary.fields['seen']?.values.find(({ id }) => id === 'bright-orange-spots')
    expect(word!.tell).not.toBe('')
    expect(screen.getByRole('checkbox', { name: /orange spots/i }).closest('label')!.textContent).toContain(
      word!.tell,
    )
    expect(screen.queryByRole('checkbox', { name: /pale green powder/i })).toBeNull()
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
  test('takes of a list what was ticked, and says so where nothing was', async () => {
    const onAnswer = vi.fn()
    const seen: LookNext = {
      ...core,
      fact: 'blade.seen',
      answers: ['bright-orange-spots', 'pale-green-powder'],
    }
    render(<Question questions={[seen]} knowledge={knowledge} onAnswer={onAnswer} />)
    await userEvent.click(screen.getByRole('button', { name: 'That is what I see' }))
    expect(onAnswer).not.toHaveBeenCalled()
    expect(screen.getByRole('status').textContent).toMatch(/Tick what you see first/)
    for (const box of screen.getAllByRole('checkbox')) await userEvent.click(box)
    await userEvent.click(screen.getByRole('button', { name: 'That is what I see' }))
    expect(onAnswer).toHaveBeenCalledWith('blade', 'seen', 'bright-orange-spots; pale-green-powder')
  })
  test('writes the answer to a closer look with its question', async () => {
    const onAnswer = vi.fn()
    render(<Question questions={[edge]} knowledge={looking} onAnswer={onAnswer} />)
    await userEvent.click(screen.getByRole('button', { name: /^A rim that lifts/ }))
    await userEvent.click(screen.getByRole('button', { name: 'None of these' }))
    await userEvent.click(screen.getByRole('button', { name: 'I can’t tell' }))
    expect(onAnswer.mock.calls).toEqual([
      ['blade', 'looked', 'skin-edge:lifting-edge'],
      ['blade', 'looked', 'skin-edge:none'],
      ['blade', 'looked', 'skin-edge:unknown'],
    ])
  })
  test('takes whoever goes by keyboard on to the next, and to what follows the last', async () => {
    const after = { current: document.createElement('h2') }
    after.current.tabIndex = -1
    document.body.append(after.current)
    const { rerender } = render(
      <Question questions={[edge, burial]} knowledge={looking} onAnswer={() => {}} after={after} />,
    )
    screen.getByRole('button', { name: /^A rim that lifts/ }).focus()
    await userEvent.keyboard('{Enter}')
    rerender(<Question questions={[burial]} knowledge={looking} onAnswer={() => {}} after={after} />)
    expect(document.activeElement).toBe(screen.getByRole('heading', { level: 3 }))
    screen.getByRole('button', { name: 'I can’t tell' }).focus()
    await userEvent.keyboard('{Enter}')
    rerender(<Question questions={[]} knowledge={looking} onAnswer={() => {}} after={after} />)
    expect(document.activeElement).toBe(after.current)
    after.current.remove()
  })
})
