import fs from 'node:fs'
import path from 'node:path'
import type { Download } from 'playwright-core'
import { knowledge } from '../../knowledge-at-hand.ts'
import { namesOf } from '../../../lib/knowledge/names.ts'
import { readFile } from '../../../lib/tables/read-file.ts'
import type { FileRead } from '../../../lib/tables/file-read.ts'

const names = namesOf(knowledge.vocabulary)
const xlsxType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'

export interface ChosenFile {
  readonly name: string
  readonly mimeType: string
  readonly buffer: Buffer
}

export const workbook = (name: string, bytes: Uint8Array): ChosenFile => ({
  name,
  mimeType: xlsxType,
  buffer: Buffer.from(bytes),
})

export const read = (bytes: Uint8Array): Promise<FileRead> =>
  readFile(bytes, names, knowledge.vocabulary.textWords)

export const demoWorkbook = (): Uint8Array =>
  fs.readFileSync(path.resolve(import.meta.dirname, '../../../content/demo/tollgate-wharf.xlsx'))

export async function saved(download: Download): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  return { name: download.suggestedFilename(), bytes: fs.readFileSync(await download.path()) }
}

export { names }
