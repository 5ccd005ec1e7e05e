import fs from 'node:fs'
import net from 'node:net'
import os from 'node:os'
import path from 'node:path'
import { afterAll, afterEach, describe, expect, it } from 'vitest'
import { ended, killStarted, launch, start } from './started.ts'

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'quietmetal-'))
const withData = { QUIETMETAL_DATA: folder }
/** The pages may have to be built first. */
const patience = 300_000

afterEach(killStarted)
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }))

describe('npm start', () => {
  it(
    'serves the pages on this machine only, says where they and the data are, and ends when told',
    async () => {
      const { address, told, stop } = await start(withData)
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
      const [one, other] = [await start(withData), await start(withData)]
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
      const child = launch({ ...withData, PORT: String(port) })
      let told = ''
      child.stderr!.on('data', (piece: Buffer) => (told += piece.toString()))
      expect(await ended(child)).toBe(1)
      expect(told).toContain(`Port ${port} is taken`)
      taken.close()
    },
    patience,
  )
})
