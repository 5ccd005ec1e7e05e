import { parentPort, workerData } from 'node:worker_threads'
import { inflateRawSync } from 'node:zlib'
import readExcelFile from 'read-excel-file/node'
import { lostCells, sheetFiles } from './xlsx-lost-cells.ts'
import { zipDirectory, type ZipEntry } from './zip-directory.ts'
import type { Sheet, WorkbookRead } from './xlsx-sheets.ts'

const headerBytes = 30
const stored = 0
const deflated = 8

/** What an entry holds, or null where it holds more than the directory declared or cannot be unpacked. */
function unpacked(file: Buffer, entry: ZipEntry): Buffer | null {
  const start = entry.at + headerBytes + file.readUInt16LE(entry.at + 26) + file.readUInt16LE(entry.at + 28)
  const packed = file.subarray(start, start + entry.compressedBytes)
  if (entry.method === stored) return packed
  if (entry.method !== deflated) return null
  try {
    return inflateRawSync(packed, { maxOutputLength: Math.max(entry.bytes, 1) })
  } catch {
    return null
  }
}

/** Days keep no time of day unless one was given. */
function dateText(date: Date): string {
  const iso = date.toISOString()
  return iso.endsWith('T00:00:00.000Z') ? iso.slice(0, 10) : iso.slice(0, 16)
}

function cellText(value: unknown): string {
  if (value === null || value === undefined) return ''
  return value instanceof Date ? dateText(value) : String(value)
}

/** Puts back what the reader leaves empty: errors, and formulas that were saved without their value. */
function withLost(name: string, rows: string[][], xml: string): Sheet {
  const formulas: (readonly [number, number])[] = []
  for (const { row, column, text } of lostCells(xml)) {
    const cells = (rows[row] ??= [])
    while (cells.length <= column) cells.push('')
    if (cells[column] !== '') continue
    cells[column] = text
    if (text.startsWith('=')) formulas.push([row, column])
  }
  return { name, rows: Array.from(rows, (row) => row ?? []), formulas }
}

async function read(file: Buffer): Promise<WorkbookRead> {
  const directory = zipDirectory(file)
  if (!directory.ok) return { ok: false, code: 'unsafe-workbook', found: directory.why }
  // A directory may lie; what it declared is held against what really comes out before anything else is done with it.
  const files = new Map(directory.entries.map((entry) => [entry.name, unpacked(file, entry)]))
  const lying = [...files].find(([, content]) => content === null)
  if (lying) return { ok: false, code: 'unsafe-workbook', found: lying[0] }
  const textOf = (name: string) => files.get(name)?.toString('utf8') ?? ''
  try {
    const sheets = await readExcelFile(file, { trim: false })
    const sources = sheetFiles(textOf('xl/workbook.xml'), textOf('xl/_rels/workbook.xml.rels'))
    return {
      ok: true,
      sheets: sheets.map(({ sheet, data }, at) =>
        withLost(
          sheet,
          data.map((row) => row.map(cellText)),
          textOf(sources[at] ?? ''),
        ),
      ),
    }
  } catch (error) {
    return {
      ok: false,
      code: 'broken-workbook',
      found: error instanceof Error ? error.message : String(error),
    }
  }
}

parentPort!.postMessage(await read(Buffer.from((workerData as { readonly bytes: Uint8Array }).bytes)))
