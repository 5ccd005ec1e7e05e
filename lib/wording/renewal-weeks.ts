import type { WeekOfWork } from '../boxes/level-work.ts'
import { numberWords } from './band.ts'
import { kilogramWords } from './box-gel.ts'
import { countWords } from './list.ts'

/** `4 boxes, 2.5 kg of gel, 2 h of the 6 h there are`. */
export function weekWords({ renewals, gelKg, minutes, hoursThere }: WeekOfWork): string {
  const hours = minutes / 60
  const work =
    minutes === 0
      ? ''
      : Number.isFinite(hoursThere)
        ? `${numberWords(hours)} h of the ${numberWords(hoursThere)} h there are`
        : `${numberWords(hours)} h`
  return [countWords(renewals.length, 'box', 'boxes'), `${kilogramWords(gelKg)} of dry gel`, work]
    .filter((text) => text !== '')
    .join(', ')
}

/** `2 batches in the oven (8 h); then 3 kg dry and 1.5 kg spent`; empty where nobody counts the gel. */
export function stockWords({ batches, ovenHours, dryKg, spentKg }: WeekOfWork): string {
  const oven =
    batches === 0
      ? ''
      : `${countWords(batches, 'batch', 'batches')} in the oven${ovenHours === 0 ? '' : ` (${numberWords(ovenHours)} h)`}`
  const stock = Number.isFinite(dryKg)
    ? `${kilogramWords(dryKg)} dry and ${kilogramWords(spentKg)} spent left at its end`
    : ''
  return [oven, stock].filter((text) => text !== '').join('; ')
}

/** `53 boxes in 21 weeks; 8 kg of gel a month at most`. */
export function yearWords(weeks: readonly WeekOfWork[]): string {
  const busy = weeks.filter(({ renewals }) => renewals.length > 0)
  const boxes = busy.reduce((sum, { renewals }) => sum + renewals.length, 0)
  const gelKg = busy.reduce((sum, week) => sum + week.gelKg, 0)
  if (boxes === 0) return 'No gel falls due within a year.'
  return `${countWords(boxes, 'renewal')} in ${countWords(busy.length, 'week')} of the year ahead, ${kilogramWords(gelKg)} of dry gel in all.`
}
