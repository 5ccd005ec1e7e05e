import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { isoDate } from '../../lib/base/calendar.ts'
import { main } from '../../lib/cli/main.ts'
import { evidenceFiles } from '../knowledge/small-evidence.ts'

let root = ''
const inRoot = (file: string) => path.join(root, file)
const matter = 'content/evidence/white-skin.yaml'

beforeEach(() => {
  root = mkdtempSync(path.join(tmpdir(), 'evidence-'))
  for (const [file, text] of Object.entries(evidenceFiles)) {
    mkdirSync(path.dirname(inRoot(`content/${file}`)), { recursive: true })
    writeFileSync(inRoot(`content/${file}`), text)
  }
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

test('a matter prints with its rivals across, its states down, and a line to initial', async () => {
  const { out, code } = await call('sheet', 'evidence/white-skin')
  expect(code).toBe(0)
  expect(out).toContain('white-skin: What is it?')
  expect(out).toContain('A  Tinning  [tinning]')
  expect(out).toMatch(/^ {2}odds {7}usual, where material: bronze$/m)
  expect(out).toMatch(/^ {2}lifting-edge {2}rare {8}frequent {4}rare$/m)
  expect(out).toContain('as often as Sn La1 does not come out through 20 to 200 µm of Cassiterite')
  expect(out).toContain('Remembered 1997 (from memory)')
  expect(out.match(/initials _+ date _+/g)).toHaveLength(6)
})

test('as JSON it is one object; a matter that is none is named with those there are', async () => {
  const sheet = JSON.parse((await call('sheet', 'evidence/white-skin', '--format', 'json')).out) as {
    groups: { states: { grades: string[] }[] }[]
  }
  expect(sheet.groups[1]!.states[0]!.grades).toEqual(['excluded', 'typical', 'rare'])
  const none = await call('sheet', 'evidence/black-skin')
  expect(none.code).toBe(2)
  expect(none.err).toContain('There is no matter "evidence/black-skin"')
  expect(none.err).toContain('evidence/white-skin')
})

test('a grade goes out in a table and comes back into the content, once', async () => {
  const { out } = await call('sheet', 'evidence/white-skin', '--format', 'csv')
  const table = inRoot('table.csv')
  writeFileSync(
    table,
    out.replace(
      /(skin-edge,rest,tinning),occasional,,,,,,/,
      '$1,rare,So seen,house-rule,,common-practice,AB,2026-11-25',
    ),
  )
  const before = readFileSync(inRoot(matter), 'utf8')
  const tried = await call('correct', table, '--dry-run')
  expect(tried.out).toContain('1 grade would be corrected in 1 file')
  expect(readFileSync(inRoot(matter), 'utf8')).toBe(before)
  const made = await call('correct', table)
  expect(made).toMatchObject({ code: 0, err: '' })
  expect(made.out).toContain('white-skin, skin-edge, rest: tinning from occasional to rare')
  const after = readFileSync(inRoot(matter), 'utf8')
  expect(after).toContain('rest: { says: it ends otherwise, fits: { tinning: rare,')
  expect((await call('check', 'evidence/', '--errors')).out).not.toContain(`${matter}:`)
  expect((await call('correct', table)).out).toContain('0 grades corrected in 0 files')
  expect(readFileSync(inRoot(matter), 'utf8')).toBe(after)
})

test('a table with anything wrong writes nothing', async () => {
  const before = readFileSync(inRoot(matter), 'utf8')
  const { out } = await call('sheet', 'evidence/white-skin', '--format', 'csv')
  const table = inRoot('table.csv')
  writeFileSync(
    table,
    out
      .replace('rest,tinning,occasional', 'rest,tinning,rare')
      .replace('rest,silvering,occasional', 'rest,silvering,seldom'),
  )
  const { code, err } = await call('correct', table)
  expect(code).toBe(1)
  expect(err).toContain('A changed grade needs “because”')
  expect(err).toContain('There is no grade “seldom”')
  expect(err).toContain('Nothing was written.')
  expect(readFileSync(inRoot(matter), 'utf8')).toBe(before)
})

test('coverage counts grades beside rules', async () => {
  const { out } = await call('coverage')
  expect(out).toMatch(/^grades +15 +12 +0 +0 +3$/m)
  expect(out).toMatch(/^white-skin +15 +12 +0 +0 +3 +3 +3 +5 +2 +3$/m)
})
