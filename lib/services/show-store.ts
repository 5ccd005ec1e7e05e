import type { IsoDate } from '../base/calendar.ts'
import type { Surroundings } from '../boxes/box.ts'
import type { Band } from '../engine/plan.ts'
import type { Misfit } from '../papers/store.ts'
import type { BoxOutlook, NoOutlook } from './box-outlook.ts'
import type { Project } from './kept.ts'
import type { Logger } from './loggers.ts'
import type { Box, Room } from './places.ts'
import type { Standing } from './standing.ts'
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
