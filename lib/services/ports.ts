import type { IsoDate } from '../base/calendar.ts'
import type { Outcome } from '../base/outcome.ts'
import type { Plan } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { BoxGiven, RoomGiven } from '../record/places.ts'
import type { LoggerGiven } from '../record/store-loggers.ts'
import type { ConditionRecord } from '../record/record.ts'
import type { UnreadableRow } from '../tables/file-read.ts'
import type { DiaryEntry, DiaryQuery, NewEntry } from './diary.ts'
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
import type { LogFile, Logger, ReadingDay } from './loggers.ts'
import type { Identification, NewIdentification } from './identification.ts'
import type { Standing } from './standing.ts'
import type { FindStay } from './stays.ts'
import type { StoreSetting, StoreSettingGiven } from './store-setting.ts'
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
  readonly boxes: {
    readonly ofProject: (projectId: string) => Promise<readonly Box[]>
    readonly byId: (id: string) => Promise<Box | null>
  }
  readonly loggers: {
    /** In the order of their serials. */
    readonly ofProject: (projectId: string) => Promise<readonly Logger[]>
    readonly byId: (id: string) => Promise<Logger | null>
    readonly bySerials: (projectId: string, serials: readonly string[]) => Promise<readonly Logger[]>
  }
  readonly logFiles: {
    /** Oldest first: as they were read. */
    readonly ofProject: (projectId: string) => Promise<readonly LogFile[]>
    readonly byId: (id: string) => Promise<LogFile | null>
    readonly byHash: (projectId: string, sha256: string) => Promise<LogFile | null>
    /** The bytes as they were handed in, packed, in their order. */
    readonly packed: (id: string) => Promise<readonly string[]>
  }
  readonly readings: {
    /** Oldest first, both days included. */
    readonly days: (channel: ChannelDays) => Promise<readonly (ReadingDay & { readonly version: number })[]>
    readonly sketches: (channel: ChannelDays) => Promise<readonly Pick<ReadingDay, 'day' | 'sketch'>[]>
    /** What there is of each channel; `writtenAt` tells whether it has changed. */
    readonly extents: (loggerIds: readonly string[]) => Promise<readonly ChannelExtent[]>
  }
  readonly diary: {
    /** Oldest first. */
    readonly list: (query: DiaryQuery) => Promise<readonly DiaryEntry[]>
  }
  readonly stays: {
    /** By their first day. */
    readonly inBoxes: (projectId: string, boxes: readonly string[]) => Promise<readonly FindStay[]>
    /** Find by find, in the order of time. */
    readonly ofFinds: (findIds: readonly string[]) => Promise<readonly FindStay[]>
  }
  readonly settings: { readonly ofProject: (projectId: string) => Promise<StoreSetting | null> }
  /** Oldest first: as they were entered. */
  readonly identifications: {
    readonly ofFinds: (findIds: readonly string[]) => Promise<readonly Identification[]>
    readonly ofProject: (projectId: string) => Promise<readonly Identification[]>
  }
  readonly changes: { readonly latest: (limit: number) => Promise<readonly Change[]> }
}

/** One channel of a logger, from day to day; left out: from the first, to the last. */
export interface ChannelDays {
  readonly loggerId: string
  readonly channel: string
  readonly from?: IsoDate
  readonly to?: IsoDate
}

export interface ChannelExtent {
  readonly loggerId: string
  readonly channel: string
  readonly firstDay: IsoDate
  readonly lastDay: IsoDate
  readonly days: number
  readonly writtenAt: number
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
  readonly loggers: Reads['loggers'] & {
    readonly keep: (projectId: string, loggers: readonly ToKeep<LoggerGiven>[]) => Promise<readonly Written[]>
  }
  readonly logFiles: Reads['logFiles'] & {
    /** Its id, or null where a file with the same bytes is there already. */
    readonly add: (file: NewLogFile) => Promise<string | null>
    /** The same bytes, read with other answers. */
    readonly readAnew: (
      file: Pick<LogFile, 'id' | 'version'>,
      read: Pick<LogFile, 'answers' | 'brought'>,
    ) => Promise<Written>
  }
  readonly readings: Reads['readings'] & {
    /** `version` null: a day that is not there yet. Refused as a whole where another writer was faster. */
    readonly keep: (
      days: readonly (ReadingDay & { readonly version: number | null })[],
    ) => Promise<Outcome<null, Trouble>>
    /** Takes all readings of these loggers away, to be made again from their files. */
    readonly clear: (loggerIds: readonly string[]) => Promise<void>
  }
  readonly diary: Reads['diary'] & {
    /** Adds those that are not there yet and gives their ids. */
    readonly add: (
      projectId: string,
      entries: readonly (NewEntry & { readonly contentHash: string })[],
    ) => Promise<readonly string[]>
  }
  readonly stays: Reads['stays'] & {
    /** These finds lay there and nowhere else. */
    readonly keep: (
      projectId: string,
      findIds: readonly string[],
      stays: readonly FindStay[],
    ) => Promise<void>
  }
  readonly settings: Reads['settings'] & {
    readonly keep: (projectId: string, setting: ToKeep<StoreSettingGiven>) => Promise<Written>
  }
  readonly identifications: Reads['identifications'] & {
    /** False where the same was entered before. */
    readonly add: (identification: NewIdentification) => Promise<boolean>
  }
}

export type NewLogFile = Pick<LogFile, 'projectId' | 'name' | 'sha256' | 'bytes' | 'answers' | 'brought'> & {
  readonly packed: readonly string[]
}

export type ImportBegun = Pick<ImportBatch, 'projectId' | 'fileName' | 'sha256' | 'kind' | 'headings'>
export type ImportCounts = Pick<
  ImportBatch,
  'recordsRead' | 'recordsAdded' | 'recordsAlreadyThere' | 'rowsRejected' | 'problems'
>

/** `version` as of `ToKeep`. */
export type ContactToKeep = Pick<SiteContact, 'kind' | 'name' | 'reach'> & { readonly version: number | null }
