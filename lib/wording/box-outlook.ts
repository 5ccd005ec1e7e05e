import type { IsoDate } from '../base/calendar.ts'
import type { Quantiles, Range } from '../base/range.ts'
import { numberWords } from './band.ts'
import { littleWords, misfitWords, renewalBecauseWords } from './box-learnt.ts'
import { renewalWords } from './box-renewal.ts'
import { dayWords } from './day.ts'
import { airChangesFromWords } from './store-place.ts'

interface Outlook {
  readonly airChangesPerDay: Range
  readonly airChangesFrom: keyof typeof airChangesFromWords
  readonly surroundings: { readonly from: 'logger' | 'written' | 'assumed' }
  readonly nowRhPercent: Quantiles
  readonly limitRhPercent: number | null
  readonly renewOn: { readonly early: IsoDate | null; readonly late: IsoDate | null } | null
  readonly departedSince: IsoDate | null
  readonly modelDoubtful: boolean
  readonly misfit?: keyof typeof misfitWords | null
  readonly littleBecause?: keyof typeof littleWords | null
  readonly renewalBecause?: Parameters<typeof renewalBecauseWords>[0] | null
}

/** What is likely of a box, in sentences, the most pressing first. */
export function outlookLines(outlook: Outlook, today: IsoDate): readonly string[] {
  const { nowRhPercent, limitRhPercent, renewOn, departedSince, modelDoubtful } = outlook
  const lines: string[] = []
  if (departedSince !== null)
    lines.push(`It has left its forecast since ${dayWords(departedSince)}: the lid is probably not seated.`)
  lines.push(
    `Thought to stand at ${numberWords(nowRhPercent.p10)} to ${numberWords(nowRhPercent.p90)} % today, eight times in ten.`,
  )
  if (limitRhPercent === null) lines.push('Nothing in it limits its humidity, so no gel falls due.')
  else {
    const due = renewOn === null ? 'cannot be told' : renewalWords(renewOn, today)
    lines.push(`Its limit is ${numberWords(limitRhPercent)} %. Renewal of the gel: ${due}.`)
  }
  if (modelDoubtful)
    lines.push(
      [
        'What was read strays from the reckoning more than it should. Take the ribbons with care, and look at the box.',
        ...(outlook.misfit ? [misfitWords[outlook.misfit]] : []),
      ].join(' '),
    )
  return lines
}

/** What the forecast rests on. */
export function restsOnLines(outlook: Outlook): readonly string[] {
  const { airChangesPerDay, airChangesFrom, surroundings, littleBecause, renewalBecause } = outlook
  const { low, high } = airChangesPerDay
  const renewal = renewalBecause ? renewalBecauseWords(renewalBecause) : null
  return [
    `Its air changes ${airWords(low)} to ${airWords(high)} times a day, ${airChangesFromWords[airChangesFrom]}.`,
    ...(littleBecause ? [littleWords[littleBecause]] : []),
    ...(surroundings.from === 'assumed'
      ? ['The air of its room is only supposed: a logger in the room would narrow the forecast.']
      : []),
    ...(renewal === null ? [] : [`Renewal of the gel: ${renewal}`]),
  ]
}

/** Air changes run over a wide range: two figures that count. */
export function airWords(perDay: number): string {
  return String(Number(perDay.toPrecision(2)))
}

/** Between which humidities a logger read for most of the time: `8 to 12 % for eight in ten of 3,100 h`. */
export function spreadWords(shares: readonly number[], hours: number): string {
  const until = (share: number) => {
    let sum = 0
    return shares.findIndex((one) => (sum += one) >= share - 1e-9)
  }
  const [low, high] = [until(0.1), until(0.9) + 1]
  return `${low} to ${high} % for eight in ten of ${Math.round(hours).toLocaleString('en-GB')} h`
}
