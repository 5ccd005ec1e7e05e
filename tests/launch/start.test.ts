import { spawn, type ChildProcess } from 'node:child_process'
import fs from 'node:fs'
import net from 'node:net'
import os from 'node:os'
import path from 'node:path'
import { afterAll, afterEach, describe, expect, it } from 'vitest'

const root = path.resolve(import.meta.dirname, '../..')
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'quietmetal-'))
const running: ChildProcess[] = []
/** The pages may have to be built first. */
const patience = 300_000

interface Started {
  readonly address: string
  readonly told: string
  readonly stop: () => Promise<number | null>
}

function launch(env: Readonly<Record<string, string>>): ChildProcess {
  const child = spawn(process.execPath, [path.join(root, 'lib/launch/start.mjs')], {
    cwd: os.tmpdir(),
    // Nothing of the test runner's own surroundings: it would make Next a test of itself.
    env: { PATH: process.env['PATH'], HOME: os.homedir(), QUIETMETAL_DATA: folder, ...env } as unknown as NodeJS.ProcessEnv,
  })
  running.push(child)
  return child
}

const ended = (child: ChildProcess) => new Promise<number | null>((resolve) => child.once('close', resolve))

function start(env: Readonly<Record<string, string>> = {}): Promise<Started> {
  const child = launch(env)
  const end = ended(child)
  return new Promise((resolve, reject) => {
    let told = ''
    const hear = (piece: Buffer) => {
      told += piece.toString()
      const address = /open at (http:\S+)[^]*Ctrl/.exec(told)?.[1]
      if (address === undefined) return
      const stop = () => {
        child.kill('SIGTERM')
        return end
      }
      resolve({ address, told, stop })
    }
    child.stdout!.on('data', hear)
    child.stderr!.on('data', hear)
    void end.then((code) => reject(new Error(`ended with ${code}: ${told}`)))
  })
}

afterEach(() => {
  for (const child of running.splice(0)) child.kill('SIGKILL')
})
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }))

describe('npm start', () => {
  it(
    'serves the pages on this machine only, says where they and the data are, and ends when told',
    async () => {
      const { address, told, stop } = await start()
      expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/)
      expect(told).toContain(folder)
      const page = await fetch(address)
      expect(page.status).toBe(200)
      expect(page.headers.get('content-security-policy')).toContain("frame-ancestors 'none'")
      expect(page.headers.get('x-content-type-options')).toBe('nosniff')
      expect(page.headers.get('x-powered-by')).toBeNull()
      expect(fs.existsSync(path.join(folder, 'quietmetal.sqlite'))).toBe(true)
      expect(await stop()).toBe(0)
    },
    patience,
  )

  it(
    'takes the next free port where its own is taken',
    async () => {
      const [one, other] = [await start(), await start()]
      expect(new URL(other.address).port).not.toBe(new URL(one.address).port)
      await Promise.all([one.stop(), other.stop()])
    },
    patience,
  )

  it(
    'says so where the port it was told is taken',
    async () => {
      const taken = net.createServer().listen(0, '127.0.0.1')
      await new Promise((resolve) => taken.once('listening', resolve))
      const { port } = taken.address() as net.AddressInfo
      const child = launch({ PORT: String(port) })
      let told = ''
      child.stderr!.on('data', (piece: Buffer) => (told += piece.toString()))
      expect(await ended(child)).toBe(1)
      expect(told).toContain(`Port ${port} is taken`)
      taken.close()
    },
    patience,
  )
})
