import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { breaches, filesUnder, type SourceText } from './imports.ts'
import type { Room } from './rooms.ts'

const root = path.resolve(import.meta.dirname, '../..')
const code = /\.(ts|tsx|mjs)$/
const sources = filesUnder(root, ['lib', 'app'], code)
const tests = filesUnder(root, ['tests'], code)

describe('the rooms of the house', () => {
  it('import nobody they may not', () => {
    expect(sources.flatMap((source) => breaches(source))).toEqual([])
  })

  it('were really looked into', () => {
    expect(sources.length).toBeGreaterThan(50)
  })
})

describe('the look at imports', () => {
  const rooms: Readonly<Record<string, Room>> = {
    'lib/low': { may: [], packages: ['zod'] },
    'lib/high': { may: ['lib/low'], types: ['lib/side'], packages: ['node:'] },
    'lib/side': { may: [], packages: [] },
  }
  const look = (file: string, text: string) => breaches({ file, text }, rooms)

  it('lets pass what the table allows', () => {
    expect(
      look(
        'lib/high/a.ts',
        "import { b } from '../low/b.ts'\nimport fs from 'node:fs'\nimport { c } from './c.ts'\n",
      ),
    ).toEqual([])
    expect(
      look(
        'lib/high/a.ts',
        "import type { S } from '../side/s.ts'\nimport type {\n  T,\n} from '../side/t.ts'\n",
      ),
    ).toEqual([])
    expect(look('lib/low/a.ts', "import * as z from 'zod'\nimport { x } from 'zod/mini'\n")).toEqual([])
  })

  it('names file and line of what it does not allow', () => {
    expect(look('lib/low/a.ts', "// first\nimport { b } from '../high/b.ts'\n")).toEqual([
      'lib/low/a.ts:2 lib/low may not import lib/high',
    ])
    expect(look('lib/low/a.ts', "import fs from 'node:fs'\n")).toEqual([
      'lib/low/a.ts:1 lib/low may not import the package node:fs',
    ])
    expect(look('lib/high/a.ts', "import { s } from '../side/s.ts'\n")).toEqual([
      'lib/high/a.ts:1 lib/high may not import more than types of lib/side',
    ])
    expect(look('lib/low/a.ts', "export { b } from '../high/b.ts'\n")).toHaveLength(1)
    expect(look('lib/low/a.ts', "const b = await import('../high/b.ts')\n")).toHaveLength(1)
    expect(look('lib/low/a.ts', "import '../high/b.ts'\n")).toHaveLength(1)
    expect(look('lib/low/a.ts', "import {\n  b,\n} from '../high/b.ts'\n")).toHaveLength(1)
    expect(look('lib/nowhere/a.ts', '')).toEqual(['lib/nowhere/a.ts:1 stands in no room of the table'])
  })
})

describe('every file', () => {
  const long = ({ text }: SourceText) => text.split('\n').length - 1 > 350
  const machinePath = /\/(?:work|home|Users|farm)\/[a-z]|\/tmp\/[a-z]|[A-Z]:\\\\Users/

  it('holds one idea: at most 350 lines', () => {
    const content = filesUnder(root, ['content'], /\.ya?ml$/)
    expect([...sources, ...tests, ...content].filter(long).map(({ file }) => file)).toEqual([])
  })

  it('names no path of one machine', () => {
    const content = filesUnder(root, ['content'], /\.(ya?ml|md|csv)$/)
    const named = [...sources, ...tests, ...content].flatMap(({ file, text }) =>
      text.split('\n').flatMap((line, at) => (machinePath.test(line) ? [`${file}:${at + 1}`] : [])),
    )
    expect(named.filter((place) => !place.startsWith('tests/architecture/'))).toEqual([])
  })

  it('imports its neighbours with their ending, so that Node runs it as it stands', () => {
    const bare = [...sources, ...tests].flatMap(({ file, text }) =>
      [...text.matchAll(/from '(\.[^']+)'/g)].flatMap(([, target]) =>
        /\.(ts|tsx|mjs|css|json)$/.test(target!) ? [] : [`${file} ${target}`],
      ),
    )
    expect(bare.filter((place) => !place.startsWith('tests/architecture/'))).toEqual([])
  })
})
