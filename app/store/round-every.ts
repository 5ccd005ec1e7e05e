import type { Knowledge } from '../../lib/knowledge/knowledge.ts'

/** How long a box may stay unread before that is said [d]: as often as metal that may be corroding is looked at. */
export function roundEveryDays({ figures }: Pick<Knowledge, 'figures'>): number {
  return figures['inspect-quarterly']?.value ?? 90
}
