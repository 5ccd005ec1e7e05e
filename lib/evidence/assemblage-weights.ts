/**
 * What a bit is worth on a find of this significance, against one of middling significance. Not recorded, or not known, is
 * not low. A house rule: no more than that the order is kept, and that no low find with much open passes a high one easily.
 */
const significances: Readonly<Record<string, number>> = { high: 2, medium: 1, low: 0.5, unknown: 1 }

export const significanceWeight = (significance: string | null): number =>
  significances[significance ?? 'unknown'] ?? 1
