import style from './chance-bar.module.css'

interface Props {
  readonly chance: number
  readonly range: readonly [low: number, high: number]
}

const percent = (share: number) => `${Math.round(1000 * share) / 10}%`

/** Wide enough to be seen as a bracket and not as a line. */
const leastWide = 0.012

/**
 * An explanation on an axis from never to always: the bar is how likely it is, the bracket under it between which it may
 * lie. It speaks by shape alone, and the words stand beside it.
 */
export function ChanceBar({ chance, range }: Props) {
  const low = Math.min(range[0], 1 - leastWide)
  const high = Math.max(range[1], low + leastWide)
  return (
    <svg className={style.bar} height="24" width="100%" aria-hidden="true" focusable="false">
      {[0, 0.5, 1].map((mark) => (
        <line key={mark} x1={percent(mark)} x2={percent(mark)} y1="0" y2="24" className={style.tick} />
      ))}
      <line x1="0" x2="100%" y1="8" y2="8" className={style.rail} />
      <rect
        data-part="chance"
        x="0"
        width={percent(Math.max(chance, 0.004))}
        y="3"
        height="10"
        className={style.chance}
      />
      <g data-part="range" className={style.range}>
        <line x1={percent(low)} x2={percent(high)} y1="19" y2="19" />
        <line x1={percent(low)} x2={percent(low)} y1="15" y2="23" />
        <line x1={percent(high)} x2={percent(high)} y1="15" y2="23" />
      </g>
    </svg>
  )
}

/** The axis, once for all bars above it. */
export function ChanceAxis() {
  return (
    <p className={style.axis} aria-hidden="true">
      <span>never</span>
      <span>half of such finds</span>
      <span>always</span>
    </p>
  )
}
