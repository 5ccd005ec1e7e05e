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

export function narrows(band: Band | null): boolean {
  return band !== null && (band.min > 0 || band.max < 100)
}

export function rulerOfStorage(
  { components, rhPercent, conflict, interim }: Storage,
  keptAtPercent: number | null,
): Ruler {
  return rulerOf(components, rhPercent, conflict?.between ?? null, interim?.rhPercent ?? null, keptAtPercent)
}

function rulerOf(
  parts: StorageLine['bands'],
  shared: Band | null,
  between: readonly string[] | null,
  holding: Band | null,
  now: number | null,
): Ruler {
  return {
    bars: parts.map((part) => ({
      name: part.component,
      limit: narrows(part.limit) ? part.limit : null,
      preference: narrows(part.preference) ? part.preference : null,
    })),
    shared,
    gap: between === null ? null : gapOf(parts, between),
    holding,
    now,
  }
}

/** What a list keeps of a find's storage. */
export interface StorageLine {
  readonly bands: readonly {
    readonly component: string
    readonly limit: Band
    readonly preference: Band | null
  }[]
  readonly rhPercent: Band | null
  readonly interimRhPercent: Band | null
  readonly conflict: { readonly between: readonly string[]; readonly gapPercent: number } | null
  readonly storedRhPercent: number | null
}

export function rulerOfLine(line: StorageLine): Ruler {
  return rulerOf(
    line.bands,
    line.rhPercent,
    line.conflict?.between ?? null,
    line.interimRhPercent,
    line.storedRhPercent,
  )
}

/** The stretch no bar of the quarrel covers: from the lowest ceiling to the highest floor. */
function gapOf(parts: StorageLine['bands'], between: readonly string[]): Ruler['gap'] {
  const limits = parts.filter((part) => between.includes(part.component)).map((part) => part.limit)
  if (limits.length < 2) return null
  const from = Math.min(...limits.map((limit) => limit.max))
  const to = Math.max(...limits.map((limit) => limit.min))
  return from < to ? { between, from, to } : null
}

export function holds(band: Band | null, percent: number): boolean {
  return band === null || (percent >= band.min && percent <= band.max)
}
