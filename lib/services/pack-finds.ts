import type { IsoDate } from '../base/calendar.ts'
import type { PackBox, PackFind } from '../boxes/pack-find.ts'
import { assessFacts } from '../engine/assess.ts'
import type { Band, Plan, Statement } from '../engine/plan.ts'
import { reason } from '../engine/reasoning.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { factsOf } from '../record/facts.ts'
import { boxKinds, type BoxGiven, type BoxKind, type RoomGiven } from '../record/places.ts'
import type { ConditionRecord } from '../record/record.ts'
import { urgencyRank } from './find-query.ts'
import type { Standing } from './standing.ts'

/** A find as packing sees it: planned again, for lists keep too little of a plan. */
export function packFind(
  { findId, line }: Standing,
  record: ConditionRecord,
  knowledge: Knowledge,
  asOf: IsoDate,
): PackFind {
  const facts = factsOf(record, knowledge.vocabulary.textWords, asOf)
  const plan = assessFacts(record.find_number, facts, knowledge, { asOf, questions: false })
  const families = reason(facts, knowledge).conclusions.get('family')?.components ?? []
  const says = codesOf(plan.packing)
  const steps = codesOf([...plan.steps, ...plan.handling])
  const { storage } = plan
  return {
    id: findId,
    name: line.findNumber,
    box: line.box === '' ? null : line.box,
    keep: storage.keep,
    rhPercent: storage.rhPercent,
    holdingRhPercent: storage.interim?.rhPercent ?? null,
    temperatureC: storage.temperatureC,
    dark: storage.light === 'dark' || says.has('keep-dark'),
    families: [...new Set(families.flatMap(({ taken }) => taken ?? []))].toSorted(),
    apartFromMetals: says.has('keep-metals-apart'),
    apartFromOrganics: says.has('keep-from-organics'),
    cleanAir: storage.air.includes('no-acid-vapour') || storage.air.includes('no-sulphur'),
    stopped: stopped(plan),
    alone: says.has('closed-bag'),
    askBeforeMoving: says.has('ask-before-moving') || storage.decidedBy === 'conservator',
    dryFirst: steps.has('air-dry-openly') || steps.has('do-not-seal-wet'),
    measured: {
      quantity: number(record.quantity) ?? 1,
      massG: number(record.mass_g),
      lengthMm: number(record.length_mm),
      widthMm: number(record.width_mm),
      thicknessMm: number(record.thickness_mm),
    },
    rank: urgencyRank(plan.urgency),
  }
}

const stopped = ({ cautions }: Plan): boolean => cautions.some(({ level }) => level === 'stop')
const number = (value: number | 'unknown' | undefined): number | null =>
  typeof value === 'number' ? value : null

/** What folds under a line is said all the same. */
function codesOf(statements: readonly Statement[]): ReadonlySet<string> {
  return new Set(statements.flatMap(({ code, also }) => [code, ...codesOf(also)]))
}

/** A box of the list as packing sees it. */
export function packBox(box: BoxGiven, room: RoomGiven | undefined, isStopped: boolean): PackBox {
  const sides = [box.length_mm, box.width_mm, box.height_mm]
    .filter((side) => side !== undefined)
    .toSorted((a, b) => b - a)
  return {
    name: box.box,
    model: box.model ?? '',
    room: box.room ?? '',
    shelf: box.shelf ?? '',
    kind: boxKinds.find((kind): kind is BoxKind => kind === box.kind) ?? 'box',
    count: 1,
    volumeL: box.volume_l ?? null,
    insideMm: sides.length === 3 ? [sides[0]!, sides[1]!, sides[2]!] : null,
    maxKg: box.max_kg ?? null,
    airChangesPerDay: box.air_changes_per_day ?? null,
    roomRhPercent: bandOf(room?.rh_low, room?.rh_high, 0, 100),
    roomTemperatureC: bandOf(room?.t_low, room?.t_high, -Infinity, Infinity),
    targetRhPercent: bandOf(box.target_min, box.target_max, 0, 100),
    stopped: isStopped,
  }
}

/** An end that nobody wrote may lie anywhere. */
function bandOf(low: number | undefined, high: number | undefined, least: number, most: number): Band | null {
  return low === undefined && high === undefined ? null : { min: low ?? least, max: high ?? most }
}
