import { fold } from '../../base/fold.ts'
import { sensorPart } from './heading-words.ts'
import type { ValueColumn } from './layout.ts'
import type { Quantity } from './store.ts'
import type { Unit } from './units.ts'

/** A column of values before anybody knows which others belong to the same sensor. */
export interface LooseColumn {
  readonly column: number
  readonly heading: string
  readonly quantity: Quantity
  readonly unit: Unit | null
  /** What the headings say of the sensor; a person's own word for it goes before. */
  readonly sensor: string | null
  readonly group: string
}

interface Named {
  readonly loose: LooseColumn
  readonly sensor: string
}

const nameOf = (loose: LooseColumn) =>
  (loose.sensor ?? `${loose.group} ${sensorPart(loose.heading)}`).replace(/\s+/g, ' ').trim()

/** Sensors of one name that have several columns of a quantity are numbered in the order they stand. */
function numbered(columns: readonly Named[], several: boolean): readonly Named[] {
  if (!several) return columns
  const seen: Record<Quantity, number> = { temperature: 0, humidity: 0 }
  return columns.map(({ loose, sensor }) => ({
    loose,
    sensor: `${sensor} ${++seen[loose.quantity]}`.trim(),
  }))
}

const only = (columns: readonly Named[], quantity: Quantity) =>
  columns.every(({ loose }) => loose.quantity === quantity)

/**
 * Which columns of temperature and of humidity are one sensor's: those whose headings leave the same name once the words of
 * quantity and unit are taken out; where names differ and there are as many of each, in the order they stand.
 */
export function channelsOf(loose: readonly LooseColumn[]): readonly ValueColumn[] {
  const named = loose.map((column) => ({ loose: column, sensor: nameOf(column) }))
  const groups = [...Map.groupBy(named, ({ sensor }) => fold(sensor)).values()].flatMap((group) => {
    const counts = [...Map.groupBy(group, ({ loose }) => loose.quantity).values()]
    const several = counts.some((columns) => columns.length > 1)
    const renamed = numbered(group, several)
    return several ? [...Map.groupBy(renamed, ({ sensor }) => sensor).values()] : [renamed]
  })
  const warm = groups.filter((group) => only(group, 'temperature'))
  const damp = groups.filter((group) => only(group, 'humidity'))
  const joined =
    warm.length === damp.length
      ? new Map(damp.map((group, at) => [group, warm[at]![0]!.sensor || group[0]!.sensor]))
      : new Map<readonly Named[], string>()
  const takers =
    warm.length === damp.length
      ? new Map(warm.map((group, at) => [group, joined.get(damp[at]!)!]))
      : new Map()
  const channels = groups.flatMap((group) =>
    group.map(({ loose, sensor }) => ({ loose, channel: joined.get(group) ?? takers.get(group) ?? sensor })),
  )
  const alone = new Set(channels.map(({ channel }) => channel)).size === 1
  return channels
    .map(({ loose: { column, heading, quantity, unit }, channel }): ValueColumn => ({
      column,
      heading: heading === '' ? `#${column + 1}` : heading,
      quantity,
      unit,
      channel: alone && channel === '1' ? '' : channel,
    }))
    .toSorted((a, b) => a.column - b.column)
}
