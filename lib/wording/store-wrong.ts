import type { IsoDate } from '../base/calendar.ts'
import { numberWords } from './band.ts'
import { betweenDaysWords } from './box-renewal.ts'
import { dayWords } from './day.ts'
import { countWords } from './list.ts'

/** What is wrong with a box, or may be; in the order of how much it presses. */
export type Wrong =
  | { readonly code: 'stop'; readonly says: string }
  | {
      readonly code: 'above'
      readonly seen: Seen
      readonly limitRhPercent: number
      readonly certain: boolean
    }
  | { readonly code: 'lid-not-seated'; readonly since: IsoDate }
  | { readonly code: 'departed'; readonly since: IsoDate }
  | { readonly code: 'tub-past'; readonly daysHeld: number; readonly daysAllowed: number }
  | {
      readonly code: 'below'
      readonly seen: Seen
      readonly limitRhPercent: number
      readonly certain: boolean
    }
  | { readonly code: 'disagree' }
  | { readonly code: 'misfits'; readonly finds: number }
  | { readonly code: 'water-due'; readonly changedOn: IsoDate | null }
  | { readonly code: 'past-date'; readonly early: IsoDate | null; readonly late: IsoDate }
  | { readonly code: 'perhaps-due'; readonly late: IsoDate | null }
  | { readonly code: 'unread'; readonly since: IsoDate | null }

interface Seen {
  readonly on: IsoDate
  readonly by: 'logger' | 'strip'
  readonly lowRhPercent: number
  readonly highRhPercent: number
}

/** The order in which boxes are seen to. */
export const wrongOrder = [
  'stop',
  'above',
  'lid-not-seated',
  'departed',
  'tub-past',
  'below',
  'disagree',
  'misfits',
  'water-due',
  'past-date',
  'perhaps-due',
  'unread',
] as const satisfies readonly Wrong['code'][]

export function wrongWords(wrong: Wrong): string {
  switch (wrong.code) {
    case 'stop':
      return `stop: ${wrong.says}`
    case 'above':
    case 'below':
      return beyondWords(wrong)
    case 'lid-not-seated':
      return `lid found not seated on ${dayWords(wrong.since)}: look whether it sits now`
    case 'departed':
      return `lid probably not seated since ${dayWords(wrong.since)}: it has left its forecast`
    case 'tub-past':
      return `${countWords(wrong.daysHeld, 'day')} in water, past the ${wrong.daysAllowed} that wet finds should wait`
    case 'disagree':
      return 'its finds need humidities that do not meet'
    case 'misfits':
      return `${countWords(wrong.finds, 'find')} not at home in it`
    case 'water-due':
      return wrong.changedOn === null
        ? 'nobody has written when its water was changed'
        : `water due to be changed, last on ${dayWords(wrong.changedOn)}`
    case 'past-date':
      return wrong.early === null || wrong.early === wrong.late
        ? 'gel past its date: it stood over its limit when it was last read'
        : `gel past its date, due between ${betweenDaysWords(wrong.early, wrong.late)}`
    case 'perhaps-due':
      return wrong.late === null
        ? 'gel perhaps due already'
        : `gel perhaps due, likely before ${dayWords(wrong.late)}`
    case 'unread':
      return wrong.since === null ? 'never read' : `not read since ${dayWords(wrong.since)}`
  }
}

/** The same beside a line that tells already what was read and what is needed. */
export function wrongBrief(wrong: Wrong): string {
  if (wrong.code !== 'above' && wrong.code !== 'below') return wrongWords(wrong)
  return `${wrong.certain ? '' : 'perhaps '}${wrong.code === 'above' ? 'too damp' : 'too dry'} for its finds`
}

function beyondWords({
  code,
  seen,
  limitRhPercent,
  certain,
}: Extract<Wrong, { readonly seen: Seen }>): string {
  const bear =
    code === 'above'
      ? `no more than ${numberWords(limitRhPercent)} %`
      : `no less than ${numberWords(limitRhPercent)} %`
  return `${certain ? '' : 'perhaps '}${code === 'above' ? 'too damp' : 'too dry'}: ${seenWords(seen)}, and its finds bear ${bear}`
}

/** The last look into a box: `8 to 12 % on a strip, 3 March 2026`. */
export function seenWords({ on, by, lowRhPercent, highRhPercent }: Seen): string {
  const [low, high] = [numberWords(lowRhPercent), numberWords(highRhPercent)]
  const read = low === high ? `${low} %` : lowRhPercent <= 0 ? `below ${high} %` : `${low} to ${high} %`
  return `${read} ${by === 'strip' ? 'on a strip' : 'by a logger'}, ${dayWords(on)}`
}
