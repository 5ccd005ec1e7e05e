/** Lines and readings, counted. */
export interface LogRows {
  readonly lines: number
  /** Readings that stand in the series, over all channels together. */
  readonly read: number
  /** Readings with a moment and no value at all: the sensor gave none. */
  readonly empty: number
  /** Lines of the table that gave no reading. */
  readonly unreadable: number
  /** Readings that stood there twice with the same values; left out once. */
  readonly repeated: number
  /** Readings of a moment that another reading tells otherwise; the first was kept. */
  readonly disagreeing: number
  /** How often a reading is earlier than the one before it. */
  readonly backward: number
}

export const noRows: LogRows = {
  lines: 0,
  read: 0,
  empty: 0,
  unreadable: 0,
  repeated: 0,
  disagreeing: 0,
  backward: 0,
}
