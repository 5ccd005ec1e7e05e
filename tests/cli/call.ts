import fs from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import { main } from '../../lib/cli/main.ts'
import { day } from '../database/samples.ts'

export interface Called {
  readonly code: number
  readonly out: string
  readonly err: string
}

const root = path.resolve(import.meta.dirname, '../..')

/** A folder for the files and the data of one test file. */
export function workplace() {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'quietmetal-'))
  return {
    folder,
    file(name: string, content: string | Uint8Array): string {
      fs.writeFileSync(path.join(folder, name), content)
      return path.join(folder, name)
    },
    clear: () => fs.rmSync(folder, { recursive: true, force: true }),
    async call(...args: readonly string[]): Promise<Called> {
      let [out, err] = ['', '']
      const code = await main(args, {
        out: async (text) => void (out += text),
        err: (text) => void (err += text),
        env: { QUIETMETAL_DATA: path.join(folder, 'data') },
        today: () => day('2026-11-25'),
        root,
      })
      return { code, out, err }
    },
  }
}
