import { CartesianGrid, XAxis, YAxis } from 'recharts'
import type { Tick } from '../../lib/papers/store-axis.ts'

/** The frame every drawing here stands in; the stylesheet lays the reader over the plot by the same measures. */
export const frame = { top: 8, right: 14, bottom: 0, left: 0 } as const
const besideWidth = 44
const belowHeight = 26

const ink = 'var(--ink-soft)'
const words = { fill: ink, fontSize: 13 } as const

/** Words within a drawing stand on a rim of paper, so that they are read over lines and hatches. */
export const label = {
  fill: 'var(--ink)',
  fontSize: 13,
  fontWeight: 600,
  stroke: 'var(--paper)',
  strokeWidth: 4,
  paintOrder: 'stroke',
} as const

const line = { stroke: 'var(--line-strong)' } as const

interface Props {
  readonly from: number
  readonly to: number
  readonly ticks: readonly Tick[]
  readonly scale: { readonly from: number; readonly to: number; readonly ticks: readonly number[] }
  readonly unit: string
  /** The lower of two drawings carries the words of the time axis. */
  readonly timeWords?: boolean
}

/** Time along the bottom, a quantity up the side, a faint grid behind. Called, not drawn: recharts looks for its own parts. */
export function axes({ from, to, ticks, scale, unit, timeWords = true }: Props) {
  const wordsAt = new Map(ticks.map((tick) => [tick.at, tick.words]))
  return (
    <>
      <CartesianGrid stroke="var(--line)" vertical={false} />
      <XAxis
        type="number"
        dataKey="at"
        domain={[from, to]}
        allowDataOverflow
        ticks={ticks.map(({ at }) => at)}
        tickFormatter={(at: number) => (timeWords ? (wordsAt.get(at) ?? '') : '')}
        tick={words}
        tickLine={line}
        axisLine={line}
        height={timeWords ? belowHeight : 1}
        interval={0}
      />
      <YAxis
        type="number"
        domain={[scale.from, scale.to]}
        allowDataOverflow
        ticks={[...scale.ticks]}
        tickFormatter={(value: number) => (value === scale.ticks.at(-1) ? `${value} ${unit}` : String(value))}
        tick={words}
        tickLine={false}
        axisLine={false}
        width={besideWidth}
        interval={0}
      />
    </>
  )
}
