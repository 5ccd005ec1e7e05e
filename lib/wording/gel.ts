import type { Quantiles, Range } from '../base/range.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { numberWords } from './band.ts'
import { kilogramWords } from './box-gel.ts'
import { shortCitation } from './citation.ts'
import { countWords } from './list.ts'
import { knownWords } from './marks.ts'
import { wrap } from './wrap.ts'

interface Source {
  readonly work: string
  readonly place: string | null
  readonly known: Knowledge['works'][string]['known']
}

type Spread = Quantiles & { readonly nominal: number }

/** What was reckoned of a box and its gel. `Infinity`: never, or no amount of gel. */
export interface GelToTell {
  readonly asked: {
    readonly volumeL: number
    readonly temperatureC: number
    readonly limitRhPercent: number
    readonly season: { readonly swingRhPercent: number; readonly dampestInDays: number } | null
    readonly gelKg: number | null
    readonly days: number | null
  }
  readonly airChangesPerDay: Range
  readonly wallAirChangesPerDay: number
  readonly outsideRhPercent: Range
  readonly startRhPercent: Range
  readonly reservoir: { readonly gPerKgPercent: Range; readonly source: Source | null }
  readonly state: 'reached' | 'never-reached' | 'already-over'
  readonly timeConstantDays: number | null
  readonly daysToLimit: Spread | null
  readonly gelKg: Spread | null
  readonly byIsotherm: {
    readonly source: Source
    readonly reservoirGPerKgPercent: number
    readonly daysToLimit: number
  } | null
  readonly cautions: readonly ('hysteresis' | 'beyond-straight' | 'leaky' | 'no-room')[]
}

const row = (name: string, text: string) => wrap(`  ${name.padEnd(22)}`, text)

/** Days as a person counts them: whole, and beyond two years roughly in years as well. */
export function spanWords(days: number): string {
  const whole = Math.round(days)
  if (days < 1) return 'less than a day'
  const years = days / 365.25
  return years < 2 ? countWords(whole, 'day') : `${countWords(whole, 'day')} (${numberWords(years)} years)`
}

const never = 'the box never gets there'

function daysWords({ p10, p90 }: Quantiles): string {
  if (p10 === Infinity) return `${never}, however one reckons within what is known`
  if (p90 === Infinity) return `likely not before ${spanWords(p10)}, and perhaps never`
  if (p90 === 0) return 'at once: it is over already'
  if (p10 === 0) return `perhaps at once, likely within ${spanWords(p90)}`
  return `likely between ${spanWords(p10)} and ${spanWords(p90)}`
}

function limitRows(
  { asked, daysToLimit, timeConstantDays, state, byIsotherm }: GelToTell,
  cite: Cite,
): string[] {
  const limit = `${numberWords(asked.limitRhPercent)} %`
  if (state === 'already-over')
    return [row(`At ${limit}`, 'it is over the limit already: renew the gel, and look again when it is dry.')]
  if (daysToLimit === null) return []
  const rows = [row(`At ${limit}`, daysWords(daysToLimit))]
  if (state === 'never-reached')
    rows.push(
      row('By the figures given', `${never}: the room is no damper than the limit, or nothing gets in.`),
    )
  else rows.push(row('By the figures given', spanWords(daysToLimit.nominal)))
  if (timeConstantDays !== null && timeConstantDays !== Infinity)
    rows.push(
      row(
        'Time constant',
        `${spanWords(timeConstantDays)}: by then it has gone two thirds of the way to the room`,
      ),
    )
  if (byIsotherm !== null)
    rows.push(
      row(
        'With a bent isotherm',
        `${spanWords(byIsotherm.daysToLimit)}, at ${numberWords(byIsotherm.reservoirGPerKgPercent)} g/(kg·%) on the way; ${cite(byIsotherm.source)}`,
      ),
    )
  return rows
}

function gelRows({ asked, gelKg }: GelToTell): string[] {
  if (gelKg === null || asked.days === null) return []
  const name = `For ${countWords(asked.days, 'day')}`
  if (gelKg.nominal === Infinity) return [row(name, 'no amount of gel does it: it begins over its limit.')]
  if (gelKg.p90 === 0)
    return [row(name, 'no gel is needed: the room is no damper than the limit, or nothing gets in.')]
  const enough =
    gelKg.p90 === Infinity
      ? 'none is sure to be enough'
      : `${kilogramWords(gelKg.p90)} to hold in nine cases of ten`
  return [row(name, `${kilogramWords(gelKg.nominal)} by the figures given, ${enough}`)]
}

const rangeWords = ({ low, high }: Range, unit: string) =>
  low === high ? `${numberWords2(low)} ${unit}` : `${numberWords2(low)} to ${numberWords2(high)} ${unit}`

/** Small numbers keep two digits that count. */
const numberWords2 = (value: number) => String(Number(value.toPrecision(value < 1 ? 2 : 3)))

function restsOn({ asked, ...told }: GelToTell, cite: Cite): string[] {
  const { reservoir } = told
  const from = reservoir.source === null ? 'as given' : cite(reservoir.source)
  const walls =
    told.wallAirChangesPerDay === 0
      ? ''
      : `, and its walls let in as much as ${numberWords2(told.wallAirChangesPerDay)} changes a day would`
  const season =
    asked.season === null
      ? ''
      : `, and ${numberWords(asked.season.swingRhPercent)} points up and down with the year, dampest in ${countWords(asked.season.dampestInDays, 'day')}`
  return [
    'What this rests on; each lies within its range in eight cases of ten',
    row('Air of the box', `renewed ${rangeWords(told.airChangesPerDay, 'times a day')}${walls}`),
    row(
      'The gel takes up',
      `${rangeWords(reservoir.gPerKgPercent, 'g for each kilogram and percent')}; ${from}`,
    ),
    row('The room', `${rangeWords(told.outsideRhPercent, '%')}${season}`),
    row('The box begins at', rangeWords(told.startRhPercent, '%')),
  ]
}

/** What to beware of in a reckoning, by code. */
export const gelCautionWords: Readonly<Record<GelToTell['cautions'][number], string>> = {
  hysteresis:
    'In this reach gel that has once been damp holds more than gel that was dry; what it takes up depends on its past. Trust the box’s own readings there.',
  'beyond-straight':
    'The limit lies where the gel’s reservoir was not read off: less is taken up there, and the box may be over sooner.',
  leaky: 'A box that lets in so much air eats gel. A tighter lid buys more than gel does.',
  'no-room': 'So much gel has no room in this box. It must be tighter, or renewed more often.',
}

type Cite = (source: Source) => string

function citing(knowledge: Pick<Knowledge, 'works'>): Cite {
  return ({ work, place, known }) => {
    const full = knowledge.works[work]
    const name = full === undefined ? work : shortCitation(full)
    const how = known === 'read' || known === 'common-practice' ? '' : ` (${knownWords[known].label})`
    return `${[name, place].filter((part) => part !== null).join(', ')}${how}`
  }
}

function boxWords({ volumeL, temperatureC, gelKg }: GelToTell['asked']): string {
  const gel = gelKg === null ? '' : ` with ${kilogramWords(gelKg)} of gel`
  return `A closed box of ${numberWords2(volumeL)} l${gel} at ${numberWords(temperatureC)} °C`
}

/** How long gel lasts, or how much is needed, in plain words. */
export function gelText(told: GelToTell, knowledge: Pick<Knowledge, 'works'>): string {
  const cite = citing(knowledge)
  const parts = [
    [boxWords(told.asked), ...limitRows(told, cite), ...gelRows(told)],
    restsOn(told, cite),
    told.cautions.map((caution) => wrap('! ', gelCautionWords[caution])),
  ]
  return parts
    .filter((part) => part.length > 0)
    .map((part) => part.join('\n'))
    .join('\n\n')
}
