import type { ConditionRecord } from '../../lib/record/record.ts'
import { gels } from './store-gel.ts'
import type { Row } from './store-rounds.ts'

/** What else happened in the invented store. */
const gel: readonly Row[] = gels.map(({ on, box, kg, kind, rh, removedKg = '' }) => ({
  event: 'gel-change',
  on,
  box,
  gel_kg: kg,
  gel_kind: kind,
  gel_rh_percent: rh,
  removed_kg: removedKg,
}))

const water: readonly Row[] = [
  ['2026-11-20', 'TW-B50'],
  ['2026-11-20', 'TW-B51'],
  ['2026-11-03', 'TW-B53'],
  ['2026-11-19', 'TW-B54'],
].map(([on, box]) => ({ event: 'water-change', on: on!, box: box! }))

const lids: readonly Row[] = [
  { event: 'lid', on: '2026-09-03', box: 'TW-B02', lid: 'opened', minutes: 20, why: 'photographs' },
  { event: 'lid', on: '2026-02-11', box: 'TW-B35', lid: 'not-seated', why: 'corner caught on a bag' },
]

const coupons: readonly Row[] = [
  ['2026-03-02', 'Metal store', 'silver', 32, 365, 0.09, 'mass-gain', 'by the door'],
  ['2026-03-02', 'Metal store', 'copper', 32, 365, 0.06, 'mass-gain', 'by the door'],
  ['2026-03-03', 'General store', 'silver', 32, 366, 0.34, 'mass-gain', 'among the wooden shelves'],
  ['2026-03-03', 'General store', 'lead', 32, 366, 1.9, 'mass-gain', 'among the wooden shelves'],
].map(([on, room, metal, area_cm2, days, mass_change_mg, method, note]) => ({
  event: 'coupon',
  on: on!,
  room: room!,
  metal: metal!,
  area_cm2: area_cm2!,
  days: days!,
  mass_change_mg: mass_change_mg!,
  method: method!,
  note: note!,
}))

/** The first find that is recorded in the box, by its newest record. */
function findIn(records: readonly ConditionRecord[], box: string): string {
  const newest = new Map(records.map((record) => [record.find_number, record]))
  return [...newest.values()].find((record) => record.box === box)!.find_number
}

function moves(records: readonly ConditionRecord[]): readonly Row[] {
  const moved = (on: string, find_number: string, box: string, more: Row): Row => ({
    event: 'moved',
    on,
    box,
    site_code: 'TW',
    find_number,
    ...more,
  })
  const [drawn, lent, carried] = [
    findIn(records, 'TW-B21'),
    findIn(records, 'TW-B29'),
    findIn(records, 'TW-B19'),
  ]
  return [
    moved('2026-08-31', drawn, 'TW-B21', {
      move: 'out',
      where: 'drawing office',
      why: 'drawing for the report',
    }),
    moved('2026-09-04', drawn, 'TW-B21', { move: 'back' }),
    moved('2026-10-19', lent, 'TW-B29', { move: 'out', where: 'laboratory', why: 'X-radiography' }),
    moved('2026-09-14', carried, 'TW-B02', {
      move: 'to-box',
      from_box: 'TW-B19',
      why: 'gel of the old box spent',
    }),
  ]
}

export function diary(records: readonly ConditionRecord[]): readonly Row[] {
  return [...gel, ...water, ...lids, ...coupons, ...moves(records)].toSorted((a, b) =>
    String(a['on']) < String(b['on']) ? -1 : 1,
  )
}
