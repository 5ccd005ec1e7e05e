import { render, screen, within } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { HumidityRuler } from '../../app/_ruler/humidity-ruler.tsx'
import { RulerInline, RulerRow } from '../../app/_ruler/small-rulers.tsx'
import { rulerOfStorage } from '../../lib/papers/ruler.ts'
import { quarrel, storage } from './fixture.ts'

const part = (root: ParentNode, name: string) => root.querySelector(`[data-part="${name}"]`)

describe('the humidity ruler', () => {
  test('draws a limit solid and a preference striped', () => {
    const { container } = render(<HumidityRuler ruler={rulerOfStorage(storage, 55)} />)
    const blade = part(container, 'blade')!
    expect(blade.querySelector('[data-kind="limit"]')).toHaveProperty('tagName', 'rect')
    expect(blade.querySelector('[data-kind="preference"]')).toBeNull()
    const handle = part(container, 'handle')!
    expect(handle.querySelector('[data-kind="limit"]')).toBeNull()
    expect(handle.querySelector('[data-kind="preference"] rect')?.getAttribute('x')).toBe('40%')
  })
  test('outlines what the parts share and ticks where it is kept now', () => {
    const { container } = render(<HumidityRuler ruler={rulerOfStorage(storage, 55)} />)
    expect(part(container, 'shared')).toHaveProperty('style.width', '15%')
    expect(part(container, 'now')).toHaveProperty('style.left', '55%')
    expect(part(container, 'gap')).toBeNull()
  })
  test('shows parts that do not meet as a named gap and no shared band', () => {
    const { container } = render(<HumidityRuler ruler={rulerOfStorage(quarrel, null)} />)
    expect(part(container, 'shared')).toBeNull()
    expect(part(container, 'gap')?.textContent?.trim()).toBe(
      'blade and handle do not meet: a gap of 20 % between 15 % and 35 %',
    )
  })
  test('says all of it in words and in a table', () => {
    render(<HumidityRuler ruler={rulerOfStorage(storage, 55)} />)
    expect(screen.getByRole('img').getAttribute('aria-label')).toBe(
      'Relative humidity. Blade: 15 % or below. Handle: better at 40 to 55 %. Together: 15 % or below. Kept at 55 % now, above the band.',
    )
    const table = screen.getByRole('table', { hidden: true })
    expect(
      within(table).getByRole('rowheader', { name: 'handle', hidden: true }).parentElement?.textContent,
    ).toBe('handlenone40 to 55 %')
  })
  test('keeps its words at row size and leaves them to the cell inline', () => {
    const { container } = render(
      <>
        <RulerRow ruler={rulerOfStorage(quarrel, null)} />
        <RulerInline ruler={rulerOfStorage(quarrel, null)} />
      </>,
    )
    expect(screen.getAllByRole('img')).toHaveLength(1)
    expect(container.querySelectorAll('svg')[1]?.getAttribute('aria-hidden')).toBe('true')
  })
})
