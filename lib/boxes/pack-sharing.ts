import type { Band } from '../engine/plan.ts'
import type { PackFigures, PackFind } from './pack-find.ts'

/** As the decision `family` names what a part is of. */
const metals: ReadonlySet<string> = new Set([
  'iron',
  'copper-alloy',
  'lead',
  'tin',
  'silver',
  'gold',
  'zinc',
  'aluminium',
  'magnesium',
  'nickel',
  'white-metal',
  'unidentified-metal',
])

/** What was alive, and plastics: they give off acid or sulphur, some of them much, and a record seldom says which. */
const givesOff: ReadonlySet<string> = new Set(['organic', 'polymer'])

export const metalsOf = ({ families }: PackFind): readonly string[] =>
  families.filter((family) => metals.has(family)).toSorted()

const living = ({ families }: PackFind): boolean => families.some((family) => givesOff.has(family))

/** Whether two finds may lie in one box as far as what they are of goes; their bands are looked at apart. */
export function mayLieTogether(a: PackFind, b: PackFind): boolean {
  if (a.alone || b.alone) return false
  if ((a.keep === 'wet') !== (b.keep === 'wet')) return false
  // In water two metals make a cell: one metal a tub.
  if (a.keep === 'wet') return metalsOf(a).join(' ') === metalsOf(b).join(' ')
  return bears(a, b) && bears(b, a)
}

function bears(find: PackFind, beside: PackFind): boolean {
  if (find.apartFromMetals && metalsOf(beside).some((metal) => !find.families.includes(metal))) return false
  if (!living(beside)) return true
  // What has an organic part of its own gains nothing by being kept from others' vapours, unless its plan says so.
  return !find.apartFromOrganics && (!find.cleanAir || living(find))
}

/** Finds that are alike in this share with the same others. */
export function sharingKey(find: PackFind): string {
  const { keep, families, apartFromMetals, apartFromOrganics, cleanAir, alone } = find
  const own = [...new Set(families)].filter((family) => metals.has(family) || givesOff.has(family)).toSorted()
  return JSON.stringify([keep === 'wet', own, apartFromMetals, apartFromOrganics, cleanAir, alone])
}

/** What a box can really be kept at for it: gel reaches no further down than it does. Tubs know no humidity. */
export function reachable(
  { keep, rhPercent }: Pick<PackFind, 'keep' | 'rhPercent'>,
  figures: PackFigures,
): Band {
  if (keep === 'wet' || rhPercent === null) return { min: 0, max: 100 }
  return { min: Math.max(rhPercent.min, figures.driestRhPercent), max: rhPercent.max }
}

/** Whether one box can be kept where both bands hold. */
export function meet(a: Band, b: Band, { narrowestRhPercent }: PackFigures): boolean {
  return Math.min(a.max, b.max) - Math.max(a.min, b.min) >= narrowestRhPercent
}
