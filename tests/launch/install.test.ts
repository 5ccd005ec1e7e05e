import fs from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { isInstalled } from '../../lib/launch/install.mjs'
import { sourceStamp } from '../../lib/launch/build.mjs'

let folder: string
beforeEach(() => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'quietmetal-'))
})
afterEach(() => fs.rmSync(folder, { recursive: true }))

function write(file: string, content: unknown): void {
  fs.mkdirSync(path.dirname(path.join(folder, file)), { recursive: true })
  fs.writeFileSync(path.join(folder, file), typeof content === 'string' ? content : JSON.stringify(content))
}

describe('whether the packages of the lock file are there', () => {
  const wanted = {
    '': {},
    'node_modules/a': { version: '1.0.0' },
    'node_modules/elsewhere': { version: '1.0.0', optional: true },
  }
  const present = { 'node_modules/a': { version: '1.0.0' } }
  const there = (lock: unknown, noted: unknown) => {
    write('package-lock.json', { packages: lock })
    write('node_modules/.package-lock.json', { packages: noted })
    return isInstalled(folder)
  }

  it('holds when every one is, save those for other machines', () =>
    expect(there(wanted, present)).toBe(true))
  it('fails when one is missing', () =>
    expect(there({ ...wanted, 'node_modules/b': { version: '2.0.0' } }, present)).toBe(false))
  it('fails when one has another version', () =>
    expect(there({ ...wanted, 'node_modules/a': { version: '1.0.1' } }, present)).toBe(false))
  it('fails when nothing is installed', () => {
    write('package-lock.json', { packages: wanted })
    expect(isInstalled(folder)).toBe(false)
  })
})

describe('what a build is made of', () => {
  const stamp = () => sourceStamp(folder)

  it('changes with content, name and place of any file of the pages', () => {
    write('app/page.tsx', 'one')
    write('lib/base/a.ts', 'two')
    const first = stamp()
    expect(stamp()).toBe(first)
    write('app/page.tsx', 'other')
    const changed = stamp()
    expect(changed).not.toBe(first)
    fs.renameSync(path.join(folder, 'lib/base/a.ts'), path.join(folder, 'lib/base/b.ts'))
    expect(stamp()).not.toBe(changed)
  })

  it('does not change with what never enters the pages', () => {
    write('app/page.tsx', 'one')
    const first = stamp()
    write('lib/cli/plan.ts', 'new')
    write('tests/a.test.ts', 'new')
    expect(stamp()).toBe(first)
  })
})
