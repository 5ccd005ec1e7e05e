import type { Kept } from './kept.ts'

/** How a project's store is run: what levelled renewals and the gel as a stock are computed from. Null: nobody has said. */
export interface StoreSettingGiven {
  /** IANA name: the clock on the wall of the store. */
  readonly timeZone: string | null
  readonly gelDryKg: number | null
  readonly gelSpentKg: number | null
  readonly ovenKgPerBatch: number | null
  readonly ovenHoursPerBatch: number | null
  readonly ovenBatchesPerWeek: number | null
  readonly minutesPerBox: number | null
  readonly hoursPerWeek: number | null
  /** Twelve figures from January on, where months differ. */
  readonly hoursByMonth: readonly number[] | null
}

export interface StoreSetting extends Kept {
  readonly projectId: string
  readonly given: StoreSettingGiven
}

export const nothingSet: StoreSettingGiven = {
  timeZone: null,
  gelDryKg: null,
  gelSpentKg: null,
  ovenKgPerBatch: null,
  ovenHoursPerBatch: null,
  ovenBatchesPerWeek: null,
  minutesPerBox: null,
  hoursPerWeek: null,
  hoursByMonth: null,
}
