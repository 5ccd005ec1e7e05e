import { storeReport } from '../../../lib/papers/store-report.ts'
import type { ReportBox } from '../../../lib/papers/store-report-box.ts'
import type { StoreYear } from '../../../lib/services/store-report.ts'
import { day, today } from '../store/lines.ts'

const box = (name: string, more: Partial<ReportBox> = {}): ReportBox => ({
  box: name,
  room: 'Metal store',
  limits: [{ from: null, to: null, limitRhPercent: 12 }],
  lay: [{ findId: `f-${name}`, from: null, to: null }],
  readings: [],
  gel: [],
  renewOn: null,
  above: { hours: 0, worstRhPercent: null, days: [] },
  ...more,
})

const strip = (on: string, lowRhPercent: number, highRhPercent: number) =>
  ({ on: day(on), by: 'strip', lowRhPercent, highRhPercent, slackRhPercent: 5 }) as const

/** Four boxes: one in band with new gel, one over, one by its logger over for a while, one that nobody read. */
export const lines: readonly ReportBox[] = [
  box('B1', {
    readings: [strip('2026-02-01', 0, 5), strip('2026-05-01', 0, 5)],
    gel: [{ on: day('2026-03-02'), gelKg: 0.5, removedKg: 0.4, from: 'diary' }],
    renewOn: { early: day('2027-02-01'), likely: day('2027-04-01') },
  }),
  box('B2', {
    readings: [strip('2026-05-01', 20, 30)],
    renewOn: { early: day('2026-02-01'), likely: day('2026-04-01') },
  }),
  box('B3', { room: 'Hall', above: { hours: 41, worstRhPercent: 27, days: [day('2026-04-01')] } }),
  box('B4', { room: 'Hall', limits: [{ from: null, to: null, limitRhPercent: null }], lay: [] }),
]

const spread = (p10: number, p50: number, p90: number) => ({ p10, p50, p90, nominal: p50 })
const upkeep = { renewalsPerYear: spread(9, 14, 20), kgPerYear: spread(4, 7, 12) }

export const year: StoreYear = {
  project: { id: 'p', version: 1, createdAt: 0, updatedAt: 0, name: 'Store', invented: true },
  today,
  year: 2026,
  running: true,
  years: [2026, 2025],
  report: storeReport(lines, { from: day('2026-01-01'), to: today, ahead: day('2027-12-31') }),
  lines,
  findNumbers: { 'f-B2': 'TW-0002', 'f-B3': 'TW-0003' },
  boxIds: { B1: 'id-B1', B2: 'id-B2', B3: 'id-B3', B4: 'id-B4' },
  water: [{ on: day('2026-06-01'), room: 'Hall', cause: 'leak', boxes: ['B3'], note: '' }],
  lids: [{ box: 'B2', room: 'Metal store', notSeatedOn: [day('2026-05-01')], opened: 2, minutesOpen: 30 }],
  movements: [
    {
      findId: 'f-B1',
      findNumber: 'TW-0001',
      object: 'nail',
      box: 'B1',
      from: day('2026-10-19'),
      to: null,
      where: 'laboratory',
      why: 'X-radiography',
      days: 37,
      needsHumidity: true,
    },
  ],
  tubs: { tubs: 2, waterChanges: 5 },
  stock: { gelDryKg: 12, gelSpentKg: null },
  drier: {
    byPercent: 10,
    counted: 2,
    leftOut: 1,
    doubtful: ['B2'],
    doubtfulRenewalsPerYear: 6.2,
    whole: { before: upkeep, after: upkeep, saved: upkeep },
    rooms: [
      { room: 'Hall', boxes: 2, nowRhPercent: 45, bought: { before: upkeep, after: upkeep, saved: upkeep } },
    ],
  },
}
