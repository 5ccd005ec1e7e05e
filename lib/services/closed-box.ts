import type { IsoDate } from '../base/calendar.ts'
import type { Range } from '../base/range.ts'
import type { ClosedBox, Sighting } from '../boxes/box.ts'
import { figureValue, type Figures } from '../boxes/figure-value.ts'
import type { BoxGiven, RoomGiven } from '../record/places.ts'
import type { NoOutlook } from './box-outlook.ts'
import { dayNumber } from './box-sightings.ts'
import type { DiaryEntry } from './diary.ts'

interface Known {
  readonly box: BoxGiven
  readonly room: RoomGiven | undefined
  readonly entries: readonly DiaryEntry[]
  readonly sightings?: readonly Sighting[]
  readonly limitRhPercent: number | null
}

type Start = Pick<ClosedBox, 'startedOn' | 'startRhPercent'>

/** Inside of a box [l] as written, else from its measures. */
function volumeL({ volume_l, length_mm, width_mm, height_mm }: BoxGiven): number | null {
  if (volume_l !== undefined) return volume_l
  if (length_mm === undefined || width_mm === undefined || height_mm === undefined) return null
  return (length_mm * width_mm * height_mm) / 1_000_000
}

/** The day its gel was last renewed, by its row or by the diary. */
export function gelSince({ gel_conditioned_on }: BoxGiven, entries: readonly DiaryEntry[]): IsoDate | null {
  const changed = entries.findLast(({ kind }) => kind === 'gel-change')?.on ?? null
  if (gel_conditioned_on === undefined) return changed
  return changed !== null && changed > gel_conditioned_on ? changed : gel_conditioned_on
}

/** What gel of this dryness may have begun with; where nobody wrote it, what dried gel may. */
function startRhPercent(gel_rh_percent: number | undefined, knowledge: Figures): Range {
  if (gel_rh_percent === undefined) {
    const nominal = figureValue(knowledge, 'gel-start-rh-unwritten')
    return { low: 0, nominal, high: figureValue(knowledge, 'gel-start-rh-unwritten-high') }
  }
  const spread = figureValue(knowledge, 'gel-start-rh-spread')
  return {
    low: Math.max(0, gel_rh_percent - spread),
    nominal: gel_rh_percent,
    high: Math.min(100, gel_rh_percent + spread),
  }
}

function airChangesPerDay({ air_changes_per_day: written }: BoxGiven, knowledge: Figures): Range | null {
  if (written === undefined || written <= 0) return null
  const factor = figureValue(knowledge, 'air-exchange-written-spread')
  return { low: written / factor, nominal: written, high: written * factor }
}

/** Where nobody wrote when the gel was renewed, the box begins with the first that was read of it. */
function firstSeen(sightings: readonly Sighting[]): Start | null {
  for (const seen of sightings) {
    const startedOn = Math.floor(seen.on)
    if (seen.kind === 'logger') {
      const { rhPercent: nominal, errorRhPercent: error } = seen
      return { startedOn, startRhPercent: around(nominal - error, nominal, nominal + error) }
    }
    if (seen.kind === 'strip') {
      const { lowRhPercent: low, highRhPercent: high } = seen
      return { startedOn, startRhPercent: around(low, (low + high) / 2, high) }
    }
  }
  return null
}

const around = (low: number, nominal: number, high: number): Range => ({
  low: Math.max(0, low),
  nominal,
  high: Math.min(100, high),
})

/** The box as the leak model sees it, or what is missing for that. */
export function closedBox(
  { box, room, entries, sightings = [], limitRhPercent }: Known,
  knowledge: Figures,
): ClosedBox | NoOutlook {
  if (box.kind === 'tub') return 'tub'
  if (!((box.gel_kg ?? 0) > 0)) return 'no-gel'
  const volume = volumeL(box)
  if (volume === null) return 'no-volume'
  const since = gelSince(box, entries)
  const start: Start | null =
    since === null
      ? firstSeen(sightings)
      : { startedOn: dayNumber(since), startRhPercent: startRhPercent(box.gel_rh_percent, knowledge) }
  if (start === null) return 'no-start'
  const written = [room?.t_low, room?.t_high].filter((value) => value !== undefined)
  return {
    name: box.box,
    model: box.model ?? null,
    room: box.room ?? null,
    volumeL: volume,
    gelKg: box.gel_kg!,
    reservoirGPerKgPercent: {
      low: figureValue(knowledge, 'gel-reservoir-low'),
      nominal: figureValue(knowledge, 'gel-reservoir'),
      high: figureValue(knowledge, 'gel-reservoir-high'),
    },
    airChangesPerDay: airChangesPerDay(box, knowledge),
    temperatureC:
      written.length === 0
        ? figureValue(knowledge, 'store-temperature-unwritten')
        : written.reduce((sum, value) => sum + value, 0) / written.length,
    ...start,
    limitRhPercent,
  }
}

/** The same box with the gel it held before; null where nobody wrote of any. */
export function boxBefore(
  closed: ClosedBox,
  entries: readonly DiaryEntry[],
  knowledge: Figures,
): ClosedBox | null {
  const before = entries.findLast(
    (entry) =>
      entry.kind === 'gel-change' && entry.given.gel_kg > 0 && dayNumber(entry.on) < closed.startedOn,
  )
  if (before?.kind !== 'gel-change') return null
  const { gel_kg, gel_rh_percent } = before.given
  return {
    ...closed,
    gelKg: gel_kg,
    startedOn: dayNumber(before.on),
    startRhPercent: startRhPercent(gel_rh_percent, knowledge),
  }
}
