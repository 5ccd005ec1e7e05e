import { act, render } from '@testing-library/react'
import { readFileSync } from 'node:fs'
import { describe, expect, it, vi } from 'vitest'
import { Drawing } from '../../../app/_drawings/drawing.tsx'
import { hasDrawing } from '../../../app/_drawings/register.ts'
import { sheets } from '../../../app/_drawings/sheets.ts'

// Nothing in this file imports `all.ts`: it stands where the browser does.

describe('sheets', () => {
  it('hold what they say they draw, each field and question on one sheet only', async () => {
    const said = sheets.flatMap(({ draws }) => draws)
    expect(new Set(said).size).toBe(said.length)
    for (const { draws, load } of sheets) {
      const drawn = new Set(Object.keys(await load()).map((key) => key.slice(0, key.indexOf('/'))))
      expect([...drawn].toSorted()).toEqual([...draws].toSorted())
    }
  })

  it('are all that can be drawn on the server', async () => {
    const loaded = await Promise.all(sheets.map(({ load }) => load()))
    // A copy of its own, or all drawings would be here for the rest of this file too.
    vi.resetModules()
    const { drawn } = await import('../../../app/_drawings/all.ts')
    expect(loaded.flatMap((drawings) => Object.keys(drawings)).toSorted()).toEqual([...drawn].toSorted())
  })
})

describe('a drawing in the browser', () => {
  it('has its frame at once and its lines when they have come, then at once for the whole sheet', async () => {
    const sheet = sheets.find(({ draws }) => draws.includes('wire-seat'))!
    const drawings = await sheet.load()
    const { promise, resolve } = Promise.withResolvers<typeof drawings>()
    vi.spyOn(sheet, 'load').mockReturnValueOnce(promise)
    const { container } = await act(async () => render(<Drawing of="wire-seat/no-step" label="No step" />))
    expect(container.querySelector('svg')?.getAttribute('aria-label')).toBe('No step')
    expect(container.querySelectorAll('svg path')).toHaveLength(0)
    await act(async () => resolve(drawings))
    expect(container.querySelectorAll('svg path').length).toBeGreaterThan(2)
    const next = render(<Drawing of="wire-seat/in-a-seam" />)
    expect(next.container.querySelectorAll('svg path').length).toBeGreaterThan(2)
  })

  it('stays blank where its sheet cannot be fetched, and comes when it is shown again', async () => {
    const sheet = sheets.find(({ draws }) => draws.includes('core'))!
    const load = vi.spyOn(sheet, 'load').mockRejectedValueOnce(new Error('no connection'))
    const shown = await act(async () => render(<Drawing of="core/solid" />))
    expect(shown.container.querySelectorAll('svg')).toHaveLength(1)
    expect(shown.container.querySelectorAll('svg path')).toHaveLength(0)
    expect(load).toHaveBeenCalledTimes(1)
    await act(async () => shown.rerender(<Drawing of="core/solid" label="Metal" />))
    expect(load).toHaveBeenCalledTimes(2)
    expect(shown.container.querySelectorAll('svg path').length).toBeGreaterThan(2)
  })
})

describe('what Intake loads first', () => {
  it('carries no drawing: nothing it imports leads to one except when it is asked for', () => {
    const seen = new Set<string>()
    const open = (file: string): void => {
      if (seen.has(file)) return
      seen.add(file)
      const words = readFileSync(file, 'utf8').replaceAll(/^import type .*$/gm, '')
      for (const [, from] of words.matchAll(
        /^(?:import|export|\}) .*?from '(\.[^']+\.tsx?)'|^import '(\.[^']+\.ts)'/gm,
      ))
        if (from !== undefined) open(new URL(from, `file:///${file}`).pathname.slice(1))
    }
    open('app/intake/_plan/question.tsx')
    const drawings = [...seen].filter((file) => file.startsWith('app/_drawings/'))
    expect(drawings.toSorted()).toEqual([
      'app/_drawings/confused.ts',
      'app/_drawings/drawing.tsx',
      'app/_drawings/kit/tones.ts',
      'app/_drawings/look-alikes.tsx',
      'app/_drawings/register.ts',
      'app/_drawings/sheets.ts',
    ])
    expect(hasDrawing('seen/orange-droplets')).toBe(true)
  })
})
