import { limitOn, type Period, type ReportBox, type ReportReading } from './store-report-box.ts'

/** How a box stood by its newest reading of the period; a reading from before the gel was renewed tells of the old gel. */
export const boxStates = ['over', 'cannot-tell', 'renewed-unread', 'in-band', 'not-read', 'no-limit'] as const
export type BoxState = (typeof boxStates)[number]

/** What a reading tells of a limit. */
export function tells(
  { lowRhPercent, highRhPercent }: Pick<ReportReading, 'lowRhPercent' | 'highRhPercent'>,
  limitRhPercent: number,
): 'in-band' | 'over' | 'cannot-tell' {
  if (highRhPercent <= limitRhPercent) return 'in-band'
  return lowRhPercent > limitRhPercent ? 'over' : 'cannot-tell'
}

export function stateAt(box: ReportBox, { from, to }: Pick<Period, 'from' | 'to'>): BoxState {
  const limit = limitOn(box, to)
  if (limit === null) return 'no-limit'
  const newest = box.readings.at(-1)
  if (newest === undefined || newest.on < from) return 'not-read'
  // On the day of the renewal itself the box was read before it, more likely than after.
  if (newest.on <= (box.gel.at(-1)?.on ?? '')) return 'renewed-unread'
  return tells(newest, limit)
}

/** Whether what is told of a box hangs on a strip being true to less than its error. */
export function hangsOnStrip(box: ReportBox, period: Pick<Period, 'from' | 'to'>): boolean {
  const state = stateAt(box, period)
  const [newest, limit] = [box.readings.at(-1), limitOn(box, period.to)]
  if ((state !== 'in-band' && state !== 'over') || newest === undefined || limit === null) return false
  const { lowRhPercent, highRhPercent, slackRhPercent } = newest
  const widest = {
    lowRhPercent: lowRhPercent - slackRhPercent,
    highRhPercent: highRhPercent + slackRhPercent,
  }
  return tells(widest, limit) === 'cannot-tell'
}
