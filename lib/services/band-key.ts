import type { Band, Storage } from '../engine/plan.ts'

/** What a find's humidity asks for, as one word to group and search by: `wet`, `conflict`, `none`, `0-12`. */
export function bandKey({
  keep,
  conflict,
  rhPercent,
}: Pick<Storage, 'keep' | 'conflict' | 'rhPercent'>): string {
  if (keep === 'wet') return 'wet'
  if (conflict !== null) return 'conflict'
  return rhPercent === null ? 'none' : `${rhPercent.min}-${rhPercent.max}`
}

/** The band that a key stands for; null where it stands for none. */
export function bandOfKey(key: string): Band | null {
  const [min, max] = key.split('-').map(Number)
  return min !== undefined && max !== undefined && Number.isFinite(min + max) ? { min, max } : null
}
