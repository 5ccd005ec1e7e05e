import type { ConditionRecord } from '../../lib/record/record.ts'
import type { Row } from './store-rounds.ts'

/** What else happened in the invented store. */
const gel: readonly Row[] = [
  ['2021-06-14', 'TW-B04', 1, 'blue indicating', 6, ''],
  ['2023-01-15', 'TW-B04', 1.5, 'blue indicating', 8, 1],
  ['2022-03-08', 'TW-B10', 0.5, 'plain', 6, ''],
  ['2025-05-12', 'TW-B10', 0.5, 'plain', 9, 0.5],
  ['2023-05-30', 'TW-B08', 1, 'plain', 5, ''],
  ['2026-04-25', 'TW-B08', 1.5, 'plain', 7, 1],
  ['2024-02-19', 'TW-B22', 1, 'orange indicating', 5, ''],
  ['2025-06-28', 'TW-B22', 1.5, 'orange indicating', 6, 1],
  ['2024-11-04', 'TW-B05', 0.5, 'plain', 6, ''],
  ['2026-05-12', 'TW-B05', 0.5, 'plain', 5, 0.5],
].map(([on, box, gel_kg, gel_kind, gel_rh_percent, removed_kg]) => ({
  event: 'gel-change',
  on: on!,
  box: box!,
  gel_kg: gel_kg!,
  gel_kind: gel_kind!,
  gel_rh_percent: gel_rh_percent!,
  removed_kg: removed_kg!,
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
