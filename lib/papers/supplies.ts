import type { Band } from '../engine/plan.ts'
import type { Planned } from '../field/bag.ts'
import type { SupplyId } from '../wording/supplies.ts'

/** What must be at hand to pack and send what is planned. Counted from the plans; sizes are for the person who packs. */
export interface Supply {
  readonly id: SupplyId
  /** How many at least; null where a number would be a guess. */
  readonly atLeast: number | null
  /** Relative humidity [%] the boxes are to hold, where it matters. */
  readonly band: Band | null
  readonly finds: readonly string[]
}

const says = ({ plan }: Planned, code: string) => plan.packing.some((line) => line.code === code)
const handles = ({ plan }: Planned, code: string) => plan.handling.some((line) => line.code === code)
const names = (bag: readonly Planned[]) => bag.map(({ plan }) => plan.find)

export function supplies(bag: readonly Planned[]): readonly Supply[] {
  const lines = [
    each(
      'perforated-bag',
      bag.filter((one) => says(one, 'perforated-bag') && !says(one, 'bulk-by-context')),
    ),
    perContext(bag.filter((one) => says(one, 'bulk-by-context'))),
    ...boxes(bag.filter((one) => says(one, 'dry-box'))),
    each(
      'water-tub',
      bag.filter(({ plan }) => plan.storage.keep === 'wet'),
    ),
    some(
      'inert-foam',
      bag.filter((one) => says(one, 'inert-foam')),
    ),
    some(
      'dark-cover',
      bag.filter((one) => says(one, 'keep-dark') || one.plan.storage.light === 'dark'),
    ),
    some(
      'gloves',
      bag.filter((one) => handles(one, 'wear-gloves')),
    ),
    each('label', bag),
  ]
  return lines.filter(({ finds }) => finds.length > 0)
}

function each(id: SupplyId, bag: readonly Planned[]): Supply {
  return { id, atLeast: bag.length, band: null, finds: names(bag) }
}

function some(id: SupplyId, bag: readonly Planned[]): Supply {
  return { id, atLeast: null, band: null, finds: names(bag) }
}

function perContext(bag: readonly Planned[]): Supply {
  const lots = new Set(
    bag.map(
      ({ record }) =>
        `${record.site_code ?? ''} ${record.context ?? ''} ${record.object_kind ?? record.object ?? ''}`,
    ),
  )
  return { id: 'bulk-bag', atLeast: lots.size, band: null, finds: names(bag) }
}

/** One box for each humidity at least, with its gel and its strip; how many more depends on sizes nobody has told us. */
function boxes(bag: readonly Planned[]): readonly Supply[] {
  const bands = Map.groupBy(bag, ({ plan }) => JSON.stringify(plan.storage.rhPercent))
  return [...bands.values()].flatMap((group) => {
    const band = group[0]?.plan.storage.rhPercent ?? null
    const finds = names(group)
    return (['dry-box', 'dry-gel', 'humidity-strip'] as const).map((id) => ({ id, atLeast: 1, band, finds }))
  })
}
