import { Axis, percent } from '../../_ruler/ruler-parts.tsx'
import style from './climate.module.css'

export interface RhLine {
  readonly name: string
  /** One humidity, or between which two it lies; above 100 it is more than the air can hold. */
  readonly fromPercent: number
  readonly toPercent: number
}

/** Humidities under each other on the axis of the ruler: what the numbers beside it say, for the eye. */
export function RhLines({ lines }: { readonly lines: readonly RhLine[] }) {
  return (
    <div className={style.lines} aria-hidden="true">
      {lines.map(({ name, fromPercent, toPercent }) => (
        <div key={name}>
          <p>{name}</p>
          <svg height="16" width="100%" focusable="false">
            <line x1="0" x2="100%" y1="8" y2="8" className={style.rail} />
            <Mark from={fromPercent} to={toPercent} />
          </svg>
        </div>
      ))}
      <Axis />
    </div>
  )
}

function Mark({ from, to }: { readonly from: number; readonly to: number }) {
  if (to > 100)
    return (
      <g className={style.beyond}>
        <svg x="100%" y="0" overflow="visible">
          <path d="M-14 1 L0 8 L-14 15 Z" />
          <line x1="0" x2="0" y1="0" y2="16" />
        </svg>
      </g>
    )
  if (to - from >= 0.5)
    return <rect x={percent(from)} width={`${to - from}%`} y="3" height="10" className={style.between} />
  return <circle cx={percent((from + to) / 2)} cy="8" r="6" className={style.dot} />
}
