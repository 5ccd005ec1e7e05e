import type { SeenLine } from './delimiter.ts'

/**
 * Commas part the cells and the decimals alike where every value takes two cells of digits and the headings count them as one:
 * the column from which on cells belong together two by two; null where it is not so.
 */
export function pairedFrom(rows: readonly SeenLine[], headingCount: number): number | null {
  const { seen, cells } = rows[0]!
  const moments =
    seen.findLastIndex(({ sense }) => sense === 'stamp' || sense === 'date' || sense === 'time') + 1
  const values = headingCount - moments
  if (moments === 0 || values < 1 || cells.length !== moments + 2 * values) return null
  const digits = rows.every((row) => row.cells.slice(moments).every((cell) => /^-?\d*$/.test(cell)))
  return digits ? moments : null
}

export const joinPairs = (cells: readonly string[], from: number): readonly string[] => [
  ...cells.slice(0, from),
  ...cells.slice(from).flatMap((cell, at, all) => (at % 2 === 0 ? `${cell},${all[at + 1] ?? ''}` : [])),
]
