import type { Row } from './tables.ts'

/** A logger of the register: known by its serial, all else as JSON. */
export interface LoggerRow extends Row {
  project_id: string
  serial: string
  given: string
}

/** A logger's file as it came: its bytes stand in `log_file_part`, packed. */
export interface LogFileRow extends Row {
  project_id: string
  name: string
  sha256: string
  bytes: number
  answers: string
  brought: string
}

export interface LogFilePartRow extends Row {
  log_file_id: string
  place: number
  packed: string
}

/** The readings of one channel on one day [UTC], packed, and their sketch. Made again at will from the kept files. */
export interface ReadingDayRow extends Row {
  logger_id: string
  channel: string
  day: string
  block: string
  sketch: string
}

/** What happened in the store. Never overwritten; the same content is entered once. */
export interface DiaryRow extends Row {
  project_id: string
  kind: string
  /** Empty where it concerns no box, or no room. */
  box: string
  room: string
  find_id: string | null
  on_day: string
  /** 0 where the moment is not known. */
  at_ms: number
  /** Which of those entered together: the order in which they were told. */
  place: number
  given: string
  content_hash: string
}

/** How the store is run, one row a project. */
export interface StoreSettingRow extends Row {
  project_id: string
  given: string
}

/** Where a find lay, by its dated records and by what was moved. Made again at will. */
export interface StayRow extends Row {
  project_id: string
  find_id: string
  place: number
  box: string
  /** Empty: ever since it is known; `to_day` empty: it is there still. */
  from_day: string
  to_day: string
}
