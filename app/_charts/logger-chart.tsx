'use client'

import dynamic from 'next/dynamic'
import { useId, useMemo, useRef } from 'react'
import { timeTicks } from '../../lib/papers/store-axis.ts'
import {
  middlesOf,
  temperatureScale,
  zoomedRound,
  type ChartGround,
  type ChartView,
  type Span,
} from '../../lib/papers/store-chart.ts'
import { readingWords, type StretchRead } from '../../lib/wording/chart-reading.ts'
import { stretchWords } from '../../lib/wording/chart-time.ts'
import { ChartKeys } from './chart-keys.tsx'
import { LoggerLegend } from './logger-legend.tsx'
import { LoggerMarks } from './logger-marks.tsx'
import { LoggerTable } from './logger-table.tsx'
import { openTable } from './open-table.ts'
import { Reader } from './reader.tsx'
import { StretchButtons } from './stretch-buttons.tsx'
import { useCrosshair } from './use-crosshair.ts'
import { useLoggerView } from './use-logger-view.ts'
import { useRoom } from './use-room.ts'
import style from './chart.module.css'

// The drawing library is large and draws nothing on a server: it is fetched where a chart stands, after the words.
const Humidity = dynamic(() => import('./logger-drawing.tsx').then((it) => it.HumidityDrawing), {
  ssr: false,
})
const Temperature = dynamic(() => import('./logger-drawing.tsx').then((it) => it.TemperatureDrawing), {
  ssr: false,
})

interface Props {
  /** What stands here: `Logger 4411 in box 14`. */
  readonly name: string
  readonly first: ChartView
  readonly whole: Span
  readonly ground: ChartGround
  /** Where another view is fetched; from and to are added. */
  readonly address: string
}

/** A logger's readings: words first, then the drawing with a line to read it by, then the table behind it. */
export function LoggerChart({ name, first, whole, ground, address }: Props) {
  const id = useId()
  const table = useRef<HTMLDetailsElement>(null)
  const { view, state, show } = useLoggerView(first, whole, address)
  const [box, room] = useRoom()
  const { width } = room
  const { zone } = view
  const places = useMemo(() => middlesOf(view), [view])
  const momentAt = (share: number) => view.fromMs + share * (view.toMs - view.fromMs)
  const { cross, index, onKeyDown, pointer, clear } = useCrosshair({
    places,
    onMark: (from, to) => void show({ fromMs: momentAt(from), toMs: momentAt(to) }),
    onZoom: (at, factor) => void show(zoomedRound(view, momentAt(at), factor)),
    onTable: () => openTable(table.current),
  })
  const go = (span: Span) => {
    clear()
    void show(span)
  }
  const words =
    cross.at === null ? null : readingWords(readAt(view, index, momentAt(cross.at)), { zone, ...ground })
  const drawing = { id, view, ground, width, ticks: timeTicks(view, width < 520 ? 4 : width < 800 ? 5 : 8) }
  return (
    <figure className={style.figure}>
      <figcaption className={style.words}>
        <strong>{stretchWords(view.fromMs, view.toMs, zone)}</strong>
        <div role="status">
          {view.summary.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      </figcaption>
      <StretchButtons name={name} view={view} whole={whole} onGo={go} />
      <div
        className={style.plot}
        ref={box}
        style={room.onPaper ? { width } : undefined}
        aria-busy={state === 'fetching'}
      >
        <p className={style.panelName}>Relative humidity</p>
        <div className={style.panel} style={{ height: room.height }} inert>
          <Humidity {...drawing} height={room.height} />
          <LoggerMarks id={id} view={view} />
        </div>
        {temperatureScale(view) !== null && (
          <>
            <p className={style.panelName}>Temperature</p>
            <div className={style.small} style={{ height: room.small }} inert>
              <Temperature {...drawing} height={room.small} />
            </div>
          </>
        )}
        <Reader
          name={`Readings of ${name}`}
          {...{ cross, index, places: places.length, words, onKeyDown, pointer }}
        />
      </div>
      <p className={style.reading}>
        {words ?? 'Point at the chart, or move along it with the arrow keys, to read it.'}
      </p>
      {typeof state === 'object' && (
        <p role="alert" className="wrong">
          {state.says}
        </p>
      )}
      <LoggerLegend ground={ground} view={view} />
      <ChartKeys zooms />
      <LoggerTable ref={table} name={name} view={view} ground={ground} />
    </figure>
  )
}

/** What was read at that moment: nothing, where it lies before the first reading or after the last. */
function readAt({ stretches }: ChartView, index: number, atMs: number): StretchRead {
  const [fromMs, toMs] = [stretches.fromMs[index] ?? 0, stretches.toMs[index] ?? 0]
  if (atMs < (stretches.fromMs[0] ?? 0) || atMs > (stretches.toMs.at(-1) ?? 0)) {
    const nothing = { rhLow: null, rhHigh: null, temperatureLow: null, temperatureHigh: null }
    return { fromMs: atMs, toMs: atMs, ...nothing }
  }
  return {
    fromMs,
    toMs,
    rhLow: stretches.rhLow[index] ?? null,
    rhHigh: stretches.rhHigh[index] ?? null,
    temperatureLow: stretches.temperatureLow[index] ?? null,
    temperatureHigh: stretches.temperatureHigh[index] ?? null,
  }
}
