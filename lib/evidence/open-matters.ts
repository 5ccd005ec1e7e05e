import { probabilities } from './joint.ts'
import { inVain } from './outcome.ts'
import type { Raised } from './raised.ts'
import { certain } from './standing.ts'

/** Nothing more is asked of a matter that the record settles, or of which one explanation is as good as certain. */
export function isOpen({ joint, settled }: Raised): boolean {
  if (settled !== null) return false
  return probabilities(joint.weights, joint.tables.rivals.length).every(
    (probability) => probability < certain,
  )
}

/** Groups of a matter that a method can still settle: not observed, and not looked at in vain. */
export function askable(
  { joint, lookup }: Raised,
  by: (group: { by: string; question: string | null }) => boolean,
): readonly number[] {
  return joint.groups.flatMap(({ table, possible }, at) =>
    by(table.group) && possible.length > 1 && !inVain(table, lookup) ? [at] : [],
  )
}
