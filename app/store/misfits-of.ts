import type { Misfit } from '../../lib/papers/store.ts'
import type { BoxLine } from '../../lib/services/show-store.ts'
import type { Standing } from '../../lib/services/standing.ts'
import type { BoxSeen } from './box-line.tsx'

export interface MisfitShown {
  readonly line: BoxLine
  readonly find: Standing
  readonly misfit: Misfit
}

const order: readonly Misfit[] = ['wet-in-dry', 'too-damp', 'too-dry', 'no-one-band', 'unknown-box']

/** Every find whose box does not suit it, the worst first. */
export function misfitsOf(boxes: readonly BoxSeen[]): readonly MisfitShown[] {
  return boxes
    .flatMap(({ line }) => line.misfits.map(({ find, misfit }) => ({ line, find, misfit })))
    .toSorted((a, b) => order.indexOf(a.misfit) - order.indexOf(b.misfit) || excess(b) - excess(a))
}

/** By how much [%] the box leaves what the find bears. */
function excess({ line, find }: MisfitShown): number {
  const { rhPercent } = find.line
  if (line.held === null || rhPercent === null) return 0
  return Math.max(line.held.max - rhPercent.max, rhPercent.min - line.held.min)
}
