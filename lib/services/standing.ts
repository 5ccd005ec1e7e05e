import type { IsoDate } from '../base/calendar.ts'
import { folded } from '../base/fold.ts'
import { sortKey } from '../base/sort-key.ts'
import type { Band, Plan, Urgency } from '../engine/plan.ts'
import type { ConditionRecord } from '../record/record.ts'
import { bandKey } from './band-key.ts'
import type { Find, KeptRecord } from './kept.ts'

/** What a list shows of a find: taken from the plan of its newest record, so that a list needs no plan of its own. */
export interface FindLine {
  readonly findNumber: string
  readonly siteCode: string
  readonly object: string
  readonly quantity: number
  readonly parts: readonly { readonly component: string; readonly material: string }[]
  readonly urgency: Urgency
  /** Why so pressing, as the plan says it. */
  readonly reasons: readonly string[]
  readonly firstStep: string | null
  readonly stops: readonly { readonly code: string; readonly text: string; readonly who: string }[]
  readonly keep: Plan['storage']['keep']
  readonly rhPercent: Band | null
  readonly interimRhPercent: Band | null
  readonly bands: readonly {
    readonly component: string
    readonly limit: Band
    readonly preference: Band | null
  }[]
  readonly conflict: { readonly between: readonly string[]; readonly gapPercent: number } | null
  readonly storedRhPercent: number | null
  readonly dueOn: IsoDate | null
  readonly inspectOn: IsoDate
  readonly box: string
  readonly recordedOn: IsoDate | null
  readonly requests: readonly string[]
  readonly packing: readonly string[]
}

export interface Standing {
  readonly findId: string
  readonly projectId: string
  readonly recordId: string
  readonly knowledge: string
  readonly asOf: IsoDate
  readonly line: FindLine
  /** The key of `bandKey`: finds with the same one can stand in the same climate. */
  readonly band: string
  /** Everything a search may find it by, case and accents folded. */
  readonly search: string
  readonly sortKey: string
}

function earliest(days: readonly (IsoDate | null)[]): IsoDate | null {
  return days.reduce((first, day) => (first === null || (day !== null && day < first) ? day : first), null)
}

function lineOf(find: Find, record: ConditionRecord, plan: Plan, box: string): FindLine {
  const { storage } = plan
  return {
    findNumber: find.findNumber,
    siteCode: find.siteCode,
    object: record.object ?? record.object_kind ?? '',
    quantity: typeof record.quantity === 'number' ? record.quantity : 1,
    parts: record.components.map(({ component, material }) => ({ component, material })),
    urgency: plan.urgency,
    reasons: plan.urgencyBasis.map(({ text, because }) => text || because),
    firstStep: plan.steps[0]?.text ?? null,
    stops: plan.cautions
      .filter(({ level }) => level === 'stop')
      .map(({ code, text, who }) => ({ code, text, who })),
    keep: storage.keep,
    rhPercent: storage.rhPercent,
    interimRhPercent: storage.interim?.rhPercent ?? null,
    bands: storage.components.map(({ component, limit, preference }) => ({ component, limit, preference })),
    conflict: storage.conflict && {
      between: storage.conflict.between,
      gapPercent: storage.conflict.gapPercent,
    },
    storedRhPercent: typeof record.stored_rh_percent === 'number' ? record.stored_rh_percent : null,
    dueOn: earliest(plan.steps.map(({ due }) => due)),
    inspectOn: plan.inspection.nextOn,
    box,
    recordedOn: record.recorded_on ?? null,
    requests: plan.requests.map(({ method }) => method),
    packing: plan.packing.map(({ code }) => code),
  }
}

/** `box`: where it lies now, by its records and by what was moved since. */
export function standingOf(find: Find, { id, record }: KeptRecord, plan: Plan, box: string): Standing {
  const words = [
    find.siteCode,
    find.findNumber,
    record.object,
    record.object_kind,
    record.context,
    record.period,
    box,
    ...record.components.flatMap(({ component, material }) => [component, material]),
  ]
  return {
    findId: find.id,
    projectId: find.projectId,
    recordId: id,
    knowledge: plan.knowledge,
    asOf: plan.asOf,
    line: lineOf(find, record, plan, box),
    band: bandKey(plan.storage),
    search: folded(words.filter((word) => word !== undefined && word !== '').join(' ')),
    sortKey: sortKey(`${find.siteCode} ${find.findNumber}`),
  }
}
