import type { Band, Storage } from '../engine/plan.ts'

/** What a humidity ruler shows, on screen or paper: bars on one axis from 0 to 100 % relative humidity. */
export interface Ruler {
  readonly bars: readonly RulerBar[]
  /** The band all bars share; null where they do not meet or where no humidity is asked for. */
  readonly shared: Band | null
  /** Between the bars that do not meet. */
  readonly gap: { readonly between: readonly string[]; readonly from: number; readonly to: number } | null
  /** A monitored holding band until a conservator decides. */
  readonly holding: Band | null
  /** Relative humidity [%] it is kept at now. */
  readonly now: number | null
}

export interface RulerBar {
  readonly name: string
  /** Null where nothing limits it. */
  readonly limit: Band | null
  readonly preference: Band | null
}

export const open: Band = { min: 0, max: 100 }

export function narrows(band: Band | null): boolean {
  return band !== null && (band.min > 0 || band.max < 100)
}

export function rulerOfStorage(storage: Storage, keptAtPercent: number | null): Ruler {
  return {
    bars: storage.components.map((part) => ({
      name: part.component,
      limit: narrows(part.limit) ? part.limit : null,
      preference: narrows(part.preference) ? part.preference : null,
    })),
    shared: storage.rhPercent,
    gap: storage.conflict === null ? null : gapOf(storage, storage.conflict.between),
    holding: storage.interim?.rhPercent ?? null,
    now: keptAtPercent,
  }
}

/** The stretch no bar of the quarrel covers: from the lowest ceiling to the highest floor. */
function gapOf(storage: Storage, between: readonly string[]): Ruler['gap'] {
  const limits = storage.components.filter((part) => between.includes(part.component)).map((part) => part.limit)
  if (limits.length < 2) return null
  const from = Math.min(...limits.map((limit) => limit.max))
  const to = Math.max(...limits.map((limit) => limit.min))
  return from < to ? { between, from, to } : null
}

export function holds(band: Band | null, percent: number): boolean {
  return band === null || (percent >= band.min && percent <= band.max)
}
