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

/** Sensors that have one quantity only, each joined with one that has the other, if there are as many: name by column. */
function pairs(groups: readonly (readonly Named[])[]): ReadonlyMap<number, string> {
  const warm = groups.filter((group) => only(group, 'temperature'))
  const damp = groups.filter((group) => only(group, 'humidity'))
  if (warm.length !== damp.length) return new Map()
  // What is left of the only two headings tells nothing apart.
  const nameless = groups.length === 2 && warm.length === 1
  return new Map(
    warm.flatMap((group, at) => {
      const name = nameless ? '' : group[0]!.sensor || damp[at]![0]!.sensor
      return [...group, ...damp[at]!].map(({ loose }) => [loose.column, name] as const)
    }),
  )
}

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
  const paired = pairs(groups)
  return groups
    .flatMap((group) => {
      // One sensor may be spelt in two ways.
      const name = group[0]!.sensor
      return group.map(({ loose: { column, heading, quantity, unit } }): ValueColumn => ({
        column,
        heading: heading === '' ? `#${column + 1}` : heading,
        quantity,
        unit,
        channel: paired.get(column) ?? name,
      }))
    })
    .toSorted((a, b) => a.column - b.column)
}
