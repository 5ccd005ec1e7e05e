import type { Grade, Odds } from '../knowledge/evidence.ts'

/**
 * The one place where words become numbers. Each word is a band, since nobody who writes "frequent" means one number: the
 * middle is what the word is taken to mean, the ends are what two careful people may still call by it. The bands are ours.
 */
export type Band = readonly [low: number, middle: number, high: number]

export const grades: Readonly<Record<Grade, Band>> = {
  typical: [0.6, 0.75, 0.9],
  frequent: [0.3, 0.45, 0.6],
  occasional: [0.08, 0.15, 0.25],
  rare: [0.01, 0.03, 0.06],
  excluded: [0.0005, 0.002, 0.01],
}

/** Relative to each other: each about a third of the one before, scaled over the rivals of a matter. */
export const odds: Readonly<Record<Odds, Band>> = {
  usual: [0.55, 1, 1.8],
  common: [0.18, 0.33, 0.6],
  uncommon: [0.06, 0.11, 0.2],
  seldom: [0.02, 0.037, 0.067],
  exceptional: [0.007, 0.012, 0.022],
}

/** The number at a place within a band: 0 its low end, a half its middle, 1 its high end; even steps are even ratios. */
export function within([low, middle, high]: Band, place: number): number {
  return place < 0.5 ? low * (middle / low) ** (2 * place) : middle * (high / middle) ** (2 * place - 1)
}
