import type { IsoDate } from '../base/calendar.ts'
import type { Kept } from './kept.ts'

/** A room of the store and the climate it is run at. */
export interface Room extends Kept {
  readonly projectId: string
  readonly name: string
  readonly rhPercent: { readonly low: number | null; readonly high: number | null }
  readonly temperatureC: { readonly low: number | null; readonly high: number | null }
}

/** A box under the names of the contract's table; absent where nobody said. */
export interface BoxDetail {
  readonly shelf?: string
  readonly kind?: string
  readonly model?: string
  readonly volume_l?: number
  readonly air_changes_per_day?: number
  readonly gel_kg?: number
  readonly gel_kind?: string
  readonly gel_conditioned_on?: IsoDate
  readonly gel_rh_percent?: number
  readonly target_min?: number
  readonly target_max?: number
  readonly opened_on?: IsoDate
  readonly seal_note?: string
  readonly extra?: Readonly<Record<string, unknown>>
}

export interface Box extends Kept {
  readonly projectId: string
  readonly name: string
  readonly room: string
  readonly detail: BoxDetail
}
