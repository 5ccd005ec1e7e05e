import { defaultRangeExtractor, type Range } from '@tanstack/react-virtual'

/** The rows in view, and always the active one: focus must not vanish because somebody scrolls. */
export function rowsShown(range: Range, active: number): number[] {
  const seen = defaultRangeExtractor(range)
  if (active >= range.count || seen.includes(active)) return seen
  return [...seen, active].sort((a, b) => a - b)
}
