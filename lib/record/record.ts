import type { IsoDate } from '../base/calendar.ts'
import type * as ids from './ids.ts'

/**
 * The condition record in memory is the contract's own JSON: the same names, no second spelling. A key that is not there
 * is *absent* (nobody looked); `unknown` (in a list: the one entry `unknown`) means somebody looked and could not tell, and
 * in a list the one entry `none` that somebody looked and there was none.
 */
type Id<List extends readonly string[]> = List[number] | 'unknown'
type Ids<List extends readonly string[]> = readonly (Id<List> | 'none')[]

export interface Treatment {
  readonly what: string
  readonly on?: string
  readonly by?: string
  readonly medium?: string
}

export interface Component {
  readonly component: string
  readonly material: (typeof ids.material)[number]
  readonly role?: Id<typeof ids.role>
  readonly known_by?: Id<typeof ids.knownBy>
  readonly seen?: Ids<typeof ids.seen>
  readonly extent?: Id<typeof ids.extent>
  readonly evidence?: Ids<typeof ids.evidence>
  readonly fragility?: Id<typeof ids.fragility>
  readonly completeness?: Id<typeof ids.completeness>
  readonly original_surface?: Id<typeof ids.originalSurface>
  readonly core?: Id<typeof ids.core>
  /** Answers to questions, `question:answer`; `lib/record/look.ts` reads them. */
  readonly looked?: readonly string[]
  /** Unknown columns of this row, kept as they came. */
  readonly extra?: Readonly<Record<string, unknown>>
  /** Given but not understood, by field: kept to be mended, counted as absent. */
  readonly unread?: Readonly<Record<string, string>>
}

export interface ConditionRecord {
  readonly find_number: string
  readonly site_code?: string
  readonly context?: string
  readonly object?: string
  readonly object_kind?: string
  readonly period?: string
  readonly date_from?: number | 'unknown'
  readonly date_to?: number | 'unknown'
  readonly quantity?: number | 'unknown'
  readonly fragments?: number | 'unknown'
  readonly box?: string
  readonly recorded_by?: string
  readonly recorded_on?: IsoDate
  readonly lifted_on?: IsoDate
  readonly lifted_by?: string
  readonly lifted_as?: Id<typeof ids.liftedAs>
  readonly days_since_lifting?: number | 'unknown'
  readonly mass_g?: number | 'unknown'
  readonly length_mm?: number | 'unknown'
  readonly width_mm?: number | 'unknown'
  readonly thickness_mm?: number | 'unknown'
  readonly burial?: Ids<typeof ids.burial>
  readonly soil_ph?: number | 'unknown'
  readonly soil_chloride_mg_kg?: number | 'unknown'
  readonly state_now?: Id<typeof ids.stateNow>
  readonly wet_when_lifted?: Id<typeof ids.yesNo>
  readonly wetted_by?: Id<typeof ids.wettedBy>
  readonly stored_rh_percent?: number | 'unknown'
  readonly stored_temperature_c?: number | 'unknown'
  readonly packed_in?: Ids<typeof ids.packedIn>
  readonly done_already?: Ids<typeof ids.doneAlready>
  readonly treatments?: readonly Treatment[]
  readonly proposed?: Ids<typeof ids.proposed>
  /** `name:result` or `part/name:result`, as written; `lib/record/tests.ts` reads them. */
  readonly tests?: readonly string[]
  readonly hazards_noticed?: Ids<typeof ids.hazardsNoticed>
  readonly needed_for?: Ids<typeof ids.neededFor>
  readonly needed_by?: IsoDate
  readonly significance?: Id<typeof ids.significance>
  readonly watched_days?: number | 'unknown'
  readonly retention?: Id<typeof ids.retention>
  readonly grade?: string
  readonly grade_scale?: string
  readonly plates?: readonly string[]
  readonly images?: readonly string[]
  readonly samples?: readonly string[]
  readonly part_of?: readonly string[]
  readonly set_with?: readonly string[]
  readonly split_from?: readonly string[]
  readonly position?: string
  readonly notes?: string
  readonly components: readonly Component[]
  readonly extra?: Readonly<Record<string, unknown>>
  readonly unread?: Readonly<Record<string, string>>
}
