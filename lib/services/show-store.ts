import type { IsoDate } from '../base/calendar.ts'
import { given } from '../base/outcome.ts'
import type { Answer } from '../base/trouble.ts'
import type { Surroundings } from '../boxes/box.ts'
import type { LogNext } from '../boxes/log-next.ts'
import type { Band, Caution } from '../engine/plan.ts'
import type { Misfit } from '../papers/store.ts'
import { standOn } from '../record/logger-register.ts'
import type { BoxOutlook, NoOutlook } from './box-outlook.ts'
import type { Project } from './kept.ts'
import type { Logger } from './loggers.ts'
import type { Box, Room } from './places.ts'
import type { World } from './ports.ts'
import { refresh } from './refresh.ts'
import type { Standing } from './standing.ts'
import { storeData, type StoreData } from './store-data.ts'
import { reckonStore, whereToLog } from './store-reckoned.ts'
import { roomsShown } from './store-rooms.ts'
import type { StoreSettingGiven } from './store-setting.ts'

export interface StoreShown {
  readonly project: Project
  readonly today: IsoDate
  readonly setting: StoreSettingGiven
  readonly rooms: readonly RoomShown[]
  readonly loggers: readonly LoggerLine[]
  /** Finds whose records name no box, or one that nobody has listed. */
  readonly elsewhere: number
  /** Boxes that finds or rounds name and nobody has listed. */
  readonly unlisted: readonly { readonly box: string; readonly finds: number; readonly rounds: number }[]
  /** Boxes in which a logger would tell most, the first first. */
  readonly logNext: readonly string[]
  /** The same with why. */
  readonly logTells: readonly LogNext[]
}

export interface RoomShown {
  /** Null: boxes name it, nobody has listed it. */
  readonly room: Room | null
  /** Empty: boxes that name no room. */
  readonly name: string
  readonly surroundings: Surroundings
  readonly shelves: readonly { readonly shelf: string; readonly boxes: readonly BoxLine[] }[]
}

export interface BoxLine {
  readonly box: Box
  readonly kind: string
  readonly room: string
  readonly finds: number
  /** The band that all its finds bear; null where nothing is asked, or where they do not agree. */
  readonly needs: Band | null
  readonly disagree: boolean
  /** What it is meant to hold: its own target, else its room's climate. */
  readonly held: Band | null
  readonly misfits: readonly { readonly find: Standing; readonly misfit: Misfit }[]
  /** Stops that words of its note or of a round call for. */
  readonly stops: readonly Caution[]
  /** Finds taken out of it and not brought back. */
  readonly out: number
  readonly newest: Newest | null
  /** Nobody and nothing has read it since; null: never. */
  readonly unreadSince: IsoDate | null
  readonly lid: { readonly state: 'seated' | 'not-seated' | 'opened'; readonly on: IsoDate } | null
  readonly loggers: readonly string[]
  readonly outlook: BoxOutlook | null
  readonly noOutlook: NoOutlook | null
  readonly tub: Tub | null
}

/** The last look into a box. */
export interface Newest {
  readonly on: IsoDate
  readonly by: 'logger' | 'strip'
  /** Relative humidity [%], sensor or strip error not yet added. */
  readonly lowRhPercent: number
  readonly highRhPercent: number
}

export interface Tub {
  readonly filledOn: IsoDate | null
  readonly daysHeld: number | null
  /** Days within which wet finds should reach a conservator. */
  readonly daysAllowed: number
  readonly pastItsDays: boolean
  readonly waterChangedOn: IsoDate | null
  readonly waterDueOn: IsoDate | null
  readonly waterDue: boolean
}

export interface LoggerLine {
  readonly logger: Logger
  /** Where it stands today. */
  readonly box: string | null
  readonly room: string | null
  readonly calibrationOverdue: boolean
  readonly lastReadingMs: number | null
  readonly readings: number
}

/** Finds and rounds of boxes that stand in no list: kept, and waiting for the box or for its right name. */
function unlistedOf({ boxes, standings, diary }: StoreData): StoreShown['unlisted'] {
  const listed = new Set(boxes.map(({ given: box }) => box.box))
  const named = new Set([...standings.keys(), ...diary.keys()])
  return [...named]
    .filter((box) => box !== '' && !listed.has(box))
    .toSorted()
    .map((box) => ({
      box,
      finds: standings.get(box)?.length ?? 0,
      rounds: (diary.get(box) ?? []).filter(({ kind }) => kind === 'round').length,
    }))
}

export function loggerLine({ days, today }: StoreData, logger: Logger): LoggerLine {
  const { stood, calibration_due } = logger.given
  const stand = standOn(stood, today)
  const read = days.get(logger.id)?.days ?? []
  return {
    logger,
    box: stand?.box ?? null,
    room: stand?.room ?? null,
    calibrationOverdue: calibration_due !== undefined && calibration_due < today,
    lastReadingMs: read.at(-1)?.lastMs ?? null,
    readings: read.reduce((sum, { readings }) => sum + readings, 0),
  }
}

/** The store: rooms, shelves, boxes, with what each must hold, what it holds, and when its gel falls due. */
export async function showStore(world: World, projectId: string): Answer<StoreShown> {
  const fresh = await refresh(world, projectId)
  if (!fresh.ok) return fresh
  return world.store.read(async (reads) => {
    const read = await storeData(world, reads, projectId)
    if (!read.ok) return read
    const data = read.value
    const reckoned = await reckonStore(world, data)
    const logTells = whereToLog(world, data, reckoned)
    const listed = new Set(data.boxes.map(({ given: box }) => box.box))
    const elsewhere = [...data.standings].reduce(
      (sum, [box, finds]) => sum + (listed.has(box) ? 0 : finds.length),
      0,
    )
    return given({
      project: data.project,
      today: data.today,
      setting: data.setting,
      rooms: roomsShown(data, reckoned.lines, reckoned.surroundings),
      loggers: data.loggers.map((logger) => loggerLine(data, logger)),
      elsewhere,
      unlisted: unlistedOf(data),
      logNext: logTells.map(({ box }) => box),
      logTells,
    })
  })
}
