import type { IsoDate } from '../base/calendar.ts'
import type { Fan, Sighting } from '../boxes/box.ts'
import { numberScale } from './store-axis.ts'

/** A box's forecast with what was seen of it, ready to draw. Times in ms, humidities in % to a tenth. */
export interface FanPicture {
  readonly fromMs: number
  readonly toMs: number
  readonly todayMs: number
  readonly limitRhPercent: number | null
  readonly ahead: readonly FanPoint[]
  readonly seen: readonly SeenPoint[]
  /** When the gel is likely to be due, as far as the drawing reaches. */
  readonly renewal: { readonly fromMs: number; readonly toMs: number } | null
}

export interface FanPoint {
  readonly at: number
  readonly eight: readonly [number, number]
  readonly half: readonly [number, number]
  readonly middle: number
}

/** What was seen on a day, and between what it lay: a logger's value with its error, a strip's interval as it was read. */
export interface SeenPoint {
  readonly at: number
  readonly by: Sighting['kind']
  /** Null: it says nothing in figures. */
  readonly between: readonly [number, number] | null
}

const dayMs = 86_400_000
const pointsDrawn = 160
const seenDrawn = 200
/** What was seen earlier than this before the forecast says little of it. */
const daysBack = 400

const tenth = (value: number) => Math.round(value * 10) / 10
const momentOf = (date: IsoDate) => Date.parse(`${date}T00:00:00Z`)

interface Asked {
  readonly fan: Fan
  readonly sightings: readonly Sighting[]
  readonly today: IsoDate
  readonly limitRhPercent: number | null
  readonly renewOn: { readonly early: IsoDate | null; readonly late: IsoDate | null } | null
}

export function fanPicture({ fan, sightings, today, limitRhPercent, renewOn }: Asked): FanPicture {
  const ahead = thinned(
    fan.days.map((day, index) => ({
      at: day * dayMs,
      eight: [tenth(fan.p10[index] ?? 0), tenth(fan.p90[index] ?? 0)] as const,
      half: [tenth(fan.p25[index] ?? 0), tenth(fan.p75[index] ?? 0)] as const,
      middle: tenth(fan.p50[index] ?? 0),
    })),
    pointsDrawn,
  )
  const begins = ahead[0]?.at ?? momentOf(today)
  const seen = thinned(
    sightings.filter(({ on }) => on * dayMs >= begins - daysBack * dayMs).map(seenPoint),
    seenDrawn,
  )
  const fromMs = Math.min(begins, ...seen.map(({ at }) => at))
  const toMs = Math.max(ahead.at(-1)?.at ?? begins + dayMs, fromMs + dayMs)
  const renewal =
    renewOn === null || renewOn.early === null
      ? null
      : {
          fromMs: Math.max(momentOf(renewOn.early), fromMs),
          toMs: renewOn.late === null ? toMs : Math.min(momentOf(renewOn.late), toMs),
        }
  return {
    fromMs,
    toMs,
    todayMs: momentOf(today),
    limitRhPercent,
    ahead,
    seen,
    renewal: renewal !== null && renewal.fromMs < renewal.toMs ? renewal : null,
  }
}

function seenPoint(sighting: Sighting): SeenPoint {
  return { at: sighting.on * dayMs, by: sighting.kind, between: seenBetween(sighting) }
}

function seenBetween(sighting: Sighting): readonly [number, number] | null {
  switch (sighting.kind) {
    case 'logger': {
      const { rhPercent, errorRhPercent } = sighting
      return [
        Math.max(0, tenth(rhPercent - errorRhPercent)),
        Math.min(100, tenth(rhPercent + errorRhPercent)),
      ]
    }
    case 'below-range':
      return [0, sighting.floorRhPercent]
    case 'strip':
      return [sighting.lowRhPercent, sighting.highRhPercent]
    case 'gel-spent':
    case 'lid-loose':
      return null
  }
}

/** Every so-manieth, the last one always. */
function thinned<Point>(points: readonly Point[], most: number): readonly Point[] {
  const each = Math.ceil(points.length / most)
  return points.filter((_, index) => index % each === 0 || index === points.length - 1)
}

export function fanScale({ ahead, seen, limitRhPercent }: FanPicture) {
  const values = [
    ...ahead.flatMap(({ eight }) => eight),
    ...seen.flatMap(({ between }) => between ?? []),
    ...(limitRhPercent === null ? [] : [limitRhPercent]),
  ]
  return numberScale(values, { least: 10, within: [0, 100] })
}

/** Where the line over the drawing may stand: at each day that is drawn, as shares of the width. */
export function fanPlaces({ ahead, fromMs, toMs }: FanPicture): readonly number[] {
  return ahead.map(({ at }) => (at - fromMs) / (toMs - fromMs))
}

/** The first drawn day of each month, for the table behind the drawing. */
export function monthly(points: readonly FanPoint[]): readonly FanPoint[] {
  const month = (at: number) => new Date(at).toISOString().slice(0, 7)
  return points.filter(({ at }, index) => {
    const before = points[index - 1]
    return before === undefined || month(before.at) !== month(at) || index === points.length - 1
  })
}
