import fs from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import type { Content } from '../services/record-source.ts'
import { WrongCall, type Call } from './command.ts'

export interface GivenFile {
  readonly name: string
  /** Where it lies; what came down a pipe was put down there. */
  readonly path: string
  readonly content: Content
}

const whyNot: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file.',
  EISDIR: 'It is a folder; name a file in it.',
  EACCES: 'You may not read it.',
}

/** A file is gone through more than once, so what comes down a pipe is put down first and taken away at the end. */
function standardInput(): string {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'quietmetal-'))
  process.on('exit', () => fs.rmSync(folder, { recursive: true, force: true }))
  const file = path.join(folder, 'standard-input')
  const to = fs.openSync(file, 'w')
  const piece = Buffer.alloc(1 << 16)
  for (let size = fs.readSync(0, piece); size > 0; size = fs.readSync(0, piece))
    fs.writeSync(to, piece, 0, size)
  fs.closeSync(to)
  return file
}

/** The one file a command is called with; `-` is standard input. */
export function fileArgument(call: Call): GivenFile {
  const [name, ...more] = call.words
  if (name === undefined) throw new WrongCall('Name the file.')
  if (more.length > 0) throw new WrongCall(`One file at a time; "${more[0]}" is one too many.`)
  const file = name === '-' ? standardInput() : name
  try {
    if (fs.statSync(file).isDirectory()) throw new WrongCall(`${name}: ${whyNot['EISDIR']}`)
    fs.accessSync(file, fs.constants.R_OK)
  } catch (flaw) {
    if (flaw instanceof WrongCall) throw flaw
    const { code = '' } = flaw as NodeJS.ErrnoException
    throw new WrongCall(`${name}: ${whyNot[code] ?? 'It cannot be read.'}`)
  }
  return {
    name: name === '-' ? 'standard input' : path.basename(name),
    path: file,
    content: {
      open: () => fs.createReadStream(file, { highWaterMark: 1 << 20 }),
      size: fs.statSync(file).size,
    },
  }
}
