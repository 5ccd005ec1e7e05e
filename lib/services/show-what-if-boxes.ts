import type { Range } from '../base/range.ts'
import type { ClosedBox, Surroundings } from '../boxes/box.ts'
import { figureValue, type Figures } from '../boxes/figure-value.ts'
import { everyCase, whatIf, type Bought, type Change } from '../boxes/what-if.ts'
import { permeanceGPerM2DayKPa, wallAsAirChangesPerDay } from '../climate/permeation.ts'
import type { BoxGiven } from '../record/places.ts'
import { limitOf } from './box-needs.ts'
import type { BoxOutlook } from './box-outlook.ts'
import { closedBox } from './closed-box.ts'
import type { LeftOut, WhatIfChange } from './show-what-if.ts'
import type { BoxLine } from './show-store.ts'
import type { StoreData } from './store-data.ts'

/** What the change buys one box. */
export interface BoxBought {
  readonly box: string
  readonly boxId: string
  readonly room: string
  readonly meanRhPercent: { readonly now: number; readonly then: number }
  readonly gelKg: { readonly now: number; readonly then: number }
  readonly bought: Bought
  /** Share of the cases in which its gel comes no drier than its limit [1]. */
  readonly beyondHelp: number
  readonly noRoomForGel: boolean
  readonly doubtful: boolean
  readonly airChangesFrom: BoxOutlook['airChangesFrom']
  readonly roomSupposed: boolean
}

interface Left {
  readonly box: string
  readonly because: LeftOut
}

/** Few boxes are reckoned in every case, a store full of them in some. */
const fewBoxes = 12

/** What the change buys each box, and the boxes of which it cannot be told, with why. */
export function boughtBoxes(
  knowledge: Figures,
  data: StoreData,
  lines: readonly BoxLine[],
  change: WhatIfChange,
): { readonly bought: readonly BoxBought[]; readonly leftOut: readonly Left[] } {
  const every = lines.length <= fewBoxes ? everyCase.box : everyCase.store
  const bought: BoxBought[] = []
  const leftOut: Left[] = []
  for (const line of lines) {
    const known = knownOf(knowledge, data, line)
    const told = typeof known === 'string' ? known : boughtBy(knowledge, line, known, change, every)
    if (typeof told === 'string') leftOut.push({ box: line.box.given.box, because: told })
    else bought.push(told)
  }
  return { bought, leftOut }
}

interface BoxKnown {
  readonly closed: ClosedBox
  readonly outlook: BoxOutlook
}

function knownOf(knowledge: Figures, data: StoreData, line: BoxLine): BoxKnown | LeftOut {
  const { box, outlook, noOutlook, room: name } = line
  const room = data.rooms.find(({ given }) => given.room === name)?.given
  const limitRhPercent = limitOf(box.given, data.standings.get(box.given.box) ?? [])
  // Whatever it holds and since when: this is about gel put in anew, as dry as gel is put in here.
  const renewed = { ...box.given, gel_conditioned_on: box.given.gel_conditioned_on ?? data.today }
  const closed = closedBox({ box: renewed, room, entries: [], limitRhPercent }, knowledge)
  if (typeof closed === 'string') return closed
  if (outlook === null) return noOutlook ?? 'no-start'
  if (limitRhPercent === null) return 'no-limit'
  return closed.startRhPercent.nominal >= limitRhPercent ? 'begins-over' : { closed, outlook }
}

function boughtBy(
  knowledge: Figures,
  { box, room, kind }: BoxLine,
  { closed, outlook }: BoxKnown,
  change: WhatIfChange,
  every: number,
): BoxBought | LeftOut {
  const { surroundings, airChangesPerDay } = outlook
  const changes = changesOf(
    knowledge,
    { given: box.given, kind, closed, surroundings, airChangesPerDay },
    change,
  )
  if (typeof changes === 'string') return changes
  const told = whatIf(closed, surroundings, airChangesPerDay, changes, every)
  if (told === null) return 'no-limit'
  const { beyondHelp, ...bought } = told
  const gelKg = { now: closed.gelKg, then: closed.gelKg * change.gelTimes }
  return {
    box: box.given.box,
    boxId: box.id,
    room,
    meanRhPercent: { now: surroundings.meanRhPercent.nominal, then: meanThen(surroundings, change) },
    gelKg,
    bought,
    beyondHelp,
    noRoomForGel: gelKg.then > (closed.volumeL / 1000) * figureValue(knowledge, 'gel-bulk-density'),
    doubtful: outlook.modelDoubtful,
    airChangesFrom: outlook.airChangesFrom,
    roomSupposed: surroundings.from === 'assumed',
  }
}

const meanThen = ({ meanRhPercent }: Surroundings, { drierByPercent }: WhatIfChange) =>
  Math.min(100, Math.max(0, meanRhPercent.nominal - drierByPercent))

interface Of {
  readonly given: BoxGiven
  readonly kind: string
  readonly closed: ClosedBox
  readonly surroundings: Surroundings
  readonly airChangesPerDay: Range
}

function changesOf(knowledge: Figures, of: Of, change: WhatIfChange): readonly Change[] | 'film-disagrees' {
  const changes: Change[] = []
  // The film first: it takes its own share off the leak as it is, before gaps are closed.
  if (change.film !== null && of.kind === 'barrier-pack') {
    const wallAirChangesPerDay = wallsOf(knowledge, of, change.film)
    if (wallAirChangesPerDay.before >= of.airChangesPerDay.nominal) return 'film-disagrees'
    changes.push({ kind: 'better-film', wallAirChangesPerDay })
  }
  if (change.drierByPercent !== 0)
    changes.push({ kind: 'drier-room', meanRhPercent: meanThen(of.surroundings, change) })
  if (change.leakLessPercent !== 0)
    changes.push({ kind: 'leaks-less', times: 1 - change.leakLessPercent / 100 })
  if (change.gelTimes !== 1) changes.push({ kind: 'more-gel', gelKg: of.closed.gelKg * change.gelTimes })
  return changes
}

function wallsOf(
  knowledge: Figures,
  { given, closed }: Of,
  { now, then }: NonNullable<WhatIfChange['film']>,
) {
  const value = (id: string) => figureValue(knowledge, id)
  const lets = (film: string) => {
    const permeance = permeanceGPerM2DayKPa(
      value(film),
      value('film-test-temperature'),
      value('film-test-rh'),
    )
    return wallAsAirChangesPerDay(
      permeance * areaM2(given, closed.volumeL),
      closed.volumeL,
      closed.temperatureC,
    )
  }
  return { before: lets(now), after: lets(then) }
}

/** All sides of the pack by its measures; where nobody measured it, those of a cube, which is the least there can be. */
function areaM2({ length_mm: l, width_mm: w, height_mm: h }: BoxGiven, volumeL: number): number {
  if (l !== undefined && w !== undefined && h !== undefined) return (2 * (l * w + l * h + w * h)) / 1_000_000
  return (6 * volumeL ** (2 / 3)) / 100
}
