import type { Missing, NotInTime, PlannedRenewal } from '../boxes/level-work.ts'
import { kilogramWords } from './box-gel.ts'
import { dayWords } from './day.ts'
import { listWords } from './list.ts'

export const calendarName = (project: string): string => `${project}: gel to renew`

const placeWords = ({ room, shelf }: PlannedRenewal['due']): string =>
  [room, shelf === '' ? '' : `shelf ${shelf}`].filter((word) => word !== '').join(', ')

/** `Gel of TW-B01 (Metal store, shelf C6)`. */
export function renewalSummary({ due }: Pick<PlannedRenewal, 'due'>): string {
  const place = placeWords(due)
  return `Gel of ${due.box}${place === '' ? '' : ` (${place})`}`
}

/** For whoever opens the entry: what to take along, and how sure the day is. */
export function renewalDescription({ due, turn, safeOn, late }: PlannedRenewal): string {
  const lines = [`Renew the gel: ${kilogramWords(due.gelKg)}, dry.`]
  if (late)
    lines.push(
      `It should have been done by ${dayWords(safeOn)}; this is the first week that has hours and gel for it.`,
    )
  else
    lines.push(`Until ${dayWords(safeOn)} the box is thought to keep below its limit in nine cases of ten.`)
  if (turn === 1 && due.likelyOn !== null)
    lines.push(`As likely as not it is spent by ${dayWords(due.likelyOn)}.`)
  if (turn > 1)
    lines.push('This one follows from when the gel is renewed before; read the strip and plan again.')
  return lines.join('\n')
}

const things: Readonly<Record<Missing, string>> = {
  hours: 'too few hours',
  oven: 'too little time in the oven',
  gel: 'too little dry gel',
}

/** Why a renewal comes late, in words for a list: what there would have to be more of. */
export function missingWords({ overdue, missing }: Pick<NotInTime, 'overdue' | 'missing'>): string {
  if (missing.length === 0) return 'It was due before the first week; it comes first.'
  const want = listWords(missing.map((one) => things[one]))
  return overdue
    ? `It was due before the first week, and that week has ${want}.`
    : `The weeks before its day have ${want}.`
}

/** What nobody has said, and what that means for the plan. */
const untoldWords = {
  hours: 'Nobody has written how many hours a week there are for boxes, so hours limit nothing here.',
  minutes: 'Nobody has written how long a box takes, so hours limit nothing here.',
  gel: 'Nobody has written how much dry gel there is, so gel limits nothing here.',
  oven: 'Nobody has written what the oven dries in a week, so no spent gel is counted on.',
} as const

export const saidOfUntold = (untold: keyof typeof untoldWords): string => untoldWords[untold]
