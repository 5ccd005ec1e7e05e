import { spawn } from 'node:child_process'
import { createWriteStream } from 'node:fs'
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { finished } from 'node:stream/promises'
import { csvLine, csvText } from '../../lib/tables/csv-write.ts'
import { recordTable } from '../../lib/tables/write-file.ts'
import { assemblage } from '../demo/assemblage.ts'

/** Good rows of one CSV, planned by the command as a person would call it: time from start to last plan, peak memory. */
export interface RowFigures {
  readonly rows: number
  readonly plans: number
  readonly seconds: number
  readonly peakMegabytes: number
}

const root = path.resolve(import.meta.dirname, '../..')

/** The assemblage over and over under new find numbers, until there are `rows` rows. */
async function writeRows(file: string, rows: number): Promise<void> {
  const [headings, ...table] = recordTable(assemblage().records, {})
  const number = headings!.indexOf('find_number')
  const out = createWriteStream(file)
  out.write(csvText([headings!]))
  for (let written = 0, turn = 0; written < rows; turn++) {
    for (const cells of table.slice(0, rows - written)) {
      out.write(csvLine(cells.map((cell, at) => (at === number && cell ? `${cell}-${turn}` : cell))))
      written += 1
    }
  }
  out.end()
  await finished(out)
}

/** Runs the command and reads the most memory the kernel ever saw it hold. */
async function planFile(file: string): Promise<Omit<RowFigures, 'rows'>> {
  const start = performance.now()
  const child = spawn(
    process.execPath,
    [path.join(root, 'lib/cli/main.ts'), 'plan', file, '--format', 'json', '--on', '2026-11-25'],
    { stdio: ['ignore', 'pipe', 'ignore'] },
  )
  let plans = 0
  child.stdout.on('data', (piece: Buffer) => {
    for (let at = piece.indexOf(10); at >= 0; at = piece.indexOf(10, at + 1)) plans += 1
  })
  let peakMegabytes = 0
  const look = async () => {
    const status = await readFile(`/proc/${child.pid}/status`, 'utf8').catch(() => '')
    peakMegabytes = Math.max(peakMegabytes, Number(/VmHWM:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024)
  }
  const watch = setInterval(() => void look(), 100)
  const code = await new Promise((ended) => child.on('close', ended))
  clearInterval(watch)
  if (code === 2 || code === 3) throw new Error(`The command ended with ${code}.`)
  return { plans, seconds: (performance.now() - start) / 1000, peakMegabytes }
}

export async function rowFigures(rows = 200_000): Promise<RowFigures> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'quietmetal-bench-'))
  try {
    const file = path.join(folder, 'rows.csv')
    await writeRows(file, rows)
    return { rows, ...(await planFile(file)) }
  } finally {
    await rm(folder, { recursive: true })
  }
}
