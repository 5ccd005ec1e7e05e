import type { Band } from '../engine/plan.ts'
import type { PackBox, PackFigures, PackFind } from './pack-find.ts'
import type { Nowhere } from './pack-proposal.ts'
import { reachable } from './pack-sharing.ts'
import type { Bagged } from './pack-size.ts'

/** What of a box can be filled, and how much it carries. */
export function capacityOf(
  box: PackBox,
  figures: PackFigures,
): { readonly volumeMl: number; readonly massG: number } {
  return {
    volumeMl: Math.floor((box.volumeL ?? 0) * 1000 * (box.kind === 'tub' ? 1 : figures.usablePart)),
    massG: Math.floor((box.maxKg ?? figures.mostKg) * 1000),
  }
}

/** The room has what is asked at all times; only at times; never; or nobody has written what it has. */
export type Meets = 'always' | 'at-times' | 'never' | 'not-written'

export function temperatureMeets(find: PackFind, box: PackBox): Meets {
  const { min, max } = find.temperatureC
  if (min === null && max === null) return 'always'
  const room = box.roomTemperatureC
  if (room === null) return 'not-written'
  const low = min ?? -Infinity
  const high = max ?? Infinity
  if (room.min >= low && room.max <= high) return 'always'
  return room.max < low || room.min > high ? 'never' : 'at-times'
}

/** The room's own air does; nothing need be done in the box. */
export function roomSuits(band: Band, { roomRhPercent }: PackBox): boolean {
  return roomRhPercent !== null && roomRhPercent.min >= band.min && roomRhPercent.max <= band.max
}

/** A box without a written leak is taken as one of the trade's: what its gel must do is computed from the trade's range. */
export const isTight = ({ airChangesPerDay }: PackBox, { leakiestPerDay }: PackFigures): boolean =>
  airChangesPerDay === null || airChangesPerDay <= leakiestPerDay

/** Why this box does not take this find, were it empty; null where it does. */
export function refusal(find: PackFind, bagged: Bagged, box: PackBox, figures: PackFigures): Nowhere | null {
  if (find.keep === 'wet' ? box.kind !== 'tub' : box.kind === 'tub') {
    return find.keep === 'wet' ? { code: 'no-tub' } : { code: 'no-box' }
  }
  if (box.volumeL === null) return { code: 'no-box' }
  const band = reachable(find, figures)
  if (band.max - band.min < figures.narrowestRhPercent) return tooNarrow(find, figures)
  if (temperatureMeets(find, box) === 'never')
    return { code: 'no-room-for-temperature', ...find.temperatureC }
  if (find.keep !== 'wet' && !roomSuits(bandOf(find), box) && !isTight(box, figures))
    return { code: 'no-tight-box' }
  return tooLarge(bagged, box, figures)
}

const bandOf = ({ rhPercent }: PackFind): Band => rhPercent ?? { min: 0, max: 100 }

function tooNarrow({ rhPercent }: PackFind, { narrowestRhPercent, driestRhPercent }: PackFigures): Nowhere {
  const { min, max } = rhPercent ?? { min: 0, max: 100 }
  return max - min < narrowestRhPercent
    ? { code: 'band-narrower', widthPercent: max - min, narrowestPercent: narrowestRhPercent }
    : { code: 'drier-than-gel', maxPercent: max, driestPercent: driestRhPercent }
}

function tooLarge(bagged: Bagged, box: PackBox, figures: PackFigures): Nowhere | null {
  const over = box.insideMm?.map((side, at) => bagged.sidesMm[at]! - side) ?? []
  const byMm = Math.max(0, ...over)
  if (byMm > 0) {
    const at = over.indexOf(byMm)
    return { code: 'too-long', byMm, sideMm: bagged.sidesMm[at]! }
  }
  const { volumeMl, massG } = capacityOf(box, figures)
  if (bagged.volumeMl > volumeMl)
    return { code: 'too-big', volumeL: bagged.volumeMl / 1000, mostL: volumeMl / 1000 }
  if (bagged.massG > massG) return { code: 'too-heavy', massKg: bagged.massG / 1000, mostKg: massG / 1000 }
  return null
}
