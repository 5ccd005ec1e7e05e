import { useId } from 'react'
import { narrows, type Ruler } from '../../lib/papers/ruler.ts'
import { bandMark, bandWords, numberWords } from '../../lib/wording/band.ts'
import { barWords, gapWords, rulerWords } from '../../lib/wording/ruler.ts'
import { AxisMarks, Hatch, RulerBarShape, percent, span } from './ruler-parts.tsx'
import { RulerTable } from './ruler-table.tsx'
import style from './ruler.module.css'

const rowHeight = 44
const top = 24

/** Full size: every part with its name and band, what they share, where they fall apart, where it is kept now. */
export function HumidityRuler({ ruler }: { readonly ruler: Ruler }) {
  const id = useId()
  const rows = ruler.bars.length + (ruler.gap ? 1 : 0) + (ruler.holding ? 1 : 0)
  const axis = top + rows * rowHeight + 4
  const shown = ruler.shared !== null && narrows(ruler.shared) ? ruler.shared : null
  return (
    <figure className={style.figure}>
      <svg className={style.full} height={axis + 46} width="100%" role="img" aria-label={rulerWords(ruler)}>
        <Hatch id={id} />
        <AxisMarks y={axis} from={top - 4} />
        {ruler.bars.map((bar, index) => (
          <g key={bar.name} data-part={bar.name}>
            <text x="0" y={top + index * rowHeight + 13} className={style.name}>
              {bar.name} <tspan className={style.quiet}>{barWords(bar)}</tspan>
            </text>
            <RulerBarShape bar={bar} y={top + index * rowHeight + 20} height={16} hatch={id} />
          </g>
        ))}
        {ruler.gap !== null && <Gap gap={ruler.gap} y={top + ruler.bars.length * rowHeight} />}
        {ruler.holding !== null && (
          <g data-part="holding">
            <text x="0" y={top + (rows - 1) * rowHeight + 13} className={style.name}>
              Holding band until a conservator decides <tspan className={style.quiet}>{bandWords(ruler.holding)}</tspan>
            </text>
            <rect {...span(ruler.holding)} y={top + (rows - 1) * rowHeight + 20} height="16" className={style.holding} />
          </g>
        )}
        {shown !== null && (
          <g data-part="shared">
            <rect {...span(shown)} y={top - 6} height={ruler.bars.length * rowHeight + 4} className={style.shared} />
            <text
              x={percent(shown.min + shown.max < 100 ? shown.min : shown.max)}
              y={top - 11}
              textAnchor={shown.min + shown.max < 100 ? 'start' : 'end'}
              className={style.strong}
            >
              {ruler.bars.length > 1 ? `together ${bandMark(shown)}` : bandMark(shown)}
            </text>
          </g>
        )}
        {ruler.now !== null && <Now at={ruler.now} axis={axis} />}
      </svg>
      <Legend ruler={ruler} />
      <RulerTable ruler={ruler} />
    </figure>
  )
}

function Gap({ gap, y }: { readonly gap: NonNullable<Ruler['gap']>; readonly y: number }) {
  return (
    <g data-part="gap" className={style.gap}>
      <text x="0" y={y + 13} className={style.strong}>
        {gapWords(gap)}
      </text>
      <line x1={percent(gap.from)} x2={percent(gap.to)} y1={y + 28} y2={y + 28} />
      <line x1={percent(gap.from)} x2={percent(gap.from)} y1={y + 20} y2={y + 36} />
      <line x1={percent(gap.to)} x2={percent(gap.to)} y1={y + 20} y2={y + 36} />
    </g>
  )
}

function Now({ at, axis }: { readonly at: number; readonly axis: number }) {
  const anchor = at < 15 ? 'start' : at > 85 ? 'end' : 'middle'
  return (
    <g data-part="now" className={style.now}>
      <line x1={percent(at)} x2={percent(at)} y1={top - 4} y2={axis + 22} />
      <text x={percent(at)} y={axis + 38} textAnchor={anchor} className={style.strong}>
        {`now ${numberWords(at)} %`}
      </text>
    </g>
  )
}

function Legend({ ruler }: { readonly ruler: Ruler }) {
  const entries = [
    ruler.bars.some((bar) => bar.limit !== null) && 'solid: a limit',
    ruler.bars.some((bar) => bar.preference !== null) && 'striped: better so',
    ruler.shared !== null && narrows(ruler.shared) && 'outlined: the band for the whole find',
    ruler.now !== null && 'dashed line: where it is kept now',
  ].filter((entry) => entry !== false)
  return entries.length === 0 ? null : <figcaption className={style.legend}>{`% relative humidity; ${entries.join('; ')}`}</figcaption>
}
