import { spawn } from 'node:child_process'
import os from 'node:os'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import packages from '../../package.json' with { type: 'json' }

const root = path.resolve(import.meta.dirname, '../..')
const script = path.join(root, 'lib/launch/run.mjs')
const echo = path.join(root, 'tests/launch/echo.ts')

interface Ended {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

function launch(
  args: readonly string[],
  onOutput?: (kill: (signal: NodeJS.Signals) => void) => void,
): Promise<Ended> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [script, ...args], { cwd: os.tmpdir() })
    let [out, err] = ['', '']
    child.stdout.on('data', (piece: Buffer) => {
      out += piece.toString()
      onOutput?.((signal) => child.kill(signal))
    })
    child.stderr.on('data', (piece: Buffer) => (err += piece.toString()))
    child.on('close', (code) => resolve({ code, out, err }))
  })
}

describe('running a script of the project', () => {
  it("runs it under the pinned Node, in the caller's folder, with the caller's arguments", async () => {
    const { code, out, err } = await launch([echo, '0', 'one two', '--three'])
    expect(JSON.parse(out)).toEqual({
      node: `v${packages.dependencies.node}`,
      rest: ['one two', '--three'],
      folder: os.tmpdir(),
    })
    expect([code, err]).toEqual([0, ''])
  })

  it("ends with the script's exit code", async () => {
    expect((await launch([echo, '5'])).code).toBe(5)
  })

  it('hands a signal on and ends as the script does', async () => {
    expect((await launch([echo, 'wait'], (kill) => kill('SIGTERM'))).code).toBe(7)
  })

  it('says how it is called', async () => {
    const { code, err } = await launch([])
    expect(code).toBe(2)
    expect(err).toContain('SCRIPT.ts')
  })
})
