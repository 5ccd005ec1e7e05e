import type { IsoDate } from '../base/calendar.ts'
import type { Sighting } from '../boxes/box.ts'
import type { ExcursionShown } from './show-logger.ts'
import type { DiaryEntry } from './diary.ts'
import type { Find, Project } from './kept.ts'
import type { Logger } from './loggers.ts'
import type { BoxLine, RoomShown } from './show-store.ts'
import type { Standing } from './standing.ts'

export interface BoxShown {
  readonly project: Project
  readonly today: IsoDate
  readonly line: BoxLine
  readonly room: Omit<RoomShown, 'shelves'>
  readonly finds: readonly Standing[]
  readonly out: readonly FindOut[]
  /** Every find that ever lay in it, from when to when. */
  readonly stays: readonly {
    readonly find: Find
    readonly from: IsoDate | null
    readonly to: IsoDate | null
  }[]
  /** Newest first: every gel it is known to have held. */
  readonly gel: readonly DiaryEntry<'gel-change'>[]
  /** Newest first. */
  readonly diary: readonly DiaryEntry[]
  readonly sightings: readonly Sighting[]
  /** Loggers that stood in it, with the days. */
  readonly loggers: readonly {
    readonly logger: Logger
    readonly from: IsoDate | null
    readonly to: IsoDate | null
  }[]
  /** Since the gel was last renewed, newest first. */
  readonly excursions: readonly ExcursionShown[]
  /** Hours of readings since then that say nothing, for they lie below what the logger can report. */
  readonly belowRangeHours: number
}

export interface FindOut {
  readonly find: Find
  readonly since: IsoDate
  readonly where: string
  readonly why: string
  readonly days: number
}
