import type { CouponMetal } from '../climate/coupon.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'

/** Where to read on about a metal and the air: nothing is concluded here. */
export interface AirMeaning {
  readonly metal: CouponMetal
  readonly contested: readonly string[]
  readonly figures: readonly string[]
}

const about: Readonly<Record<CouponMetal, Omit<AirMeaning, 'metal'>>> = {
  silver: {
    contested: ['silver-humidity'],
    figures: ['silver-sulphide-dose', 'museum-sulphide-low'],
  },
  copper: {
    contested: ['bronze-humidity'],
    figures: ['copper-formic-look', 'copper-formic-gains', 'cupboard-acetic-low'],
  },
  steel: { contested: ['iron-humidity', 'chloride-and-rate'], figures: ['iron-appreciable-rh'] },
  zinc: { contested: [], figures: ['zinc-card-ph'] },
  lead: {
    contested: [],
    figures: ['lead-organic-acid', 'lead-formic-darkens', 'lead-formic-gains', 'lead-acetic-low'],
  },
}

/** What the knowledge has about the metals named, in their order; ids it does not have are left out. */
export function airMeaning(
  metals: readonly CouponMetal[],
  { contested, figures }: Pick<Knowledge, 'contested' | 'figures'>,
): readonly AirMeaning[] {
  return metals.map((metal) => ({
    metal,
    contested: about[metal].contested.filter((id) => contested[id] !== undefined),
    figures: about[metal].figures.filter((id) => figures[id] !== undefined),
  }))
}
