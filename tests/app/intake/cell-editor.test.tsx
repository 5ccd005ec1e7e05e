import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { useState } from 'react'
import { describe, expect, test, vi } from 'vitest'
import { CellEditor } from '../../../app/intake/_grid/cell-editor.tsx'

const words = [
  { id: 'copper-alloy', label: 'Copper alloy', means: '', tell: 'Green or brown, heavier than stone.' },
  { id: 'copper', label: 'Copper', means: '', tell: '' },
]

function Editor({
  several = false,
  onText,
}: {
  readonly several?: boolean
  readonly onText: (text: string) => void
}) {
  const [text, type] = useState('')
  const take = (typed: string) => {
    type(typed)
    onText(typed)
  }
  return (
    <CellEditor
      label="Material"
      text={text}
      words={words}
      several={several}
      onType={take}
      onLeave={() => {}}
    />
  )
}

describe('the cell editor', () => {
  test('takes focus and offers the words of its field', () => {
    render(<Editor onText={() => {}} />)
    expect(document.activeElement).toBe(screen.getByRole('combobox', { name: 'Material' }))
    expect(screen.getAllByRole('option')).toHaveLength(2)
  })
  test('never takes a word that was not chosen', async () => {
    const onText = vi.fn()
    render(<Editor onText={onText} />)
    await userEvent.keyboard('cop{Enter}')
    expect(onText).toHaveBeenLastCalledWith('cop')
  })
  test('takes the word that the arrow keys point at', async () => {
    const onText = vi.fn()
    render(<Editor onText={onText} />)
    await userEvent.keyboard('cop{ArrowDown}')
    expect(screen.getByRole('combobox').getAttribute('aria-activedescendant')).toBe(
      screen.getAllByRole('option')[0]?.id,
    )
    await userEvent.keyboard('{Enter}')
    expect(onText).toHaveBeenLastCalledWith('copper-alloy')
  })
  test('in a list adds to what stands there and stays open for more', async () => {
    const onText = vi.fn()
    render(<Editor several onText={onText} />)
    await userEvent.keyboard('copper; a{ArrowDown}{Enter}')
    expect(onText).toHaveBeenLastCalledWith('copper; copper-alloy')
    expect(screen.getByRole('combobox')).toBeTruthy()
  })
})
