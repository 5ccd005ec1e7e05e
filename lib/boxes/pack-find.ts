import type { Band } from '../engine/plan.ts'

/** A find as packing sees it: what its plan asks of a box, and what its record tells of its size. */
export interface PackFind {
  readonly id: string
  readonly name: string
  /** The box its record names; null where it names none. */
  readonly box: string | null
  readonly keep: 'wet' | 'dry' | 'as-found'
  /** The limits of all its parts together; null: kept wet, or no one band suits it. */
  readonly rhPercent: Band | null
  /** A monitored holding band until a conservator decides; never a storage band. */
  readonly holdingRhPercent: Band | null
  readonly temperatureC: { readonly min: number | null; readonly max: number | null }
  readonly dark: boolean
  /** What its parts are of, as the decision `family` names it. */
  readonly families: readonly string[]
  /** Its plan says: beside its own metal only. */
  readonly apartFromMetals: boolean
  /** Its plan says: beside nothing that was alive. */
  readonly apartFromOrganics: boolean
  /** Its plan asks for air without acid or sulphur. */
  readonly cleanAir: boolean
  /** A stop stands on it: nobody moves it until the competent body has cleared it. */
  readonly stopped: boolean
  /** What it may shed must reach nothing beside it. */
  readonly alone: boolean
  readonly askBeforeMoving: boolean
  /** It is not dry yet, or nobody is sure: it dries in the open before it is closed in. */
  readonly dryFirst: boolean
  readonly measured: Measured
  /** How pressing its plan is; 0 is now. */
  readonly rank: number
}

/** As the record has it; null where nobody measured. The mass of a lot is the mass of all of it. */
export interface Measured {
  readonly quantity: number
  readonly massG: number | null
  readonly lengthMm: number | null
  readonly widthMm: number | null
  readonly thicknessMm: number | null
}

/** A box that stands in the store, or several alike that can be had. */
export interface PackBox {
  /** Its name; null: as many as `count` of this model, not yet in the store. */
  readonly name: string | null
  readonly model: string
  readonly room: string
  readonly shelf: string
  readonly kind: 'box' | 'tub' | 'case' | 'barrier-pack'
  readonly count: number
  /** Null: nobody has written it, and nothing new is put in. */
  readonly volumeL: number | null
  /** Longest first; null: not written. */
  readonly insideMm: readonly [number, number, number] | null
  readonly maxKg: number | null
  readonly airChangesPerDay: number | null
  /** What its room is run at; null: not written. */
  readonly roomRhPercent: Band | null
  readonly roomTemperatureC: Band | null
  /** What it is meant to hold now; null: not written. */
  readonly targetRhPercent: Band | null
  /** Something written of the box calls for a stop: nobody opens it. */
  readonly stopped: boolean
}

/** Figures of content/figures/packing-store.yaml and the rooms' own, handed in as numbers. */
export interface PackFigures {
  /** Added on every side of a find for its bag and foam [mm]. */
  readonly paddingMm: number
  /** Taken for a side that nobody measured [mm]. */
  readonly unmeasuredSideMm: number
  /** Mass of corroded metal with the air between, where only the mass is known [kg/l]. */
  readonly looseKgPerL: number
  /** The part of a box that bags can fill; the rest is gel, strip and air between. */
  readonly usablePart: number
  /** A box nobody has weighed out carries no more than this [kg]. */
  readonly mostKg: number
  /** No box is planned for a band narrower than this [%]. */
  readonly narrowestRhPercent: number
  /** Dry gel brings a box down to this at the least [%]. */
  readonly driestRhPercent: number
  /** A box that leaks more often than this a day holds no gel to speak of. */
  readonly leakiestPerDay: number
}

/** Kilograms of gel that keep a box of this kind within the band for the time planned between renewals. */
export type GelFor = (box: PackBox, band: Band) => number
