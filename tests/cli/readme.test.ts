import fs from 'node:fs'
import path from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { workplace } from './call.ts'

const place = workplace()
afterAll(() => place.clear())

const readme = fs.readFileSync(path.resolve(import.meta.dirname, '../../README.md'), 'utf8')
const fenced = (language: string) => new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``).exec(readme)?.[1]

test('the case in the README is what the command prints', async () => {
  const file = place.file('nails.csv', fenced('csv')!)
  const { code, out, err } = await place.call('plan', file, '--on', '2026-11-25')
  expect([code, err]).toEqual([0, ''])
  expect(out).toBe(fenced('text'))
})
