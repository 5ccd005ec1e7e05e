/**
 * Things into bins, in whole numbers, so that what is added and taken away again leaves no trace: the core that packs a
 * store and that `pack` shows on its smallest problem.
 */
export interface BinProblem {
  readonly items: readonly BinItem[]
  readonly sorts: readonly BinSort[]
  /** At `a * sorts.length + b`: 1 where an item of sort a and one of sort b may lie in one bin; a may be b. */
  readonly mayShare: Uint8Array
  readonly kinds: readonly BinKind[]
  /** Bins that are in use whatever happens, with the items that stay in them. */
  readonly opened: readonly OpenedBin[]
  /** What it takes to keep a bin of this kind between the narrowest ends of the sorts in it; lower is better. */
  readonly upkeep: (kind: number, low: number, high: number) => number
}

export interface BinItem {
  /** Two sizes that add up in a bin: of a find its room and its weight. */
  readonly first: number
  readonly second: number
  readonly sort: number
  /** The kinds of bin it goes into at all. */
  readonly kinds: readonly number[]
  /** Where not all have room the lower rank goes in first; 0 is the most pressing. */
  readonly rank: number
}

/** Items of one sort share with the same others and bear the same band. */
export interface BinSort {
  readonly low: number
  readonly high: number
}

export interface BinKind {
  readonly first: number
  readonly second: number
  /** How many there are beside those opened; Infinity where more can be had. */
  readonly count: number
}

export interface OpenedBin {
  readonly kind: number
  readonly items: readonly number[]
}

export interface PackedBin {
  readonly kind: number
  /** Which of the opened bins it is; null where it was opened for this packing. */
  readonly opened: number | null
  readonly items: readonly number[]
}

export interface Packing {
  readonly bins: readonly PackedBin[]
  /** Items without a bin. */
  readonly left: readonly number[]
}

export const shares = ({ mayShare, sorts }: BinProblem, a: number, b: number): boolean =>
  mayShare[a * sorts.length + b] === 1
