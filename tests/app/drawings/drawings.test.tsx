import { readFileSync } from 'node:fs'
import { render, screen } from '@testing-library/react'
import { act } from 'react'
import { hydrateRoot } from 'react-dom/client'
import { renderToString } from 'react-dom/server'
import { describe, expect, it, vi } from 'vitest'
import { drawn } from '../../../app/_drawings/all.ts'
import { Drawing } from '../../../app/_drawings/drawing.tsx'
import { hasDrawing } from '../../../app/_drawings/register.ts'
import * as ids from '../../../lib/record/ids.ts'
import { answersByQuestion, drawnAs, formOf, valuesOf } from './on-a-page.ts'

const page = drawn.map((key) => drawnAs(key)).join('')
const isDrawn = (key: string): boolean => drawn.includes(key)

/** The fields of a record that are drawn, every value of them. */
const fields: Readonly<Record<string, readonly string[]>> = {
  seen: ids.seen,
  evidence: ids.evidence,
  magnet: ids.magnet,
  core: ids.core,
  radiograph: ids.radiograph,
  extent: ids.extent,
  original_surface: ids.originalSurface,
  fragility: ids.fragility,
  completeness: ids.completeness,
}
const keysOf = (field: string): string[] => (fields[field] ?? []).map((value) => `${field}/${value}`)

describe('what is drawn', () => {
  it('has a drawing of every value of what a record asks to be seen', () => {
    expect(
      Object.keys(fields)
        .flatMap(keysOf)
        .filter((key) => !drawn.includes(key)),
    ).toEqual([])
  })

  it('draws nothing that neither the record nor a question knows', () => {
    const known = new Set([
      ...Object.keys(fields).flatMap(keysOf),
      ...[...answersByQuestion().values()].flat(),
    ])
    expect(drawn.filter((key) => !known.has(key))).toEqual([])
  })

  it('knows without fetching any what is drawn', () => {
    const known = [...Object.keys(fields).flatMap(keysOf), ...[...answersByQuestion().values()].flat()]
    expect(known.filter(hasDrawing).toSorted()).toEqual([...drawn].toSorted())
  })

  it('draws all answers of a question or none: a drawn one would look the likelier', () => {
    const half = [...answersByQuestion()].filter(
      ([, answers]) => answers.some(isDrawn) && !answers.every(isDrawn),
    )
    expect(half.map(([question]) => question)).toEqual([])
  })

  it('shows nothing for what is not drawn, were it a word every object has', () => {
    expect(drawnAs('seen/purple-elephant')).toBe('')
    expect(drawnAs('constructor')).toBe('')
    expect(hasDrawing('toString')).toBe(false)
  })
})

describe('meaning is in the form, not in the colour', () => {
  it('tells the answers of a question apart with every tone the same', () => {
    for (const answers of answersByQuestion().values()) {
      const forms = answers.filter(isDrawn).map(formOf)
      expect(new Set(forms).size, answers.join(', ')).toBe(forms.length)
    }
  })

  it.each(['seen', 'evidence'] as const)(
    'tells look-alikes of %s apart with every tone the same',
    (field) => {
      for (const { id, 'confused-with': others = [] } of valuesOf(field))
        for (const other of others)
          expect(formOf(`${field}/${id}`), `${id} and ${other}`).not.toBe(formOf(`${field}/${other}`))
    },
  )

  it('knows no colour of its own', () => {
    const given = [...page.matchAll(/ (?:fill|stroke|color|stop-color)="([^"]*)"/g)].map(([, value]) => value)
    expect(given.length).toBeGreaterThan(1000)
    expect([...new Set(given)].filter((value) => !/^(none|var\(--[a-z-]+\))$/.test(value ?? ''))).toEqual([])
    expect(page).not.toMatch(/style=|#[0-9a-f]{3,8}["; ]|rgb|hsl/i)
  })

  it('uses the tones its style sheet has, all of them and no other', () => {
    const sheet = readFileSync('app/_drawings/drawings.module.css', 'utf8')
    const made = [...sheet.matchAll(/(--drawn-[a-z-]+):/g)].map(([, name]) => name)
    const used = [...page.matchAll(/var\((--drawn-[a-z-]+)\)/g)].map(([, name]) => name)
    expect([...new Set(used)].toSorted()).toEqual([...new Set(made)].toSorted())
  })
})

describe('on a page', () => {
  it('has no id twice, and every id that is asked for', () => {
    const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)
    expect(ids.length).toBeGreaterThan(100)
    expect(new Set(ids).size).toBe(ids.length)
    const asked = [...page.matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id)
    expect(asked.filter((id) => !ids.includes(id))).toEqual([])
  })

  it('can stand twice under another prefix', () => {
    const { container } = render(
      <>
        <Drawing of="seen/orange-droplets" />
        <Drawing of="seen/orange-droplets" prefix="other" />
      </>,
    )
    const ids = [...container.querySelectorAll('[id]')].map(({ id }) => id)
    expect(ids).toHaveLength(2)
    expect(new Set(ids).size).toBe(2)
  })

  it('is small', () => {
    const large = drawn.filter((key) => drawnAs(key).length > 5000)
    expect(large).toEqual([])
  })

  it('has whole numbers and tenths, nothing that could not be drawn', () => {
    expect(drawn.filter((key) => /NaN|undefined|Infinity|\d\.\d{3}/.test(drawnAs(key)))).toEqual([])
  })

  it('is the same each time it is drawn, in a fresh copy too', async () => {
    vi.resetModules()
    const fresh = await import('./on-a-page.ts')
    expect(drawn.map((key) => fresh.drawnAs(key)).join('')).toBe(page)
  })

  it('is the same in the browser as from the server', async () => {
    const all = (
      <>
        {drawn.map((key) => (
          <Drawing key={key} of={key} />
        ))}
      </>
    )
    const container = document.createElement('div')
    container.innerHTML = renderToString(all)
    const complaints: unknown[] = []
    const said = vi.spyOn(console, 'error').mockImplementation((...words) => complaints.push(words))
    await act(async () => {
      hydrateRoot(container, all, { onRecoverableError: (error) => complaints.push(error) })
    })
    said.mockRestore()
    expect(complaints).toEqual([])
    expect(container.querySelectorAll('svg')).toHaveLength(drawn.length)
  })
})

describe('for those who do not see it', () => {
  it('is an image with a name where it stands alone', () => {
    render(<Drawing of="seen/orange-droplets" label="Wet drops on iron" />)
    expect(screen.getByRole('img', { name: 'Wet drops on iron' }).hasAttribute('aria-hidden')).toBe(false)
  })

  it('is passed over where words stand beside it', () => {
    const { container } = render(<Drawing of="seen/orange-droplets" />)
    expect(container.querySelector('svg')?.getAttribute('aria-hidden')).toBe('true')
    expect(container.querySelector('svg')?.hasAttribute('role')).toBe(false)
  })

  it('holds no words of its own', () => {
    expect(page).not.toMatch(/<(text|title|desc|foreignObject)/)
  })
})
