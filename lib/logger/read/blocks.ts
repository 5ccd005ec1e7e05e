/** Short loops called often become quick code early on; one long loop is under way for long before it does. */
const size = 8192

/** Whether something holds of every stretch of a long row; stretches overlap by one place, so that steps between them are seen. */
export function everyBlock(count: number, holds: (from: number, to: number) => boolean): boolean {
  for (let from = 0; from < count; from += size) {
    if (!holds(Math.max(from - 1, 0), Math.min(from + size, count))) return false
  }
  return true
}
