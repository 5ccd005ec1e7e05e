'use client'

import dynamic from 'next/dynamic'
import { useId, useMemo, useRef } from 'react'
import { fanPlaces, type FanPicture } from '../../lib/papers/box-fan.ts'
import { timeTicks } from '../../lib/papers/store-axis.ts'
import { fanDayWords, seenKindWords } from '../../lib/wording/chart-fan.ts'
import { ChartKeys } from './chart-keys.tsx'
import { FanMarks } from './fan-marks.tsx'
import { FanTable } from './fan-table.tsx'
import { Legend, type LegendEntry } from './legend.tsx'
import { openTable } from './open-table.ts'
import { Reader } from './reader.tsx'
import { useCrosshair } from './use-crosshair.ts'
import { useRoom } from './use-room.ts'
import style from './chart.module.css'

const Drawing = dynamic(() => import('./fan-drawing.tsx').then((it) => it.FanDrawing), { ssr: false })

interface Props {
  /** What is forecast: `box 14`. */
  readonly name: string
  readonly picture: FanPicture
  /** What it says, in sentences; a forecast is never a single day. */
  readonly summary: readonly string[]
}

/** What a box is likely to do: words first, then the drawing with a line to read it by, then the table behind it. */
export function FanChart({ name, picture, summary }: Props) {
  const id = useId()
  const table = useRef<HTMLDetailsElement>(null)
  const [box, room] = useRoom()
  const { width, height } = room
  const places = useMemo(() => fanPlaces(picture), [picture])
  const onTable = () => openTable(table.current)
  const { cross, index, onKeyDown, pointer } = useCrosshair({ places, onTable })
  const day = cross.at === null ? undefined : picture.ahead[index]
  const words = day === undefined ? null : fanDayWords(day)
  const ticks = timeTicks({ ...picture, zone: 'UTC' }, width < 520 ? 4 : 8)
  return (
    <figure className={style.figure}>
      <figcaption className={style.words}>
        {summary.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </figcaption>
      <div className={style.plot} ref={box} style={room.onPaper ? { width } : undefined}>
        <p className={style.panelName}>Relative humidity</p>
        <div className={`${style.panel} ${style.withTime}`} style={{ height }} inert>
          <Drawing {...{ id, picture, ticks, width, height }} />
          <FanMarks picture={picture} />
        </div>
        <Reader
          name={`Forecast of ${name}`}
          {...{ cross, index, places: places.length, words, onKeyDown, pointer }}
        />
      </div>
      <p className={style.reading}>
        {words ?? 'Point at the chart, or move along it with the arrow keys, to read it.'}
      </p>
      <Legend entries={legendOf(picture)} />
      <ChartKeys zooms={false} />
      <FanTable ref={table} name={name} picture={picture} />
    </figure>
  )
}

function legendOf({ seen, renewal, limitRhPercent }: FanPicture): readonly LegendEntry[] {
  const entries: LegendEntry[] = [
    { mark: 'middle', words: 'the middle of what is likely' },
    { mark: 'half', words: 'as likely inside as outside' },
    { mark: 'eight', words: 'eight times in ten inside' },
  ]
  for (const by of new Set(seen.map((point) => point.by)))
    entries.push({ mark: by, words: seenKindWords(by) })
  if (limitRhPercent !== null) entries.push({ mark: 'limit', words: 'the most its finds bear' })
  if (renewal !== null) entries.push({ mark: 'window', words: 'the gel is likely due' })
  return entries
}
