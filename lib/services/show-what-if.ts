import type { IsoDate } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { together, type Bought } from '../boxes/what-if.ts'
import type { BoxOutlook, NoOutlook } from './box-outlook.ts'
import type { Project } from './kept.ts'
import type { World } from './ports.ts'
import { refresh } from './refresh.ts'
import { boughtBoxes, type BoxBought } from './show-what-if-boxes.ts'
import type { BoxLine } from './show-store.ts'
import { storeData } from './store-data.ts'
import { reckonStore } from './store-reckoned.ts'

export interface WhatIfAsked {
  readonly projectId: string
  /** A box by its name or its id; else the boxes of a room; neither: the whole store. */
  readonly box?: string | undefined
  readonly room?: string | undefined
  readonly change: WhatIfChange
}

/** What is tried out; all at nothing leaves the store as it is. */
export interface WhatIfChange {
  /** Points of relative humidity by which the air of the rooms is drier the year round; below nothing it is damper. */
  readonly drierByPercent: number
  /** How much less air leaks in [% of what does now]. */
  readonly leakLessPercent: number
  readonly gelTimes: number
  /** Films that packs are of, and would be of: ids of figures. Null: the same film. */
  readonly film: { readonly now: string; readonly then: string } | null
}

export const noChange: WhatIfChange = { drierByPercent: 0, leakLessPercent: 0, gelTimes: 1, film: null }

/** Why a box is left out of the sum: nothing can be told of it, nothing limits it, or nothing helps it. */
export type LeftOut =
  | NoOutlook
  | 'no-limit'
  /** Its gel comes no drier than its limit: renewing does not help. */
  | 'begins-over'
  /** By print its film lets in more than the pack was seen to let in: the two do not go together. */
  | 'film-disagrees'

export interface WhatIfShown {
  readonly project: Project
  readonly today: IsoDate
  readonly asked: Omit<WhatIfAsked, 'projectId'>
  /** One box, where one was asked for. */
  readonly box: { readonly id: string; readonly name: string; readonly room: string } | null
  /** All there is to choose from. */
  readonly rooms: readonly string[]
  readonly boxes: readonly string[]
  /** Packs of film among the boxes that are asked about. */
  readonly packs: number
  readonly counted: number
  readonly whole: Bought
  /** Rooms of the store, where all of it is asked about. */
  readonly byRoom: readonly RoomBought[]
  /** Boxes for which it buys most, so many as one reads. */
  readonly each: readonly BoxBought[]
  /** Dry gel that goes into the boxes once, before any is saved [kg]. */
  readonly moreGelKg: number
  readonly leftOut: readonly { readonly because: LeftOut; readonly boxes: readonly string[] }[]
  /** Boxes whose gel may come too damp to help, in some of the cases that were reckoned. */
  readonly mayComeDamp: readonly string[]
  /** Boxes in which so much gel has no room. */
  readonly noRoomForGel: readonly string[]
  /** Boxes whose readings stray from the model, and how many of the renewals now are theirs, in the middle of what is likely. */
  readonly doubtful: readonly string[]
  readonly doubtfulRenewalsPerYear: number
  readonly restsOn: RestsOn
}

export interface RoomBought {
  readonly room: string
  readonly boxes: number
  readonly meanRhPercent: { readonly now: number; readonly then: number }
  readonly bought: Bought
}

/** How many boxes' leaks are known in which way, and how many stand in rooms whose air is only supposed. */
export interface RestsOn {
  readonly airChanges: { readonly [Way in BoxOutlook['airChangesFrom']]?: number }
  readonly roomsSupposed: readonly string[]
}

const leftOutOrder = [
  'begins-over',
  'film-disagrees',
  'no-gel',
  'no-volume',
  'no-start',
  'no-limit',
  'tub',
] as const satisfies readonly LeftOut[]

const byRoomOf = (bought: readonly BoxBought[]): readonly RoomBought[] =>
  [...Map.groupBy(bought, ({ room }) => room)]
    .map(([room, boxes]) => ({
      room,
      boxes: boxes.length,
      meanRhPercent: boxes[0]!.meanRhPercent,
      bought: together(boxes.map((box) => box.bought)),
    }))
    .toSorted(mostSavedFirst)

const mostSavedFirst = (one: { readonly bought: Bought }, other: { readonly bought: Bought }) =>
  other.bought.saved.renewalsPerYear.p50 - one.bought.saved.renewalsPerYear.p50 ||
  other.bought.before.renewalsPerYear.p50 - one.bought.before.renewalsPerYear.p50

const names = (boxes: readonly BoxBought[], which: (box: BoxBought) => boolean) =>
  boxes.filter(which).map(({ box }) => box)

/** What is told of boxes whose readings stray from the model hangs on that model all the same: how much of the sum is theirs. */
export function doubtfulOf(boxes: readonly BoxBought[]) {
  const doubtful = boxes.filter((box) => box.doubtful)
  return {
    doubtful: doubtful.map(({ box }) => box),
    doubtfulRenewalsPerYear: doubtful.reduce((sum, { bought }) => sum + bought.before.renewalsPerYear.p50, 0),
  }
}

function restsOn(boxes: readonly BoxBought[]): RestsOn {
  const ways = Map.groupBy(boxes, ({ airChangesFrom }) => airChangesFrom)
  return {
    airChanges: Object.fromEntries([...ways].map(([way, those]) => [way, those.length])),
    roomsSupposed: [
      ...new Set(boxes.filter(({ roomSupposed }) => roomSupposed).map(({ room }) => room)),
    ].toSorted(),
  }
}

/** What a drier room, tighter boxes, more gel or another film would buy in a year, for a box, a room or the whole store. */
export async function showWhatIf(world: World, asked: WhatIfAsked): Answer<WhatIfShown> {
  const { projectId, box, room, change } = asked
  const fresh = await refresh(world, projectId)
  if (!fresh.ok) return fresh
  return world.store.read(async (reads) => {
    const read = await storeData(world, reads, projectId)
    if (!read.ok) return read
    const data = read.value
    const reckoned = await reckonStore(world, data)
    const one = box === undefined ? null : (reckoned.lines.find(isBox(box)) ?? null)
    if (box !== undefined && one === null) return refused(missing('box', box))
    const rooms = [...new Set(reckoned.lines.map((line) => line.room))].toSorted()
    if (one === null && room !== undefined && !rooms.includes(room)) return refused(missing('room', room))
    const lines =
      one === null ? reckoned.lines.filter((line) => room === undefined || line.room === room) : [one]
    const { bought, leftOut } = boughtBoxes(world.knowledge, data, lines, change)
    const because = Map.groupBy(leftOut, (left) => left.because)
    return given({
      project: data.project,
      today: data.today,
      asked: { box: one?.box.given.box, room: one === null ? room : undefined, change },
      box: one && { id: one.box.id, name: one.box.given.box, room: one.room },
      rooms: rooms.filter((name) => name !== ''),
      boxes: reckoned.lines.map((line) => line.box.given.box).toSorted(),
      packs: lines.filter(({ kind }) => kind === 'barrier-pack').length,
      counted: bought.length,
      whole: together(bought.map((each) => each.bought)),
      byRoom: one === null && room === undefined ? byRoomOf(bought) : [],
      each: bought.toSorted(mostSavedFirst).slice(0, mostBoxes),
      moreGelKg: bought.reduce((sum, { gelKg }) => sum + gelKg.then - gelKg.now, 0),
      leftOut: leftOutOrder.flatMap((reason) => {
        const boxes = because.get(reason)
        return boxes === undefined ? [] : [{ because: reason, boxes: boxes.map((left) => left.box) }]
      }),
      mayComeDamp: names(bought, ({ beyondHelp }) => beyondHelp >= leastShare),
      noRoomForGel: names(bought, ({ noRoomForGel }) => noRoomForGel),
      ...doubtfulOf(bought),
      restsOn: restsOn(bought),
    })
  })
}

const mostBoxes = 60

/** Less often than one case in twenty is not worth a word. */
const leastShare = 0.05

const isBox = (asked: string) => (line: BoxLine) => line.box.id === asked || line.box.given.box === asked
