import { numberWords } from './band.ts'
import { instantDayWords } from './chart-time.ts'
import { countWords } from './list.ts'

interface Excursion {
  readonly fromMs: number
  readonly limitRhPercent: number
  readonly side: 'above' | 'below'
  readonly hours: number
  readonly worstRhPercent: number
  readonly findIds: readonly string[]
}

/** An excursion told in facts: `41 h above 15 %, worst 27 %, from 14 March 2026; 3 finds at risk`. */
export function excursionWords(
  { fromMs, limitRhPercent, side, hours, worstRhPercent, findIds }: Excursion,
  zone: string,
): string {
  const risk = findIds.length === 0 ? 'no find lay in it' : `${countWords(findIds.length, 'find')} at risk`
  return `${hoursWords(hours)} ${side} ${numberWords(limitRhPercent)} %, worst ${numberWords(worstRhPercent)} %, from ${instantDayWords(fromMs, zone)}; ${risk}`
}

/** Hours while they can be pictured, then days. */
export function hoursWords(hours: number): string {
  if (hours < 1) return `${Math.max(1, Math.round(hours * 60))} min`
  return hours < 96 ? `${Math.round(hours)} h` : countWords(Math.round(hours / 24), 'day')
}

interface Summed extends Excursion {
  readonly doseRhPercentHours: number
}

/** All of one side together: how often, how long, the worst. */
export function excursionsSummed(all: readonly Summed[]): string {
  const hours = all.reduce((sum, one) => sum + one.hours, 0)
  const first = all[0]
  if (first === undefined) return 'It stayed within what its finds bear for all the time that was read.'
  const worst = all.reduce(
    (beyond, one) => (one.side === 'above' ? Math.max(beyond, one.worstRhPercent) : beyond),
    0,
  )
  const finds = new Set(all.flatMap(({ findIds }) => findIds)).size
  const said = `${hoursWords(hours)} outside, in ${countWords(all.length, 'run')}`
  return `${said}${worst > 0 ? `, worst ${numberWords(worst)} %` : ''}; ${countWords(finds, 'find')} at risk.`
}
