import type { IsoDate } from '../base/calendar.ts'
import type { Outcome } from '../base/outcome.ts'
import type { Plan } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { BoxGiven, RoomGiven } from '../record/places.ts'
import type { ConditionRecord } from '../record/record.ts'
import type { UnreadableRow } from '../tables/file-read.ts'
import type { BandCount, FindQuery, UrgencyCount } from './find-query.ts'
import type {
  Actor,
  Change,
  Find,
  ImportBatch,
  KeptPlan,
  KeptRecord,
  Person,
  Project,
  Site,
  SiteContact,
} from './kept.ts'
import type { Standing } from './standing.ts'
import type { Box, Room, ToKeep } from './places.ts'
import type { Answer, Trouble } from '../base/trouble.ts'

/** What services ask of the outside. lib/database answers it; lib/start.ts joins the two. */
export interface World {
  readonly store: Store
  readonly knowledge: Knowledge
  /** The day it is, where this machine stands. */
  readonly today: () => IsoDate
  /** The folder of the tool itself, where content/ lies. */
  readonly root: string
}

export interface Store {
  readonly read: <Value>(work: (reads: Reads) => Answer<Value>) => Answer<Value>
  /**
   * All of it is kept or nothing, with one line in the change trail: `what` was done, by whom, from where. `work` may be
   * run again when another writer was in the way, so it must do nothing but read and write through `writes`.
   */
  readonly write: <Value>(what: string, by: Actor, work: (writes: Writes) => Answer<Value>) => Answer<Value>
  readonly close: () => Promise<void>
}

export interface Reads {
  readonly projects: {
    readonly all: () => Promise<readonly Project[]>
    readonly byId: (id: string) => Promise<Project | null>
    readonly byName: (name: string) => Promise<Project | null>
  }
  readonly sites: {
    readonly ofProject: (projectId: string) => Promise<readonly Site[]>
    readonly byId: (id: string) => Promise<Site | null>
    readonly contacts: (projectId: string) => Promise<readonly SiteContact[]>
  }
  readonly people: { readonly all: () => Promise<readonly Person[]> }
  readonly finds: {
    readonly byId: (id: string) => Promise<Find | null>
    /** In the order asked; unknown ids are left out. */
    readonly byIds: (ids: readonly string[]) => Promise<readonly Find[]>
    readonly byNumbers: (siteId: string, numbers: readonly string[]) => Promise<readonly Find[]>
    /** In the order of their numbers, after the one named. */
    readonly page: (projectId: string, after: Find | null, limit: number) => Promise<readonly Find[]>
  }
  readonly records: {
    readonly byId: (id: string) => Promise<KeptRecord | null>
    /** Oldest first: by day, then by when they were kept. */
    readonly ofFinds: (findIds: readonly string[]) => Promise<readonly KeptRecord[]>
    readonly hashesOf: (
      findIds: readonly string[],
    ) => Promise<readonly Pick<KeptRecord, 'findId' | 'contentHash'>[]>
  }
  readonly plans: { readonly ofRecords: (recordIds: readonly string[]) => Promise<readonly KeptPlan[]> }
  readonly standings: {
    /** Finds whose standing was made on another day or with other knowledge. */
    readonly outOfDate: (
      projectId: string,
      asOf: IsoDate,
      knowledge: string,
      limit: number,
    ) => Promise<readonly Find[]>
    readonly list: (query: FindQuery) => Promise<readonly Standing[]>
    readonly count: (query: FindQuery) => Promise<number>
    readonly byUrgency: (projectId: string) => Promise<readonly UrgencyCount[]>
    readonly byBand: (projectId: string) => Promise<readonly BandCount[]>
  }
  readonly imports: {
    readonly ofProject: (projectId: string) => Promise<readonly ImportBatch[]>
    readonly byId: (id: string) => Promise<ImportBatch | null>
    readonly rejected: (
      importId: string,
      afterRow: number,
      limit: number,
    ) => Promise<readonly UnreadableRow[]>
  }
  readonly rooms: { readonly ofProject: (projectId: string) => Promise<readonly Room[]> }
  readonly boxes: { readonly ofProject: (projectId: string) => Promise<readonly Box[]> }
  readonly changes: { readonly latest: (limit: number) => Promise<readonly Change[]> }
}

export type { UnreadableRow }

export interface NewRecord {
  readonly findId: string
  readonly record: ConditionRecord
  readonly contentHash: string
  readonly importId: string | null
}

/** Kept, or refused because the version read is no longer the newest. */
export type Written = Outcome<{ readonly id: string }, Trouble>

export interface Writes extends Reads {
  readonly projects: Reads['projects'] & {
    readonly add: (project: Pick<Project, 'name' | 'invented'>) => Promise<Project>
  }
  readonly sites: Reads['sites'] & {
    /** The site with that code, made where it is new. */
    readonly ensure: (projectId: string, code: string) => Promise<Site>
    readonly keepContact: (siteId: string, contact: ContactToKeep) => Promise<Written>
  }
  readonly finds: Reads['finds'] & {
    /** The finds with those numbers, those that are new made; in the order asked. */
    readonly ensure: (site: Site, numbers: readonly string[]) => Promise<readonly Find[]>
  }
  readonly records: Reads['records'] & {
    /** Adds those that are not there yet and gives their ids; a record with the same content is already there. */
    readonly add: (records: readonly NewRecord[]) => Promise<readonly string[]>
  }
  readonly plans: Reads['plans'] & {
    readonly add: (plans: readonly { readonly recordId: string; readonly plan: Plan }[]) => Promise<void>
  }
  readonly standings: Reads['standings'] & {
    readonly keep: (standings: readonly Standing[]) => Promise<void>
    /** Has every standing of the project made again before it is next shown. */
    readonly outdate: (projectId: string) => Promise<void>
  }
  /** Rows that could not be read are kept as they came, to be mended, never dropped. */
  readonly imports: Reads['imports'] & {
    readonly begin: (batch: ImportBegun) => Promise<string>
    readonly reject: (importId: string, rows: readonly UnreadableRow[]) => Promise<void>
    readonly finish: (importId: string, counts: ImportCounts) => Promise<void>
  }
  readonly rooms: Reads['rooms'] & {
    readonly keep: (projectId: string, rooms: readonly ToKeep<RoomGiven>[]) => Promise<readonly Written[]>
  }
  readonly boxes: Reads['boxes'] & {
    readonly keep: (projectId: string, boxes: readonly ToKeep<BoxGiven>[]) => Promise<readonly Written[]>
  }
}

export type ImportBegun = Pick<ImportBatch, 'projectId' | 'fileName' | 'sha256' | 'kind' | 'headings'>
export type ImportCounts = Pick<
  ImportBatch,
  'recordsRead' | 'recordsAdded' | 'recordsAlreadyThere' | 'rowsRejected' | 'problems'
>

/** `version` as of `ToKeep`. */
export type ContactToKeep = Pick<SiteContact, 'kind' | 'name' | 'reach'> & { readonly version: number | null }
