'use client'

import { memo, useMemo } from 'react'
import { Area, ComposedChart, ReferenceArea, ReferenceLine } from 'recharts'
import type { Tick } from '../../lib/papers/store-axis.ts'
import {
  humidityScale,
  temperatureScale,
  type ChartGround,
  type ChartView,
} from '../../lib/papers/store-chart.ts'
import { numberWords } from '../../lib/wording/band.ts'
import { axes, frame, label } from './axes.tsx'
import { Hatches } from './hatches.tsx'

export interface DrawingProps {
  readonly id: string
  readonly view: ChartView
  readonly ground: ChartGround
  readonly ticks: readonly Tick[]
  readonly width: number
  readonly height: number
}

interface Point {
  readonly at: number
  readonly rh: readonly [number, number] | null
  readonly temperature: readonly [number, number] | null
}

/** The beginning of each stretch, and the end of the last; one without a reading breaks the shape. */
function pointsOf({ stretches }: ChartView): readonly Point[] {
  const { fromMs, toMs, rhLow, rhHigh, temperatureLow, temperatureHigh } = stretches
  const point = (at: number, index: number): Point => ({
    at,
    rh: pair(rhLow[index], rhHigh[index]),
    temperature: pair(temperatureLow[index], temperatureHigh[index]),
  })
  const last = fromMs.length - 1
  const end = toMs[last]
  return [...fromMs.map(point), ...(end === undefined ? [] : [point(end, last)])]
}

function pair(
  low: number | null | undefined,
  high: number | null | undefined,
): readonly [number, number] | null {
  return low === null || low === undefined || high === null || high === undefined ? null : [low, high]
}

const extent = {
  type: 'stepAfter',
  fill: 'var(--chart-ink)',
  fillOpacity: 1,
  stroke: 'var(--chart-ink)',
  strokeWidth: 1.25,
  connectNulls: false,
  isAnimationActive: false,
  activeDot: false,
  dot: false,
} as const

/** Relative humidity: the extent of each stretch, the band and limit it is held against, and where the logger is blind. */
export const HumidityDrawing = memo(function HumidityDrawing({
  id,
  view,
  ground,
  ticks,
  width,
  height,
}: DrawingProps) {
  const points = useMemo(() => pointsOf(view), [view])
  const scale = humidityScale(view, ground)
  const { band, limitRhPercent: limit, floorRhPercent: floor } = ground
  return (
    <ComposedChart width={width} height={height} data={[...points]} margin={frame} accessibilityLayer={false}>
      <Hatches id={id} />
      {axes({ from: view.fromMs, to: view.toMs, ticks, scale, unit: '%', timeWords: false })}
      {band !== null && (
        <ReferenceArea
          y1={Math.max(band.min, scale.from)}
          y2={Math.min(band.max, scale.to)}
          fill="var(--wash)"
          fillOpacity={1}
          stroke="var(--verdigris)"
          strokeWidth={2}
          ifOverflow="hidden"
          label={{ value: 'needed', position: 'insideTopLeft', ...label }}
        />
      )}
      {floor !== null && floor > scale.from && (
        <ReferenceArea
          y1={scale.from}
          y2={floor}
          fill={`url(#${id}-blind)`}
          fillOpacity={1}
          label={{ value: 'below what this logger can read', position: 'insideBottomLeft', ...label }}
        />
      )}
      <Area dataKey="rh" {...extent} />
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
    </ComposedChart>
  )
})

/** Temperature, small, below: it explains much of what humidity does. */
export const TemperatureDrawing = memo(function TemperatureDrawing({
  view,
  ticks,
  width,
  height,
}: Omit<DrawingProps, 'id' | 'ground'>) {
  const points = useMemo(() => pointsOf(view), [view])
  const scale = temperatureScale(view) ?? { from: 0, to: 30, ticks: [0, 15, 30] }
  return (
    <ComposedChart width={width} height={height} data={[...points]} margin={frame} accessibilityLayer={false}>
      {axes({ from: view.fromMs, to: view.toMs, ticks, scale, unit: '°C' })}
      <Area dataKey="temperature" {...extent} />
    </ComposedChart>
  )
})
