import type { IsoDate } from '../base/calendar.ts'
import type { Quantiles, Range } from '../base/range.ts'
import type { ClosedBox, Fan, Surroundings } from '../boxes/box.ts'
import type { Departure } from '../boxes/departure.ts'
import type { LeakEstimate } from '../boxes/learn.ts'
import type { SaysLittle } from '../boxes/learn-little.ts'
import type { Misfit } from '../boxes/learn-misfit.ts'
import type { Renewal } from '../boxes/renewal.ts'

/** What the model and a box's own readings say of it: how leaky it is, where it is going, when its gel is spent. */
export interface BoxOutlook {
  readonly airChangesPerDay: Range
  /** What the air exchange rests on: readings of this box or with its last gel, of its like, what is written, or supposed. */
  readonly airChangesFrom: 'logger' | 'rounds' | 'earlier-gel' | 'like-boxes' | 'written' | 'assumed'
  readonly surroundings: Surroundings
  /** From today on; reckoned when it is first asked for. */
  readonly fan: Fan
  /** Relative humidity [%] the box is thought to hold today. */
  readonly nowRhPercent: Quantiles
  /** The highest its finds bear [%], or what is written as its target; null: nothing limits it, and no gel falls due. */
  readonly limitRhPercent: number | null
  /** Days from today; each null where that lies beyond what is looked ahead. */
  readonly daysToLimit: { readonly [Key in keyof Quantiles]: number | null } | null
  readonly renewOn: RenewOn | null
  /** The day since which its readings leave the forecast; null while they keep to it. */
  readonly departedSince: IsoDate | null
  /** The readings stray from the model more than they should: the bands are to be read with care. */
  readonly modelDoubtful: boolean
  /** What does not fit, where something does not. */
  readonly misfit?: Misfit | null
  /** Why its own readings say little of its leak, where they do. */
  readonly littleBecause?: SaysLittle | null
  /** What set the day of the renewal. */
  readonly renewalBecause?: Pick<Renewal, 'because' | 'guardRhPercent'> | null
}

/** The same with what it was reckoned from, for those who reckon on. */
export interface BoxReckoned extends BoxOutlook {
  readonly closed: ClosedBox
  readonly estimate: LeakEstimate
  readonly renewal: Renewal | null
  readonly departure: Departure | null
}

/** Days between which the gel is to be renewed; null where that lies beyond what is looked ahead. */
export interface RenewOn {
  readonly early: IsoDate | null
  readonly likely: IsoDate | null
  readonly late: IsoDate | null
}

/** Why nothing can be told of a box. */
export type NoOutlook = 'tub' | 'no-gel' | 'no-volume' | 'no-start'
