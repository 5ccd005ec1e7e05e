import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { isoDate } from '../../lib/base/calendar.ts'
import { main } from '../../lib/cli/main.ts'
import { knowledgeFrom } from '../../lib/knowledge/load.ts'
import { files } from '../knowledge/small-content.ts'

let root = ''

function write(file: string, text: string): void {
  const whole = path.join(root, 'content', file)
  mkdirSync(path.dirname(whole), { recursive: true })
  writeFileSync(whole, text)
}

beforeEach(() => {
  root = mkdtempSync(path.join(tmpdir(), 'knowledge-'))
  for (const [file, text] of Object.entries(files)) write(file, text)
})
afterEach(() => rmSync(root, { recursive: true }))

async function call(...words: string[]) {
  let out = ''
  let err = ''
  const code = await main(['knowledge', ...words], {
    out: async (text) => void (out += text),
    err: (text) => void (err += text),
    env: {},
    today: () => isoDate('2026-11-25')!,
    root,
  })
  return { code, out, err }
}

const kept = () => path.join(root, '.quietmetal/knowledge.json')

describe('compile', () => {
  test('writes the knowledge, and writes it again only when the content changed', async () => {
    const first = await call('compile')
    expect(first.code).toBe(0)
    const knowledge = knowledgeFrom(readFileSync(kept(), 'utf8'))
    expect(first.out).toContain(knowledge.hash)
    expect(knowledge.decisions).toHaveLength(3)
    const before = statSync(kept()).mtimeMs
    expect(await call('compile')).toEqual({ code: 0, out: '', err: '' })
    expect(statSync(kept()).mtimeMs).toBe(before)
    write('vocabulary/codes.yaml', files['vocabulary/codes.yaml']!.replace('at rest', 'still'))
    expect((await call('compile')).out).not.toContain(knowledge.hash)
  })

  test('a new file or one taken away counts as a change', async () => {
    const before = (await call('compile')).out
    write('works/more.yaml', '- { id: late-2001, authors: [E. Late], year: 2001, title: Late, known: read }')
    const after = (await call('compile')).out
    expect(after).not.toBe(before)
    rmSync(path.join(root, 'content/works/more.yaml'))
    expect((await call('compile')).out).toBe(before)
  })

  test('with an error nothing is written and what stands is left', async () => {
    await call('compile')
    const before = readFileSync(kept(), 'utf8')
    write('figures/invented.yaml', files['figures/invented.yaml']!.replace('unit: day', 'unit: fortnight'))
    const broken = await call('compile')
    expect(broken.code).toBe(1)
    expect(broken.err).toMatch(/content\/figures\/invented\.yaml:\d+ {2}error {2}There is no unit fortnight/)
    expect(readFileSync(kept(), 'utf8')).toBe(before)
    expect((await call('compile')).code).toBe(1)
  })

  test('knowledge that is none is refused', () => {
    expect(() => knowledgeFrom('{"hash":"x"}')).toThrow('works')
    expect(() => knowledgeFrom('null')).toThrow('hash')
  })
})

describe('check', () => {
  test('lists flaws with file and line, and can be kept to some files and to errors', async () => {
    const all = await call('check')
    expect(all.code).toBe(1)
    expect(all.out).toContain('The record has a field material and the vocabulary no words for it.')
    expect(all.out).toMatch(/^5 works, 4 figures, 3 decisions, 5 rules, 0 matters, 0 questions: \d+ errors, 0 warnings$/m)
    expect((await call('check', 'decisions')).code).toBe(0)
    write('works/more.yaml', '- { id: late-2001, authors: [E. Late], year: 2001, title: Late, known: read }')
    expect((await call('check', 'works')).out).toContain(
      'content/works/more.yaml:1  warning  Nothing refers to the work late-2001.',
    )
    expect((await call('check', 'works', '--errors')).out).not.toContain('late-2001')
  })

  test('as JSON each flaw is an object of its own', async () => {
    const { out } = await call('check', '--format', 'json')
    const flaws = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as { code: string; says: string })
    expect(flaws.every(({ code, says }) => code === 'field-without-words' && says.length > 0)).toBe(true)
  })

  test('a format that is none is a wrong call', async () => {
    expect((await call('check', '--format', 'xml')).code).toBe(2)
  })
})

describe('sheet', () => {
  test('prints every rule with its reason, source and how that is known', async () => {
    const { out, code } = await call('sheet', 'storage-humidity')
    expect(code).toBe(0)
    expect(out).toContain('storage-humidity: How dry?')
    expect(out).toContain('Kept fairly dry  [at-rest]')
    expect(out).toContain('when       activity: quiet')
    expect(out).toContain('Remembered 1997 (from memory)')
    expect(out.match(/initials _+ {0,1}date _+/g)).toHaveLength(2)
  })

  test('what is not covered stands on the sheet', async () => {
    expect((await call('sheet', 'activity')).out).toMatch(
      /We have no advice on\n\nCrusts without metal\n {2}when {7}core: none/,
    )
  })

  test('as CSV one rule a row, as JSON one object', async () => {
    const csv = (await call('sheet', 'activity', '--format', 'csv')).out.trim().split(/\r?\n/)
    expect(csv[0]).toMatch(/^decision,rule,title,when/)
    expect(csv).toHaveLength(4)
    const sheet = JSON.parse((await call('sheet', 'activity', '--format', 'json')).out) as {
      rules: unknown[]
    }
    expect(sheet.rules).toHaveLength(2)
  })

  test('an unknown decision is a wrong call that names those there are', async () => {
    const { code, err } = await call('sheet', 'humidity')
    expect(code).toBe(2)
    expect(err).toContain('activity, packing, storage-humidity')
  })
})

describe('coverage', () => {
  test('counts by how things are known', async () => {
    const counts = JSON.parse((await call('coverage', '--format', 'json')).out) as {
      works: { count: number; known: object }
      rules: { count: number; known: object }
    }
    expect(counts.works).toEqual({
      count: 5,
      known: { read: 1, 'second-hand': 1, 'common-practice': 2, memory: 1 },
    })
    expect(counts.rules).toEqual({
      count: 5,
      known: { read: 1, 'second-hand': 2, 'common-practice': 1, memory: 1 },
    })
    expect((await call('coverage')).out).toMatch(/storage-humidity +2 +1 +0 +0 +1/)
  })
})
