import { createHash } from 'node:crypto'
import { canonical } from '../base/canonical.ts'
import type { ConditionRecord } from '../record/record.ts'

/** Two records with this in common say the same about the same find on the same day. */
export function contentHash(record: ConditionRecord): string {
  return createHash('sha256').update(canonical(record)).digest('hex')
}
