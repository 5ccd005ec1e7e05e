'use client'

import { memo } from 'react'
import { Area, ComposedChart, Line, ReferenceArea, ReferenceLine } from 'recharts'
import type { Tick } from '../../lib/papers/store-axis.ts'
import { fanScale, type FanPicture } from '../../lib/papers/box-fan.ts'
import { numberWords } from '../../lib/wording/band.ts'
import { axes, frame, label } from './axes.tsx'
import { Hatches } from './hatches.tsx'

export interface FanDrawingProps {
  readonly id: string
  readonly picture: FanPicture
  readonly ticks: readonly Tick[]
  readonly width: number
  readonly height: number
}

/** The window of renewal is a strip along the foot of the drawing: it is about days, not about humidity. */
const windowShare = 0.1

const still = { type: 'linear', isAnimationActive: false, activeDot: false, dot: false } as const

/** Two ribbons and a middle line ahead of today, the limit across, and when the gel falls due. */
export const FanDrawing = memo(function FanDrawing({ id, picture, ticks, width, height }: FanDrawingProps) {
  const { ahead, limitRhPercent: limit, renewal, fromMs, toMs, todayMs } = picture
  const scale = fanScale(picture)
  return (
    <ComposedChart width={width} height={height} data={[...ahead]} margin={frame} accessibilityLayer={false}>
      <Hatches id={id} />
      {axes({ from: fromMs, to: toMs, ticks, scale, unit: '%' })}
      <Area
        dataKey="eight"
        {...still}
        fill={`url(#${id}-wide)`}
        fillOpacity={1}
        stroke="var(--chart-ink)"
        strokeWidth={1}
      />
      <Area
        dataKey="half"
        {...still}
        fill="var(--chart-half)"
        fillOpacity={1}
        stroke="var(--chart-ink)"
        strokeWidth={1}
      />
      <Line dataKey="middle" {...still} stroke="var(--chart-ink)" strokeWidth={2.5} />
      {renewal !== null && (
        <ReferenceArea
          x1={renewal.fromMs}
          x2={renewal.toMs}
          y1={scale.from}
          y2={scale.from + (scale.to - scale.from) * windowShare}
          fill={`url(#${id}-window)`}
          fillOpacity={1}
          stroke="var(--rust)"
          label={{ value: 'gel due', position: 'insideLeft', ...label }}
        />
      )}
      {limit !== null && (
        <ReferenceLine
          y={limit}
          stroke="var(--rust)"
          strokeWidth={2}
          strokeDasharray="8 4"
          label={{
            value: `limit ${numberWords(limit)} %`,
            position: 'insideBottomRight',
            offset: 9,
            ...label,
          }}
        />
      )}
      <ReferenceLine
        x={todayMs}
        stroke="var(--ink)"
        strokeWidth={2}
        strokeDasharray="2 2"
        label={{ value: 'today', position: 'insideTopLeft', ...label }}
      />
    </ComposedChart>
  )
})
