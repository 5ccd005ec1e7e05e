import path from 'node:path'
import { describe, expect, test } from 'vitest'
import { headless, publicFunctions, sourced } from './heads.ts'
import { filesUnder } from './imports.ts'

const root = path.resolve(import.meta.dirname, '../..')
const code = /(?<!\.d)\.ts$/
const climate = filesUnder(root, ['lib/climate', 'lib/matter'], code)
const others = filesUnder(root, ['lib/logger', 'lib/boxes'], code)

describe('formulas wear their head', () => {
  test('every function that lib/climate and lib/matter lend out', () => {
    expect(climate.flatMap((source) => headless(source))).toEqual([])
  })

  test('and in lib/logger and lib/boxes every one that names a source', () => {
    expect(others.flatMap((source) => headless(source, sourced(source.text)))).toEqual([])
  })

  test('they were really looked into: nothing exported is overlooked', () => {
    const found = climate.flatMap(({ text }) => publicFunctions(text))
    const exported = climate.flatMap(({ text }) => text.match(/^export (?:async )?function/gm) ?? [])
    expect(found.length).toBeGreaterThanOrEqual(exported.length)
    expect(found.length).toBeGreaterThan(5)
  })
})

describe('the look at heads', () => {
  const whole = `/**
 * Depth of water over a weir [mm].
 * @param flowLPerS [L/s] what runs over it
 * @param edges [mm] two lines
 *   of words
 * @source invented 1999, equation 1
 * @valid 1 to 9 L/s
 * @agrees 2 % with the invented table
 */
`
  const takes =
    'export function depthMm(flowLPerS: number, edges: readonly { a: number, b: () => void }[]): number {\n'
  const look = (text: string) => headless({ file: 'lib/climate/weir.ts', text })

  test('is content with a whole head, on functions and on arrows', () => {
    expect(look(whole + takes)).toEqual([])
    const arrow = 'export const depthMm = (flowLPerS: number, edges: Edges = []): number => flowLPerS\n'
    expect(look(whole + arrow)).toEqual([])
    expect(publicFunctions(arrow)).toHaveLength(1)
  })

  test('passes over what is no function, or is not lent out', () => {
    expect(look('export const weir = { a: 1 } as const\nfunction inner(a: number) {}\n')).toEqual([])
    expect(publicFunctions('export const sum = (2 + 3) * 4\nexport interface A { b(): void }\n')).toEqual([])
  })

  test('names file, line and function without a head, also where another comment stands further up', () => {
    expect(look(takes)).toEqual(['lib/climate/weir.ts:1 depthMm has no head'])
    expect(look(`${whole}const g = 9.81\n${takes}`)).toEqual(['lib/climate/weir.ts:11 depthMm has no head'])
  })

  test.each([
    [' [mm]', 'does not say what it returns [unit]'],
    [' * @param flowLPerS [L/s] what runs over it\n', 'does not say what flowLPerS is'],
    [' [L/s]', 'says of flowLPerS no [unit] or no meaning'],
    [' what runs over it', 'says of flowLPerS no [unit] or no meaning'],
    [' * @source invented 1999, equation 1\n', 'lacks @source'],
    [' invented 1999, equation 1', 'lacks @source'],
    [' * @valid 1 to 9 L/s\n', 'lacks @valid'],
    [' * @agrees 2 % with the invented table\n', 'lacks @agrees'],
    ['2 % ', 'does not say within what it agrees'],
  ])('misses %j', (taken, what) => {
    const [told, ...more] = look(whole.replace(taken, '') + takes)
    expect(told).toMatch(/^lib\/climate\/weir\.ts:\d+ depthMm /)
    expect(told?.endsWith(what)).toBe(true)
    expect(more).toEqual([])
  })

  test('misses a parameter that is gone, and one without a name', () => {
    const one = 'export function depthMm(flowLPerS: number): number {\n'
    expect(look(whole + one)).toEqual([
      'lib/climate/weir.ts:10 depthMm speaks of edges, which it does not take',
    ])
    const nameless = 'export function depthMm(flowLPerS: number, edges: E, { a }: A): number {\n'
    expect(look(whole + nameless)).toEqual(['lib/climate/weir.ts:10 depthMm has a parameter without a name'])
  })

  test('elsewhere asks only of those that name a source', () => {
    expect(sourced(takes + whole + takes.replace('depthMm', 'headMm')).map(({ name }) => name)).toEqual([
      'headMm',
    ])
  })
})
