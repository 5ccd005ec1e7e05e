import * as ids from './ids.ts'

/**
 * Every field of the condition record, in the order of the contract: where it stands, what kind of answer it takes and
 * which answers there are. The readers, the writers, the facts and the Intake grid are all driven by this one table.
 */
export type FieldKind =
  | 'text' // free words, one
  | 'texts' // a list of free words
  | 'choice' // one of `ids`, or `unknown`
  | 'choices' // any number of `ids`, or `unknown`
  | 'open-choice' // one of `ids`, or other words kept as written
  | 'number' // a number, or `unknown`
  | 'whole' // a whole number, or `unknown`
  | 'date' // ISO date
  | 'tests' // `name:result`, `part/name:result`
  | 'looks' // `question:answer`
  | 'treatments' // { what, on, by, medium }

const listKinds: readonly FieldKind[] = ['choices', 'texts', 'tests', 'treatments', 'looks']
/** Several values may stand in one cell. */
export const isList = (kind: FieldKind): boolean => listKinds.includes(kind)

export interface Field {
  readonly level: 'find' | 'component'
  readonly kind: FieldKind
  readonly ids?: readonly string[]
  /** Lowest and highest number that can be true, in the unit the name ends in; outside is a problem. */
  readonly range?: readonly [number, number]
}

const find = (kind: FieldKind, more: Omit<Field, 'level' | 'kind'> = {}): Field => ({ level: 'find', kind, ...more })
const part = (kind: FieldKind, more: Omit<Field, 'level' | 'kind'> = {}): Field => ({ level: 'component', kind, ...more })

export const fields = {
  site_code: find('text'),
  find_number: find('text'),
  context: find('text'),
  object: find('text'),
  object_kind: find('open-choice', { ids: ids.objectKind }),
  period: find('text'),
  date_from: find('whole', { range: [-10000, 2100] }),
  date_to: find('whole', { range: [-10000, 2100] }),
  quantity: find('whole', { range: [1, 1_000_000] }),
  fragments: find('whole', { range: [1, 1_000_000] }),
  box: find('text'),
  recorded_by: find('text'),
  recorded_on: find('date'),
  lifted_on: find('date'),
  lifted_by: find('text'),
  lifted_as: find('choice', { ids: ids.liftedAs }),
  days_since_lifting: find('whole', { range: [0, 100_000] }),
  mass_g: find('number', { range: [0.0001, 1e8] }),
  length_mm: find('number', { range: [0.01, 1e5] }),
  width_mm: find('number', { range: [0.01, 1e5] }),
  thickness_mm: find('number', { range: [0.001, 1e5] }),
  burial: find('choices', { ids: ids.burial }),
  soil_ph: find('number', { range: [0, 14] }),
  soil_chloride_mg_kg: find('number', { range: [0, 1e6] }),
  state_now: find('choice', { ids: ids.stateNow }),
  wet_when_lifted: find('choice', { ids: ids.yesNo }),
  wetted_by: find('choice', { ids: ids.wettedBy }),
  stored_rh_percent: find('number', { range: [0, 100] }),
  stored_temperature_c: find('number', { range: [-40, 80] }),
  packed_in: find('choices', { ids: ids.packedIn }),
  done_already: find('choices', { ids: ids.doneAlready }),
  treatments: find('treatments'),
  proposed: find('choices', { ids: ids.proposed }),
  tests: find('tests'),
  hazards_noticed: find('choices', { ids: ids.hazardsNoticed }),
  needed_for: find('choices', { ids: ids.neededFor }),
  needed_by: find('date'),
  significance: find('choice', { ids: ids.significance }),
  watched_days: find('whole', { range: [0, 100_000] }),
  retention: find('choice', { ids: ids.retention }),
  grade: find('text'),
  grade_scale: find('text'),
  plates: find('texts'),
  images: find('texts'),
  samples: find('texts'),
  part_of: find('texts'),
  set_with: find('texts'),
  split_from: find('texts'),
  position: find('text'),
  notes: find('text'),
  component: part('text'),
  role: part('choice', { ids: ids.role }),
  material: part('choice', { ids: ids.material }),
  known_by: part('choice', { ids: ids.knownBy }),
  seen: part('choices', { ids: ids.seen }),
  extent: part('choice', { ids: ids.extent }),
  evidence: part('choices', { ids: ids.evidence }),
  fragility: part('choice', { ids: ids.fragility }),
  completeness: part('choice', { ids: ids.completeness }),
  original_surface: part('choice', { ids: ids.originalSurface }),
  core: part('choice', { ids: ids.core }),
  looked: part('looks'),
} as const satisfies Record<string, Field>

export type FieldName = keyof typeof fields
