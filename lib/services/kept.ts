import type { IsoDate } from '../base/calendar.ts'
import type { Contact, Who } from '../knowledge/knowledge.ts'
import type { Plan } from '../engine/plan.ts'
import type { ConditionRecord } from '../record/record.ts'
import type { FileRead } from '../tables/file-read.ts'

/** Who writes, and from which device: on every write, shown as unverified until accounts exist. */
export interface Actor {
  readonly name: string
  readonly role: Who
  readonly device: string
}

/** What every kept row wears. */
export interface Kept {
  readonly id: string
  readonly version: number
  readonly createdAt: number
  readonly updatedAt: number
}

export interface Project extends Kept {
  readonly name: string
  /** A made-up project: said so wherever it is shown. */
  readonly invented: boolean
}

export interface Site extends Kept {
  readonly projectId: string
  /** As records write it; empty for finds whose records name no site. */
  readonly code: string
  readonly name: string
}

export interface SiteContact extends Kept {
  readonly siteId: string
  readonly kind: Contact
  readonly name: string
  readonly reach: string
}

export interface Person extends Kept {
  readonly name: string
  readonly role: Who
  readonly verified: boolean
}

export interface Find extends Kept {
  readonly projectId: string
  readonly siteId: string
  readonly siteCode: string
  readonly findNumber: string
}

export interface KeptRecord extends Kept {
  readonly findId: string
  readonly recordedOn: IsoDate | null
  readonly contentHash: string
  readonly record: ConditionRecord
  readonly importId: string | null
  readonly by: Actor
}

export interface KeptPlan extends Kept {
  readonly recordId: string
  readonly knowledge: string
  readonly asOf: IsoDate
  readonly plan: Plan
}

export interface ImportBatch extends Kept {
  readonly projectId: string
  readonly fileName: string
  readonly sha256: string
  readonly kind: FileRead['kind']
  readonly headings: readonly string[]
  readonly recordsRead: number
  readonly recordsAdded: number
  readonly recordsAlreadyThere: number
  readonly rowsRejected: number
  readonly problems: number
  readonly by: Actor
}

export interface Change {
  readonly id: string
  readonly at: number
  readonly what: string
  readonly by: Actor
  readonly touched: readonly Touched[]
}

/** Rows of one table that one transaction wrote; `ids` names the first of them. */
export interface Touched {
  readonly table: string
  /** Only what can be made again is ever removed. */
  readonly verb: 'added' | 'changed' | 'removed'
  readonly count: number
  readonly ids: readonly string[]
}
