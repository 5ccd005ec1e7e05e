import { spawn, type ChildProcess } from 'node:child_process'
import os from 'node:os'
import path from 'node:path'

const root = path.resolve(import.meta.dirname, '../..')
const running = new Set<ChildProcess>()

export interface Started {
  readonly address: string
  readonly told: string
  /** Tells it to end and gives its exit code. */
  readonly stop: () => Promise<number | null>
  readonly isRunning: () => boolean
}

/** `npm start` as a person calls it, over the data that `env` names. */
export function launch(env: Readonly<Record<string, string>>): ChildProcess {
  const child = spawn(process.execPath, [path.join(root, 'lib/launch/start.mjs')], {
    cwd: os.tmpdir(),
    // Nothing of the test runner's own surroundings: it would make Next a test of itself.
    env: { PATH: process.env['PATH'], HOME: os.homedir(), ...env } as unknown as NodeJS.ProcessEnv,
  })
  running.add(child)
  child.once('close', () => running.delete(child))
  return child
}

export const ended = (child: ChildProcess) =>
  new Promise<number | null>((resolve) => child.once('close', resolve))

export function start(env: Readonly<Record<string, string>>): Promise<Started> {
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
      resolve({ address, told, stop, isRunning: () => running.has(child) })
    }
    child.stdout!.on('data', hear)
    child.stderr!.on('data', hear)
    void end.then((code) => reject(new Error(`ended with ${code}: ${told}`)))
  })
}

/** What a failed test left running. */
export function killStarted(): void {
  for (const child of running) child.kill('SIGKILL')
}
