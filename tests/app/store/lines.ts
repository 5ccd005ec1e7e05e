import type { IsoDate } from '../../../lib/base/calendar.ts'
import type { BoxOutlook } from '../../../lib/services/box-outlook.ts'
import type { BoxLine } from '../../../lib/services/show-store.ts'

export const day = (text: string) => text as IsoDate
export const today = day('2026-11-25')

/** A quiet box: read lately, dry, its gel good for long. */
export const quiet: BoxLine = {
  box: {
    id: 'box-1',
    version: 1,
    createdAt: 0,
    writtenAt: 0,
    origin: 'here',
    projectId: 'project',
    given: { box: 'TW-B01', room: 'Metal store', shelf: 'A1', gel_kg: 0.5, volume_l: 10 },
  } as unknown as BoxLine['box'],
  kind: 'box',
  room: 'Metal store',
  finds: 12,
  needs: { min: 0, max: 15 },
  disagree: false,
  held: { min: 0, max: 15 },
  misfits: [],
  stops: [],
  out: 0,
  newest: { on: day('2026-11-01'), by: 'strip', lowRhPercent: 5, highRhPercent: 10 },
  unreadSince: day('2026-11-01'),
  lid: null,
  loggers: [],
  outlook: null,
  noOutlook: null,
  tub: null,
}

export const outlook: BoxOutlook = {
  airChangesPerDay: { low: 0.2, nominal: 0.4, high: 0.9 },
  airChangesFrom: 'rounds',
  surroundings: {
    meanRhPercent: { low: 45, nominal: 50, high: 55 },
    swingRhPercent: 9,
    highestOn: 20_600,
    from: 'written',
  },
  fan: { days: [], p10: [], p25: [], p50: [], p75: [], p90: [] },
  nowRhPercent: { p10: 6, p50: 8, p90: 11 },
  limitRhPercent: 15,
  daysToLimit: { p10: 98, p50: 150, p90: 207 },
  renewOn: { early: day('2027-03-03'), likely: day('2027-04-24'), late: day('2027-06-20') },
  departedSince: null,
  modelDoubtful: false,
}

export const tub: BoxLine = {
  ...quiet,
  kind: 'tub',
  needs: null,
  newest: null,
  unreadSince: null,
  noOutlook: 'tub',
  tub: {
    filledOn: day('2026-10-01'),
    daysHeld: 55,
    daysAllowed: 42,
    pastItsDays: true,
    waterChangedOn: day('2026-11-20'),
    waterDueOn: day('2026-11-27'),
    waterDue: false,
  },
}
