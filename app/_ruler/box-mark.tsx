import type { Band } from '../../lib/engine/plan.ts'
import { narrows } from '../../lib/papers/ruler.ts'
import { percent, span } from './ruler-parts.tsx'
import style from './ruler.module.css'

interface Props {
  /** What its finds bear together: the outline. */
  readonly needs: Band | null
  /** What it is thought to hold today: a bar from one end of what is likely to the other, its middle marked. */
  readonly thought: { readonly p10: number; readonly p50: number; readonly p90: number } | null
  /** The last look into it: a tick, as wide as it was read. */
  readonly seen: { readonly low: number; readonly high: number } | null
}

/** A box as a mark in a line of a list: what it must hold, what it likely holds, what was last seen. The words stand beside it. */
export function BoxMark({ needs, thought, seen }: Props) {
  return (
    <svg className={style.boxMark} width="132" height="18" aria-hidden="true" focusable="false">
      <line x1="0" x2="100%" y1="9" y2="9" className={style.rail} />
      <line x1="0.5" x2="0.5" y1="3" y2="15" className={style.axis} />
      <line x1="131.5" x2="131.5" y1="3" y2="15" className={style.axis} />
      {thought !== null && (
        <>
          <rect {...span({ min: thought.p10, max: thought.p90 })} y="6" height="6" className={style.limit} />
          <line x1={percent(thought.p50)} x2={percent(thought.p50)} y1="4" y2="14" className={style.axis} />
        </>
      )}
      {needs !== null && narrows(needs) && (
        <rect {...span(needs)} y="2" height="14" className={style.sharedSmall} />
      )}
      {seen !== null && (
        <rect
          {...span({ min: seen.low, max: Math.max(seen.high, seen.low + 1.2) })}
          y="0"
          height="18"
          className={style.seen}
        />
      )}
    </svg>
  )
}
