import type { Band } from '../../lib/engine/plan.ts'
import type { RulerBar } from '../../lib/papers/ruler.ts'
import style from './ruler.module.css'

/** Positions are percentages of the drawing's width, so words keep their size however wide it is drawn. */
export function percent(rh: number): string {
  return `${Math.min(100, Math.max(0, rh))}%`
}

/** Never thinner than a hair, so that a band of one value is still seen. */
export function span(band: Band): { readonly x: string; readonly width: string } {
  return { x: percent(Math.min(band.min, 99.4)), width: percent(Math.max(band.max - band.min, 0.6)) }
}

export function Hatch({ id }: { readonly id: string }) {
  return (
    <defs>
      <pattern
        id={`${id}-ink`}
        width="5"
        height="5"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <rect width="2" height="5" className={style.ink} />
      </pattern>
      <pattern
        id={`${id}-paper`}
        width="5"
        height="5"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <rect width="2.4" height="5" className={style.paper} />
      </pattern>
    </defs>
  )
}

interface BarProps {
  readonly bar: RulerBar
  readonly y: number
  readonly height: number
  readonly hatch: string
}

/** Solid where a limit holds; striped where one humidity is better than another. */
export function RulerBarShape({ bar, y, height, hatch }: BarProps) {
  const middle = y + height / 2
  return (
    <>
      <line x1="0" x2="100%" y1={middle} y2={middle} className={style.rail} />
      {bar.limit !== null && (
        <rect {...span(bar.limit)} y={y} height={height} className={style.limit} data-kind="limit" />
      )}
      {bar.preference !== null && (
        <g data-kind="preference">
          <rect {...span(bar.preference)} y={y} height={height} className={style.clear} />
          <rect
            {...span(bar.preference)}
            y={y}
            height={height}
            fill={`url(#${hatch}-ink)`}
            className={style.preference}
          />
        </g>
      )}
    </>
  )
}

const marks = [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100]

/** The axis under the bars: a tick at each ten, a number at each twenty. */
export function Axis() {
  return (
    <svg className={style.axisRow} height="26" width="100%" aria-hidden="true">
      <line x1="0" x2="100%" y1="0.5" y2="0.5" className={style.axis} />
      {marks.map((mark) => (
        <line
          key={mark}
          x1={percent(mark)}
          x2={percent(mark)}
          y1="0"
          y2={mark % 20 === 0 ? 7 : 4}
          className={style.axis}
        />
      ))}
      {marks
        .filter((mark) => mark % 20 === 0)
        .map((mark) => (
          <text
            key={mark}
            x={percent(mark)}
            y="22"
            textAnchor={mark === 0 ? 'start' : mark === 100 ? 'end' : 'middle'}
          >
            {mark === 100 ? '100 %' : mark}
          </text>
        ))}
    </svg>
  )
}

/** A measure between two bars that do not meet. */
export function GapShape({ from, to }: { readonly from: number; readonly to: number }) {
  return (
    <g className={style.gap}>
      <line x1={percent(from)} x2={percent(to)} y1="8" y2="8" />
      <line x1={percent(from)} x2={percent(from)} y1="1" y2="15" />
      <line x1={percent(to)} x2={percent(to)} y1="1" y2="15" />
    </g>
  )
}

export function HoldingShape({ band }: { readonly band: Band }) {
  return <rect {...span(band)} y="1" height="14" className={style.holding} />
}
