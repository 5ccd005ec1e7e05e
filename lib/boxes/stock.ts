import type { Means } from './level-work.ts'

/** Gel of a store week by week, in grams: what lies dry, what lies spent, what the oven makes of it. */
export interface StockWeek {
  readonly usedG: number
  readonly driedG: number
  /** At the end of the week. */
  readonly dryG: number
  readonly spentG: number
}

export interface Stock {
  readonly dryG: number
  readonly spentG: number
  /** What the oven can dry in a week. */
  readonly ovenG: number
}

export function stockOf({ dryKg, spentKg, oven }: Pick<Means, 'dryKg' | 'spentKg' | 'oven'>): Stock {
  return {
    dryG: grams(dryKg),
    spentG: grams(spentKg),
    ovenG: oven === null ? 0 : grams(oven.kgPerBatch) * Math.floor(oven.batchesPerWeek),
  }
}

export const grams = (kg: number): number => Math.round(kg * 1000)

/**
 * The stock through weeks in which so much is used; null where more is used than lies dry. What comes out of the boxes
 * is as much as goes in, is spent, and is dried at the earliest in the week after; what is dried in a week serves from the next.
 */
export function stockThrough(
  usedG: ArrayLike<number>,
  { dryG, spentG, ovenG }: Stock,
): readonly StockWeek[] | null {
  const weeks: StockWeek[] = []
  let dry = dryG
  let spent = spentG
  for (let week = 0; week < usedG.length; week += 1) {
    const used = usedG[week]!
    if (used > dry) return null
    const dried = Math.min(ovenG, spent)
    dry += dried - used
    spent += used - dried
    weeks.push({ usedG: used, driedG: dried, dryG: dry, spentG: spent })
  }
  return weeks
}

/** The same question without the answer's weeks: asked millions of times. */
export function stockLasts(usedG: ArrayLike<number>, { dryG, spentG, ovenG }: Stock): boolean {
  let dry = dryG
  let spent = spentG
  for (let week = 0; week < usedG.length; week += 1) {
    const used = usedG[week]!
    if (used > dry) return false
    const dried = Math.min(ovenG, spent)
    dry += dried - used
    spent += used - dried
  }
  return true
}
