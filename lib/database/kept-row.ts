import type { Actor, Kept } from '../services/kept.ts'
import type { Row } from './tables.ts'

export function kept({ id, version, created_at, updated_at }: Row): Kept {
  return { id, version, createdAt: created_at, updatedAt: updated_at }
}

/** The columns of `person` and `device` that a query with an author joins in. */
export interface AuthorColumns {
  readonly person_name: string
  readonly person_role: string
  readonly device_name: string
}

export function author({ person_name, person_role, device_name }: AuthorColumns): Actor {
  return { name: person_name, role: person_role as Actor['role'], device: device_name }
}

/** JSON that this program wrote itself; what comes from outside is checked before it is kept. */
export function fromJson<Value>(text: string): Value {
  return JSON.parse(text) as Value
}
