import type { Knowledge } from '../knowledge/knowledge.ts'
import { namesOf } from '../knowledge/names.ts'
import { readFile, type FileRead } from '../tables/read-file.ts'

/** A file of records read with the words of the knowledge: what a person calls a field or a value counts as its id. */
export function readRecordsFile(knowledge: Knowledge, bytes: Uint8Array): Promise<FileRead> {
  return readFile(bytes, namesOf(knowledge.vocabulary), knowledge.vocabulary.textWords)
}

/** Something in it asks to be looked at: a row that gave nothing, or a value that was not understood. */
export function hasProblems(read: FileRead): boolean {
  return read.problems.some(({ severity }) => severity !== 'note')
}
