import { countWords } from './list.ts'
import { kilogramWords } from './box-gel.ts'
import { someWords } from './what-if-rests.ts'

interface Report {
  readonly boxes: number
  readonly hangsOnStrip: readonly string[]
  readonly gel: {
    readonly changes: number
    readonly takenOutKg: number
    readonly takenOutUnwritten: number
    readonly onlyInTable: number
  }
  readonly restsOn: { readonly strips: number; readonly loggerDays: number; readonly boxesRead: number }
}

/** What the states of boxes rest on. */
export function statesRestLines({ restsOn, hangsOnStrip, boxes }: Report): readonly string[] {
  const { strips, loggerDays, boxesRead } = restsOn
  const lines = [
    `Rests on ${countWords(strips, 'strip')} and ${countWords(loggerDays, 'day')} of loggers, in ${boxesRead} of ${countWords(boxes, 'box', 'boxes')}. Each box stands as its newest reading of the year has it, against what the most demanding find in it bears by the plans of today. Loggers count with the error of their sensor, strips as they were read.`,
  ]
  if (hangsOnStrip.length > 0)
    lines.push(
      `Of those in band or over, ${countWords(hangsOnStrip.length, 'box', 'boxes')} would be open if the strip was off by as much as strips may be: ${someWords(hangsOnStrip, 12)}.`,
    )
  return lines
}

/** What the gel rests on. */
export function gelRestLines({ gel }: Report): readonly string[] {
  const { changes, takenOutKg, takenOutUnwritten, onlyInTable } = gel
  if (changes === 0) return []
  const out =
    takenOutUnwritten === changes
      ? 'Of none of them did anybody write how much spent gel was taken out.'
      : takenOutUnwritten === 0
        ? `${kilogramWords(takenOutKg)} of spent gel was taken out.`
        : `${kilogramWords(takenOutKg)} of spent gel was taken out of ${changes - takenOutUnwritten}; of the others nobody wrote it.`
  const table =
    onlyInTable === 0
      ? []
      : [
          `${countWords(onlyInTable, 'renewal')} ${onlyInTable === 1 ? 'is' : 'are'} known only from the table of boxes.`,
        ]
  return [
    `Rests on ${countWords(changes, 'renewal')} in the diary of the store. ${out}`,
    ...table,
    'In time is a renewal before which the last reading that tells stood within what the finds bear; late, one after a reading over it.',
  ]
}

export const dueRestLine = (running: boolean): string =>
  running
    ? 'Rests on the outlook of each box today: its gel, its leak as far as it is known, and its room. Overdue is a box that is as likely as not over its limit by now. A box that comes round more than once is counted once.'
    : 'Rests on the outlook of today, for boxes whose gel has not been renewed since the year ended; what was thought at the time is not kept.'

export const riskRestLine =
  'Hours are what loggers recorded above what lay in the box on that day bore; a strip over it counts the finds, but tells of no hours. Boxes without a logger may have been over unseen.'

export const movementsRestLine =
  'Rests on movements in the diary. Nobody recorded the air where finds were taken, so that all of that time counts as outside of their boxes.'

export const drierRestLine = (counted: number, leftOut: number): string =>
  `Rests on the outlook of ${countWords(counted, 'box', 'boxes')} today${leftOut === 0 ? '' : `; ${countWords(leftOut, 'box', 'boxes')} cannot be reckoned and ${leftOut === 1 ? 'is' : 'are'} left out`}. The ranges are added as if all boxes strayed the same way.`
