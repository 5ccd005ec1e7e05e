import { createHash } from 'node:crypto'
import { canonical } from '../base/canonical.ts'
import type { NewEntry } from './diary.ts'

/** Two entries with this in common tell the same thing of the same moment: whoever sends one again adds nothing. */
export function diaryHash({ kind, box, room, findId, on, atMs, given }: NewEntry): string {
  return createHash('sha256').update(canonical({ kind, box, room, findId, on, atMs, given })).digest('hex')
}

export const hashed = (entry: NewEntry): NewEntry & { readonly contentHash: string } => ({
  ...entry,
  contentHash: diaryHash(entry),
})
