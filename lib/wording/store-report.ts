import type { IsoDate } from '../base/calendar.ts'
import type { Quantiles } from '../base/range.ts'
import { numberWords } from './band.ts'
import { kilogramWords } from './box-gel.ts'
import { hoursWords } from './box-excursion.ts'
import { dayWords } from './day.ts'
import { countWords, listWords } from './list.ts'
import { boughtWords, upkeepWords } from './what-if.ts'

/** How a box stood at its newest reading: as a heading of a column, and told of a number of boxes. */
export const boxStateWords = {
  'in-band': { label: 'In band', one: 'stood in band', many: 'stood in band' },
  over: { label: 'Over', one: 'stood over what its finds bear', many: 'stood over what their finds bear' },
  'cannot-tell': {
    label: 'Cannot tell',
    one: 'was read so near to its limit that it cannot be told',
    many: 'were read so near to their limit that it cannot be told',
  },
  'renewed-unread': {
    label: 'Renewed, not read since',
    one: 'has new gel and was not read since',
    many: 'have new gel and were not read since',
  },
  'not-read': { label: 'Not read', one: 'was not read', many: 'were not read' },
  'no-limit': {
    label: 'No limit',
    one: 'holds nothing that asks for a humidity',
    many: 'hold nothing that asks for a humidity',
  },
} as const

export type StateTold = keyof typeof boxStateWords

/** The order in which states are told and drawn. */
export const statesTold = [
  'in-band',
  'over',
  'cannot-tell',
  'renewed-unread',
  'not-read',
  'no-limit',
] as const satisfies readonly StateTold[]

export const renewalHowWords = {
  'in-time': 'in time',
  late: 'late',
  unseen: 'nobody had looked',
} as const

export const dueWords = { overdue: 'overdue', likely: 'likely', perhaps: 'perhaps' } as const

interface Risk {
  readonly hoursAbove: number
  readonly worstRhPercent: number | null
}

interface Report {
  readonly from: IsoDate
  readonly to: IsoDate
  readonly ahead: IsoDate
  readonly boxes: number
  readonly finds: number
  readonly states: Readonly<Record<StateTold, readonly string[]>>
  readonly hangsOnStrip: readonly string[]
  readonly gel: {
    readonly putInKg: number
    readonly takenOutKg: number
    readonly changes: number
    readonly takenOutUnwritten: number
    readonly onlyInTable: number
  }
  readonly renewals: {
    readonly done: readonly { readonly how: keyof typeof renewalHowWords }[]
    readonly due: readonly { readonly when: keyof typeof dueWords }[]
    readonly untold: readonly string[]
  }
  readonly atRisk: readonly Risk[]
  readonly findsAtRisk: number
  readonly restsOn: { readonly strips: number; readonly loggerDays: number; readonly boxesRead: number }
}

const boxes = (count: number) => countWords(count, 'box', 'boxes')

/** How the boxes stood, in one sentence. */
export function statesSentence({ boxes: all, states }: Report): string {
  const told = statesTold
    .filter((state) => states[state].length > 0)
    .map((state) => {
      const count = states[state].length
      return `${count} ${count === 1 ? boxStateWords[state].one : boxStateWords[state].many}`
    })
  return `Of ${boxes(all)}, tubs apart, ${listWords(told)}.`
}

/** Kilograms used, and how the renewals were done. */
export function gelSentence({ gel, renewals }: Report): string {
  if (gel.changes === 0) return 'No gel was renewed.'
  const ways = (['in-time', 'late', 'unseen'] as const).flatMap((how) => {
    const count = renewals.done.filter((one) => one.how === how).length
    if (count === 0) return []
    return how === 'unseen'
      ? [`${count} of ${count === 1 ? 'a box' : 'boxes'} that nobody had read so that it could be told`]
      : [`${count} ${renewalHowWords[how]}`]
  })
  return `${kilogramWords(gel.putInKg)} of dry gel went in, in ${countWords(gel.changes, 'renewal')}: ${listWords(ways)}.`
}

/** What is overdue, and what falls due ahead. */
export function dueSentence({ renewals, to, ahead, boxes: all, states }: Report): string {
  const count = (when: keyof typeof dueWords) => renewals.due.filter((one) => one.when === when).length
  const [overdue, likely, perhaps] = [count('overdue'), count('likely'), count('perhaps')]
  const limited = all - states['no-limit'].length
  const told = limited - renewals.untold.length
  if (told === 0) return limited === 0 ? 'No box asks for gel.' : 'When gel falls due can be told of no box.'
  const late = `${overdue === 0 ? 'none' : overdue} ${overdue > 1 ? 'were' : 'was'} overdue on ${dayWords(to)}`
  const next = `${likely === 0 ? 'none' : likely} ${likely > 1 ? 'are' : 'is'} likely to fall due by ${dayWords(ahead)}${perhaps === 0 ? '' : `, ${perhaps} more perhaps`}`
  const untold = told === limited ? '' : ` Of ${boxes(limited - told)} more it cannot be told.`
  return `Of ${boxes(told)} whose renewal can be told, ${late} and ${next}.${untold}`
}

/** Finds that stood over what they bear, and how badly. */
export function riskSentence({ atRisk, findsAtRisk }: Report): string {
  if (atRisk.length === 0) return 'No reading was over what the finds bear.'
  const hours = atRisk.reduce((sum, one) => sum + one.hoursAbove, 0)
  const worst = atRisk.reduce<number | null>(
    (most, { worstRhPercent }) => (worstRhPercent === null ? most : Math.max(most ?? 0, worstRhPercent)),
    null,
  )
  const logged = hours === 0 ? '' : `; loggers recorded ${hoursWords(hours)} of it`
  const reached = worst === null ? '' : `; the worst was ${numberWords(worst)} %`
  return `${countWords(findsAtRisk, 'find')} in ${boxes(atRisk.length)} lay at some time in air they do not bear${logged}${reached}.`
}

interface Drier {
  readonly byPercent: number
  readonly counted: number
  readonly whole: {
    readonly before: Upkeep
    readonly after: Upkeep
    readonly saved: Upkeep
  }
}
interface Upkeep {
  readonly renewalsPerYear: Quantiles
  readonly kgPerYear: Quantiles
}

/** What drier rooms would save. */
export function drierSentence({ byPercent, counted, whole }: Drier): string {
  if (counted === 0) return 'What a drier room would save cannot be told: no box can be reckoned.'
  return `With the air of every room ${byPercent} points drier: ${lower(boughtWords(whole))}`
}

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1)

/** What the boxes ask for in a year as they are. */
export function askedForSentence({ counted, whole }: Drier): string {
  if (counted === 0) return ''
  return `To keep ${countWords(counted, 'box', 'boxes')} within what their finds bear: ${lower(upkeepWords(whole.before, counted))}`
}

/** Gel that lies ready today, and that waits for the oven. */
export function stockSentence(gelDryKg: number | null, gelSpentKg: number | null): string {
  const dry = gelDryKg === null ? [] : [`${kilogramWords(gelDryKg)} of dry gel`]
  const spent = gelSpentKg === null ? [] : [`${kilogramWords(gelSpentKg)} waiting to be dried`]
  return dry.length + spent.length === 0 ? '' : `In stock today: ${listWords([...dry, ...spent])}.`
}
