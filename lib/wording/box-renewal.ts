import type { IsoDate } from '../base/calendar.ts'
import { dayWords } from './day.ts'

/** Days between which the gel is to be renewed, as far as one can see; null where that lies farther off. */
interface Renewal {
  readonly early: IsoDate | null
  readonly late: IsoDate | null
}

/** Both ends of a stretch of days, the year once where it is one: `3 March and 20 June 2027`. */
export function betweenDaysWords(early: IsoDate, late: IsoDate): string {
  const first = dayWords(early)
  const sameYear = early.slice(0, 4) === late.slice(0, 4)
  return `${sameYear ? first.slice(0, first.lastIndexOf(' ')) : first} and ${dayWords(late)}`
}

/** When the gel falls due, never as one day: `likely between 3 March and 20 June 2027`. */
export function renewalWords({ early, late }: Renewal, today: IsoDate): string {
  if (early === null) return 'farther off than we look ahead'
  if (late === null)
    return early <= today
      ? 'perhaps due already, perhaps not for long'
      : `not likely before ${dayWords(early)}`
  if (late <= today)
    return early === late
      ? 'past its date: the box stood over its limit when it was last read'
      : `past its date: it was likely due between ${betweenDaysWords(early, late)}`
  if (early <= today) return `perhaps due already, likely before ${dayWords(late)}`
  return early === late
    ? `likely about ${dayWords(early)}`
    : `likely between ${betweenDaysWords(early, late)}`
}

export type Due = 'past' | 'perhaps' | 'later'

/** Whether the gel of a box is past its date, may be, or is not yet. */
export function dueOf({ early, late }: Renewal, today: IsoDate): Due {
  if (late !== null && late <= today) return 'past'
  return early !== null && early <= today ? 'perhaps' : 'later'
}
