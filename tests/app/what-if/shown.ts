import { noChange, type WhatIfChange, type WhatIfShown } from '../../../lib/services/show-what-if.ts'
import { today } from '../store/lines.ts'

const spread = (p10: number, p50: number, p90: number) => ({ p10, p50, p90, nominal: p50 })
const nothing = spread(0, 0, 0)
const now = { renewalsPerYear: spread(25, 38, 60), kgPerYear: spread(12, 19, 30) }
const then = { renewalsPerYear: spread(16, 24, 40), kgPerYear: spread(8, 12, 18) }
const saved = { renewalsPerYear: spread(9, 14, 20), kgPerYear: spread(4, 7, 12) }

/** An answer as the service gives it: one box reckoned of two; saved is something once anything is tried. */
export function answer(change: Partial<WhatIfChange> = {}, more: Partial<WhatIfShown> = {}): WhatIfShown {
  const tried = Object.keys(change).length > 0
  const bought = tried
    ? { before: now, after: then, saved }
    : { before: now, after: now, saved: { renewalsPerYear: nothing, kgPerYear: nothing } }
  const each = (box: string) => ({
    box,
    boxId: `id-${box}`,
    room: 'Metal store',
    meanRhPercent: { now: 50, then: 50 - (change.drierByPercent ?? 0) },
    gelKg: { now: 0.5, then: 0.5 * (change.gelTimes ?? 1) },
    bought,
    beyondHelp: 0,
    noRoomForGel: false,
    doubtful: false,
    airChangesFrom: 'rounds' as const,
    roomSupposed: false,
  })
  return {
    project: { id: 'p', version: 1, createdAt: 0, updatedAt: 0, name: 'Store', invented: true },
    today,
    asked: { box: undefined, room: undefined, change: { ...noChange, ...change } },
    box: null,
    rooms: ['Hall', 'Metal store'],
    boxes: ['B1', 'B2', 'B3'],
    packs: 0,
    counted: 2,
    whole: bought,
    byRoom: ['Metal store', 'Hall'].map((room) => ({
      room,
      boxes: 1,
      meanRhPercent: { now: 50, then: 50 - (change.drierByPercent ?? 0) },
      bought,
    })),
    each: [each('B1'), each('B2')],
    moreGelKg: 0,
    leftOut: [{ because: 'no-gel', boxes: ['B3'] }],
    mayComeDamp: [],
    noRoomForGel: [],
    doubtful: [],
    doubtfulRenewalsPerYear: 0,
    restsOn: { airChanges: { rounds: 2 }, roomsSupposed: [] },
    ...more,
  }
}
