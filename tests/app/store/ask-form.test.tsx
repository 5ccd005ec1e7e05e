import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, test } from 'vitest'
import { AskForm } from '../../../app/store/_forms/ask-form.tsx'
import type { FormAction } from '../../../app/store/_forms/said.ts'

const questions = [
  { name: 'kg', label: 'How much?', kind: 'number', unit: 'kg', value: '0.5' },
  { name: 'on', label: 'When?', kind: 'date', value: '2026-11-25' },
] as const

const refusing: FormAction = (_before, form) =>
  Promise.resolve({
    ok: false,
    says: '2 answers need another look.',
    wrong: { on: 'This day has not come yet.', kg: 'Write a number.' },
    given: { kg: String(form.get('kg')), on: String(form.get('on')) },
  })

describe('a form of questions', () => {
  test('what is wrong is listed in the order of the questions, each a link to it; what was given stays', async () => {
    render(
      <AskForm id="gel" action={refusing} questions={questions} hidden={{ box: 'TW-B01' }} submit="Keep" />,
    )
    const kg = screen.getByLabelText('How much? [kg]')
    await userEvent.clear(kg)
    await userEvent.type(kg, 'much')
    await userEvent.click(screen.getByRole('button', { name: 'Keep' }))
    const links = (await screen.findAllByRole('link')).map((link) => [
      link.textContent,
      link.getAttribute('href'),
    ])
    expect(links).toEqual([
      ['How much?', '#gel-kg'],
      ['When?', '#gel-on'],
    ])
    const again = screen.getByLabelText<HTMLInputElement>('How much? [kg]')
    expect(again.value).toBe('much')
    expect(again.getAttribute('aria-invalid')).toBe('true')
    expect(again.getAttribute('aria-describedby')).toBe('gel-kg-wrong')
  })
  test('what is kept is said, and the form is ready again', async () => {
    const keeping: FormAction = () => Promise.resolve({ ok: true, says: 'Kept.', wrong: {}, given: {} })
    render(<AskForm id="gel" action={keeping} questions={questions} hidden={{}} submit="Keep" />)
    await userEvent.click(screen.getByRole('button', { name: 'Keep' }))
    expect((await screen.findByText('Kept.')).className).not.toContain('wrong')
    expect(screen.getByLabelText<HTMLInputElement>('How much? [kg]').value).toBe('0.5')
  })
})
