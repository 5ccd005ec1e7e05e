import type { IsoDate } from '../base/calendar.ts'
import type { Quantiles } from '../base/range.ts'
import type { Band } from '../engine/plan.ts'
import { bandWords, numberWords } from './band.ts'
import { noOutlookWords } from './box-gel.ts'
import { renewalWords } from './box-renewal.ts'
import { capital } from './capital.ts'
import { dayWords } from './day.ts'
import { countWords } from './list.ts'
import { seenWords } from './store-wrong.ts'
import { wrap } from './wrap.ts'

interface BoxSaid {
  readonly box: string
  readonly room: string
  readonly shelf: string
  readonly finds: number
  readonly findsAtRisk: number
  readonly needs: Band | null
  readonly disagree: boolean
  readonly held: Quantiles | null
  readonly noOutlook: keyof typeof noOutlookWords | null
  readonly renewOn: { readonly early: IsoDate | null; readonly late: IsoDate | null } | null
  readonly departedSince: IsoDate | null
  readonly newest: Parameters<typeof seenWords>[0] | null
  readonly stops: readonly string[]
}

/** One box in a few lines of plain text, what presses first. */
export function boxText(said: BoxSaid, today: IsoDate): string {
  const place = [said.room, said.shelf].filter((text) => text !== '').join(', ')
  const needs = said.disagree
    ? 'its finds need humidities that do not meet'
    : said.needs === null
      ? 'nothing in it asks for a humidity'
      : `needs ${bandWords(said.needs)}`
  const lines = [
    ...said.stops.map((text) => `STOP: ${text}`),
    ...(said.departedSince === null
      ? []
      : [`Lid probably not seated since ${dayWords(said.departedSince)}: it has left its forecast.`]),
    `${capital(countWords(said.finds, 'find'))}; ${needs}${said.findsAtRisk === 0 ? '' : `; ${countWords(said.findsAtRisk, 'find')} perhaps too damp`}.`,
    said.held === null
      ? said.noOutlook === null
        ? ''
        : noOutlookWords[said.noOutlook]
      : `Likely ${numberWords(said.held.p10)} to ${numberWords(said.held.p90)} % today.`,
    said.renewOn === null ? '' : `Renewal of the gel: ${renewalWords(said.renewOn, today)}.`,
    said.newest === null ? 'Never read.' : `Last seen: ${seenWords(said.newest)}.`,
  ]
  const shown = lines.filter((text) => text !== '').map((text) => wrap('  ', text))
  return [`${said.box}${place === '' ? '' : ` (${place})`}`, ...shown].join('\n')
}
