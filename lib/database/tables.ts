import type {
  DiaryRow,
  LogFilePartRow,
  LogFileRow,
  LoggerRow,
  ReadingDayRow,
  StayRow,
  StoreSettingRow,
} from './store-rows.ts'

/**
 * The tables as rows. Ids are UUIDv7 text made by the application, times epoch milliseconds, days ISO text, yes/no 0 or 1,
 * JSON text. Every row says which version it is and who wrote it last, from which device.
 */
export interface Row {
  id: string
  version: number
  created_at: number
  updated_at: number
  person_id: string
  device_id: string
}

export interface ProjectRow extends Row {
  name: string
  invented: number
}

export interface SiteRow extends Row {
  project_id: string
  code: string
  name: string
}

export interface ContactRow extends Row {
  site_id: string
  kind: string
  name: string
  reach: string
}

/** Chosen on this machine, not proven: `verified` stays 0 until accounts exist. */
export interface PersonRow extends Row {
  name: string
  role: string
  verified: number
}

export interface DeviceRow extends Row {
  name: string
}

/** A room or a box of the store: known by its name, all else as JSON under the names of the contract. */
export interface PlaceRow extends Row {
  project_id: string
  name: string
  given: string
}

export interface FindRow extends Row {
  project_id: string
  site_id: string
  find_number: string
  sort_key: string
}

/** What somebody saw of one find on one day. Never overwritten. */
export interface ConditionRecordRow extends Row {
  find_id: string
  /** Empty where the record names no day. */
  recorded_on: string
  content_hash: string
  record: string
  import_id: string | null
}

/** A plan as it was issued, with the knowledge that issued it. */
export interface PlanRow extends Row {
  record_id: string
  knowledge: string
  as_of: string
  plan: string
}

/** What a surface was found to be, and what was thought before. Never overwritten; the same content is entered once. */
export interface IdentificationRow extends Row {
  project_id: string
  find_id: string
  record_id: string
  knowledge: string
  given: string
  thought: string
  content_hash: string
}

/** Where a find stands by its newest record, planned for `as_of`: what lists are sorted and grouped by. Made again at will. */
export interface StandingRow extends Row {
  find_id: string
  project_id: string
  record_id: string
  knowledge: string
  as_of: string
  urgency: number
  due_on: string
  inspect_on: string
  stops: number
  keep: string
  /** The key of what its humidity asks for: `0-12`, `conflict`, `wet`. */
  band: string
  box: string
  search: string
  sort_key: string
  line: string
}

export interface ImportBatchRow extends Row {
  project_id: string
  file_name: string
  sha256: string
  /** csv, xlsx or json, told by content. */
  kind: string
  /** The headings as they stood, as JSON: rejected rows are handed back under them. */
  headings: string
  records_read: number
  records_added: number
  records_already_there: number
  rows_rejected: number
  problems: number
}

export interface RejectedRowRow extends Row {
  import_id: string
  row_number: number
  line: number | null
  cells: string
  problems: string
}

/** One line of the change trail a transaction: who did what, from where, when, to which rows. */
export interface ChangeRow extends Row {
  what: string
  person_name: string
  person_role: string
  device_name: string
  touched: string
}

export interface AppLockRow {
  name: string
  holder: string
  until_ms: number
}

export interface MigrationRow {
  step: string
  done_at: number
}

export interface Tables {
  project: ProjectRow
  site: SiteRow
  contact: ContactRow
  person: PersonRow
  device: DeviceRow
  room: PlaceRow
  box: PlaceRow
  find: FindRow
  condition_record: ConditionRecordRow
  plan: PlanRow
  standing: StandingRow
  import_batch: ImportBatchRow
  rejected_row: RejectedRowRow
  logger: LoggerRow
  log_file: LogFileRow
  log_file_part: LogFilePartRow
  reading_day: ReadingDayRow
  diary_entry: DiaryRow
  store_setting: StoreSettingRow
  stay: StayRow
  identification: IdentificationRow
  change: ChangeRow
  app_lock: AppLockRow
  migration: MigrationRow
}

/** Tables whose rows wear the common columns. */
export type Written = Exclude<keyof Tables, 'app_lock' | 'migration'>
