import type { Knowledge } from '../knowledge/knowledge.ts'
import { namesOf } from '../knowledge/names.ts'
import type { Problem } from '../record/problem.ts'
import type { HazardSeen } from '../record/read-row.ts'
import { streamCsv, type CsvBatch } from '../tables/csv-stream.ts'
import { surveyCsv } from '../tables/csv-survey.ts'
import type { OpenFile } from '../tables/csv-walk.ts'
import type { FileRead } from '../tables/file-read.ts'
import { readFile } from '../tables/read-file.ts'

/** Records, problems and unreadable rows of a stretch of a file, in its order. */
export type Batch = CsvBatch

/** What is known of a file before its records are gone through. */
export interface FileHead extends Pick<
  FileRead,
  'kind' | 'encoding' | 'sheet' | 'headings' | 'unknownColumns'
> {
  /** Of the file as a whole and its headings; those of rows come with the rows. */
  readonly problems: readonly Problem[]
  /** From every cell of every row, readable or not. */
  readonly loudHazards: readonly HazardSeen[]
}

/** A file of records, to be gone through as often as needed, a batch at a time. */
export interface RecordSource {
  readonly head: FileHead
  readonly batches: () => AsyncIterable<Batch>
}

/** From here on [bytes] a table of text is gone through twice instead of being held whole. */
const largeBytes = 8 * 1024 * 1024
const recordsAtOnce = 200

async function whole(open: OpenFile): Promise<Uint8Array> {
  const pieces: Uint8Array[] = []
  for await (const piece of open()) pieces.push(piece)
  return pieces.length === 1 ? pieces[0]! : Buffer.concat(pieces)
}

async function* slices({ records, problems, unreadableRows }: FileRead): AsyncGenerator<Batch> {
  yield { records: records.slice(0, recordsAtOnce), problems, unreadableRows }
  for (let at = recordsAtOnce; at < records.length; at += recordsAtOnce) {
    yield { records: records.slice(at, at + recordsAtOnce), problems: [], unreadableRows: [] }
  }
}

/** A file's content: held already, or to be opened as often as needed. */
export type Content = Uint8Array | { readonly open: OpenFile; readonly size: number }

export function openerOf(content: Content): OpenFile {
  if (!(content instanceof Uint8Array)) return content.open
  return async function* () {
    yield content
  }
}

/** Told apart by content. A large table of text leaves in flat memory; all else is held whole, within the reader's own limits. */
export async function recordSource(knowledge: Knowledge, content: Content): Promise<RecordSource> {
  const open = openerOf(content)
  const size = content instanceof Uint8Array ? content.length : content.size
  const { textWords } = knowledge.vocabulary
  const names = namesOf(knowledge.vocabulary)
  if (size >= largeBytes) {
    const survey = await surveyCsv(open, names, textWords)
    if (survey) {
      const { encoding, headings, unknownColumns, problems, loudHazards } = survey
      return {
        head: { kind: 'csv', encoding, sheet: null, headings, unknownColumns, problems, loudHazards },
        batches: () => streamCsv(open, survey, names),
      }
    }
  }
  const read = await readFile(await whole(open), names, textWords)
  return { head: { ...read, problems: [] }, batches: () => slices(read) }
}

/** Something asks to be looked at: a row that gave nothing, or a value that was not understood. */
export const isProblem = ({ severity }: Problem): boolean => severity !== 'note'
