import { useId } from 'react'
import type { Quantiles } from '../../../lib/base/range.ts'
import type { Bought } from '../../../lib/boxes/what-if.ts'
import { amountWords, endsWords, type Amount } from '../../../lib/wording/what-if-figures.ts'
import style from './what-if.module.css'

interface Props {
  readonly bought: Bought
  /** Something is tried; else only what is. */
  readonly tried: boolean
}

const kinds = [
  { of: 'renewals', key: 'renewalsPerYear', name: 'Renewals a year' },
  { of: 'gel', key: 'kgPerYear', name: 'Dry gel a year' },
] as const

/** Before and after, each as a bar to its middle and a line below it over its range; told in words above it. */
export function UpkeepBars({ bought, tried }: Props) {
  const id = useId()
  return (
    <figure className={style.bars}>
      <svg width="0" height="0" className={style.apart} aria-hidden="true">
        <defs>
          <pattern
            id={`${id}-then`}
            width="6"
            height="6"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <rect width="2.4" height="6" className={style.ink} />
          </pattern>
        </defs>
      </svg>
      {kinds.map(({ of, key, name }) => {
        const [now, then] = [bought.before[key], bought.after[key]]
        const end = endOfScale(tried ? Math.max(now.p90, then.p90) : now.p90)
        return (
          <div key={key} className={style.kind}>
            <h3>{name}</h3>
            <Row name="now" spread={now} of={of} end={end} fill="" />
            {tried && <Row name="then" spread={then} of={of} end={end} fill={`url(#${id}-then)`} />}
            <div className={style.axis} aria-hidden="true">
              <span>0</span>
              <span>{amountWords(end, of)}</span>
            </div>
          </div>
        )
      })}
    </figure>
  )
}

interface RowProps {
  readonly name: string
  readonly spread: Quantiles
  readonly of: Amount
  readonly end: number
  readonly fill: string
}

function Row({ name, spread: { p10, p50, p90 }, of, end, fill }: RowProps) {
  const across = (value: number) => `${end === 0 ? 0 : Math.min(100, (value / end) * 100)}%`
  const ends = endsWords(p10, p90, of, 'to')
  return (
    <div className={style.bar}>
      <p>
        {name} <strong>{amountWords(p50, of)}</strong>
        {ends !== '' && <span className="soft">{`, likely ${ends}`}</span>}
      </p>
      <svg width="100%" height="26" aria-hidden="true" focusable="false" data-row={name}>
        <rect
          x="0"
          y="2"
          width={across(p50)}
          height="12"
          className={style.middle}
          {...(fill === '' ? {} : { style: { fill } })}
        />
        <g className={style.range}>
          <line x1={across(p10)} x2={across(p90)} y1="20" y2="20" />
          <End x={across(p10)} />
          <End x={across(p90)} />
        </g>
      </svg>
    </div>
  )
}

/** A small upright where a range ends; drawn around a place of its own, for places are shares of the width. */
const End = ({ x }: { readonly x: string }) => (
  <svg x={x} y="20" overflow="visible">
    <path d="M0 -4.5V4.5" />
  </svg>
)

/** The next round number that everything fits under. */
export function endOfScale(most: number): number {
  if (!(most > 0)) return 0
  const power = 10 ** Math.floor(Math.log10(most))
  const step = [1, 1.5, 2, 3, 4, 5, 6, 8, 10].find((one) => one * power >= most) ?? 10
  return step * power
}
