import { cleanup, render, screen, within } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { ChanceBar } from '../../../app/_evidence/chance-bar.tsx'
import { Surface } from '../../../app/_evidence/surface.tsx'
import { knowledge, plan, record } from './fixture.ts'

const shown = (resultAt: string | null = '/finds/7/identify') =>
  render(<Surface plan={plan} record={record} knowledge={knowledge} resultAt={resultAt} />)
const row = (root: HTMLElement, id: string) => root.querySelector<HTMLElement>(`[data-rival="${id}"]`)!

describe('what a surface was', () => {
  test('asks the question, names what was seen and says how it stands in words', () => {
    shown()
    expect(screen.getByRole('heading', { name: 'What is the white skin?' })).toBeTruthy()
    expect(screen.getByText('Seen: White metal sheen (plate)')).toBeTruthy()
    expect(screen.getByText('Likelier tinning than silvering')).toBeTruthy()
  })
  test('says what would tell, without what was looked at already', () => {
    shown()
    const list = screen.getByText('What would tell').parentElement!
    expect([...list.querySelectorAll('li')].map(({ textContent }) => textContent)).toEqual([
      'What colour is it?',
      'X-ray fluorescence: see the requests',
    ])
  })
  test('gives each explanation in tenths with its range, never in per cent', () => {
    const { container } = shown()
    expect(row(container, 'tinning').textContent).toContain('about 6 in 10 (5 to 7)')
    expect(row(container, 'silvering').textContent).toContain('about 4 in 10 (2 to 5)')
    expect(container.textContent).not.toMatch(/%|probab\w+:/)
  })
  test('folds what is hardly likely under one line, and leaves nothing out', () => {
    const { container } = shown()
    const fold = screen.getByText('Also possible: solder line').closest('details')!
    expect(fold.contains(row(container, 'solder'))).toBe(true)
    expect(row(container, 'tinning').parentElement?.closest('details')).toBeNull()
  })
  test('sets the others aside once it is known what it is', () => {
    const interpretations = plan.interpretations.map((one, at) => ({
      ...one,
      probability: at === 0 ? 1 : 0,
      standing: 'settled' as const,
    }))
    render(
      <Surface plan={{ ...plan, interpretations }} record={record} knowledge={knowledge} resultAt={null} />,
    )
    expect(screen.getByText('Set aside: silvering and solder line')).toBeTruthy()
    expect(screen.queryByText(/^Also possible/)).toBeNull()
  })
  test('says what speaks for and against, how strongly, and from which work', () => {
    const { container } = shown()
    const tinning = row(container, 'tinning')
    expect(within(tinning).getByText('1 for it, 1 against')).toBeTruthy()
    expect(tinning.querySelector('[data-strength="strong"]')?.textContent).toContain(
      'It thins out: speaks strongly for it',
    )
    expect(tinning.querySelector('[data-strength="slight"]')?.textContent).toContain('a little against it')
    expect(tinning.querySelector('a')?.getAttribute('href')).toBe('/sources/works/example-1999')
    expect(tinning.querySelector('[data-known="read"]')).toBeTruthy()
  })
  test('says so where nothing speaks for or against one', () => {
    const { container } = shown()
    expect(row(container, 'silvering').textContent).toContain('It stands on how common it is')
  })
  test('leads to the contested matter and to its own tables', () => {
    shown()
    expect(screen.getByRole('link', { name: 'Tin or silver?' }).getAttribute('href')).toBe(
      '/sources/contested/tin-or-silver',
    )
    expect(screen.getByRole('link', { name: 'How this is weighed' }).getAttribute('href')).toBe(
      '/sources/evidence/white-skin',
    )
  })
  test('says all of it in a table too', () => {
    shown()
    const table = screen.getByRole('table', { hidden: true })
    expect([...table.querySelectorAll('tbody tr')].map(({ textContent }) => textContent)).toEqual([
      'Tinningabout 6 in 105 to 7',
      'Silveringabout 4 in 102 to 5',
      'Solder linea few in 1001 or less',
    ])
  })
  test('leads to where a result is entered, of this part and this question; not in a plan of another day', () => {
    shown()
    expect(screen.getByRole('link', { name: 'Enter a result' }).getAttribute('href')).toBe(
      '/finds/7/identify?component=plate&matter=white-skin',
    )
    cleanup()
    shown(null)
    expect(screen.queryByRole('link', { name: 'Enter a result' })).toBeNull()
  })
  test('still shows a plan of a matter that is no longer kept', () => {
    render(<Surface plan={plan} record={record} knowledge={{ ...knowledge, matters: {} }} resultAt={null} />)
    expect(screen.getByRole('heading', { name: 'What is it?' })).toBeTruthy()
    expect(screen.queryByText('How this is weighed')).toBeNull()
  })
})

describe('the bar of an explanation', () => {
  const part = (root: ParentNode, name: string) => root.querySelector(`[data-part="${name}"]`)!

  test('is as long as it is likely, with a bracket over its range', () => {
    const { container } = render(<ChanceBar chance={0.62} range={[0.48, 0.71]} />)
    expect(part(container, 'chance').getAttribute('width')).toBe('62%')
    const [along] = part(container, 'range').querySelectorAll('line')
    expect([along?.getAttribute('x1'), along?.getAttribute('x2')]).toEqual(['48%', '71%'])
  })
  test('keeps a bracket that can be seen where the ends meet, within the axis', () => {
    const { container } = render(<ChanceBar chance={1} range={[1, 1]} />)
    const [along] = part(container, 'range').querySelectorAll('line')
    expect([along?.getAttribute('x1'), along?.getAttribute('x2')]).toEqual(['98.8%', '100%'])
  })
  test('is no picture for those who do not see it: the words stand beside it', () => {
    const { container } = render(<ChanceBar chance={0.5} range={[0.4, 0.6]} />)
    expect(container.querySelector('svg')?.getAttribute('aria-hidden')).toBe('true')
  })
})
