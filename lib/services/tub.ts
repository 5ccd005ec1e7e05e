import { addDays, daysBetween, type IsoDate } from '../base/calendar.ts'
import { figureValue, type Figures } from '../boxes/figure-value.ts'
import type { BoxGiven } from '../record/places.ts'
import type { DiaryEntry } from './diary.ts'
import type { Tub } from './show-store.ts'
import type { FindStay } from './stays.ts'

const latest = (days: readonly (IsoDate | undefined)[]): IsoDate | null =>
  days.reduce<IsoDate | null>(
    (last, day) => (day !== undefined && (last === null || day > last) ? day : last),
    null,
  )

/** Since when finds lie in it: as it is written, else since the first of those that lie there was put in. */
function filledOn(box: BoxGiven, stays: readonly FindStay[]): IsoDate | null {
  if (box.filled_on !== undefined) return box.filled_on
  const firsts = stays.flatMap(({ from, to }) => (to === null && from !== null ? [from] : []))
  return firsts.reduce<IsoDate | null>((first, day) => (first === null || day < first ? day : first), null)
}

/** A tub of wet finds: how long they wait, and whether its water is due. An empty tub waits for nobody. */
export function tubOf(
  box: BoxGiven,
  finds: number,
  entries: readonly DiaryEntry[],
  stays: readonly FindStay[],
  today: IsoDate,
  knowledge: Figures,
): Tub | null {
  if (box.kind !== 'tub') return null
  const daysAllowed = figureValue(knowledge, 'wet-treatment-within-days')
  const filled = finds === 0 ? null : filledOn(box, stays)
  const changes = entries.flatMap(({ kind, on }) => (kind === 'water-change' ? [on] : []))
  const waterChangedOn = latest([box.water_changed_on, ...changes])
  const freshOn = latest([waterChangedOn ?? undefined, filled ?? undefined])
  const waterDueOn =
    finds === 0 || freshOn === null ? null : addDays(freshOn, figureValue(knowledge, 'tub-water-change-days'))
  const daysHeld = filled === null ? null : daysBetween(filled, today)
  return {
    filledOn: filled,
    daysHeld,
    daysAllowed,
    pastItsDays: daysHeld !== null && daysHeld > daysAllowed,
    waterChangedOn,
    waterDueOn,
    // Nobody knows since when the water stands: then it is due.
    waterDue: finds > 0 && (waterDueOn === null || waterDueOn <= today),
  }
}
