import { numberWords } from './band.ts'
import { countWords } from './list.ts'

/** Why a box is carried out before another, the most pressing first. */
const reasons = {
  iron: 'iron that is kept dry',
  dry: 'other finds that are kept dry',
  'parts-disagree': 'finds of several materials',
  other: 'finds no humidity is named for',
  'in-water': 'lies in water already: lid on, carry level, last',
} as const

export type SalvageReason = keyof typeof reasons
export const salvageReasons = Object.keys(reasons) as readonly SalvageReason[]

/** `iron that is kept dry (7 of 12 finds), under 12 %`. */
export function salvageWhy({
  reason,
  lowestCeiling,
  ironFinds,
  finds,
}: {
  readonly reason: SalvageReason
  readonly lowestCeiling: number | null
  readonly ironFinds: number
  readonly finds: readonly string[]
}): string {
  const share = reason === 'iron' ? ` (${ironFinds} of ${countWords(finds.length, 'find')})` : ''
  const ceiling =
    lowestCeiling === null || reason === 'in-water' ? '' : `, under ${numberWords(lowestCeiling)} %`
  return `${reasons[reason]}${share}${ceiling}`
}

/** What stands above the list, in the order it is to be heard. */
export const salvageRules: readonly string[] = [
  'People first. Nobody goes into a room with water near electricity, smoke or a damaged ceiling; the fire service or whoever leads on the spot decides when.',
  'Where a stop is printed, leave the box where it stands and call.',
  'Carry boxes level and shut. Note where each one went before the next is fetched.',
  'What got wet is not dried in a hurry and not shut in with gel: keep it apart, open to the air out of the sun, and call the conservator.',
  'What lay in water stays in water.',
]

/** How the order came about: ours, and said so. */
export const salvageOrderSays =
  'The order is our own rule: iron that is kept dry first, then the rest by how dry it must stay, then by shelf.'
