import { execFile } from 'node:child_process'
import fs from 'node:fs'
import path from 'node:path'
import { promisify } from 'node:util'
import { describe, expect, it } from 'vitest'
import { alone } from '../../lib/launch/alone.mjs'
import { made } from '../../lib/launch/project.mjs'

const run = promisify(execFile)
const lockOf = (name: string) => path.join(made, `${name}.lock`)

describe('work that only one process may do at a time', () => {
  it('is done by one after the other', async () => {
    const name = `test-${process.pid}-queue`
    const log = lockOf(`${name}-log`)
    fs.mkdirSync(made, { recursive: true })
    fs.writeFileSync(log, '')
    const script = `
      import fs from 'node:fs'
      import { alone } from ${JSON.stringify(path.resolve('lib/launch/alone.mjs'))}
      await alone(${JSON.stringify(name)}, async () => {
        fs.appendFileSync(${JSON.stringify(log)}, '<')
        await new Promise((resolve) => setTimeout(resolve, 60))
        fs.appendFileSync(${JSON.stringify(log)}, '>')
      })`
    await Promise.all([1, 2, 3].map(() => run(process.execPath, ['--input-type=module', '-e', script])))
    expect(fs.readFileSync(log, 'utf8')).toBe('<><><>')
    fs.rmSync(log)
  })

  it('does not wait for a process that is gone', async () => {
    const name = `test-${process.pid}-gone`
    const { stdout } = await run(process.execPath, ['-e', 'console.log(process.pid)'])
    fs.mkdirSync(made, { recursive: true })
    fs.writeFileSync(lockOf(name), stdout)
    expect(await alone(name, async () => 'done')).toBe('done')
  })

  it('lets go when the work breaks', async () => {
    const name = `test-${process.pid}-broken`
    await expect(alone(name, () => Promise.reject(new Error('broken')))).rejects.toThrow('broken')
    expect(fs.existsSync(lockOf(name))).toBe(false)
  })
})
