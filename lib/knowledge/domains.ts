import * as ids from '../record/ids.ts'
import { fields, type Field } from '../record/fields.ts'
import { looks, type Looks } from '../record/looks.ts'
import type { Decision } from './knowledge.ts'

/** What a fact can be, as rules may ask for it. */
export type Domain = ValueDomain | NumberDomain

export interface ValueDomain {
  readonly kind: 'values'
  readonly each: Field['level']
  readonly values: readonly string[]
  /** Several may hold at once. */
  readonly many: boolean
  /** Other words than `values` may be recorded. */
  readonly open: boolean
  /** The answer of a decision: nobody can record it as unknown. */
  readonly answered: boolean
}

export interface NumberDomain {
  readonly kind: 'number'
  readonly each: Field['level']
  readonly from: number
  readonly to: number
  readonly whole: boolean
}

type Manner = Partial<Pick<ValueDomain, 'many' | 'open' | 'answered'>>

const values = (each: Field['level'], list: readonly string[], manner: Manner = {}): Domain => ({
  kind: 'values',
  each,
  values: list,
  many: false,
  open: false,
  answered: false,
  ...manner,
})

const number = (each: Field['level'], from: number, to: number, whole = false): Domain => ({
  kind: 'number',
  each,
  from,
  to,
  whole,
})

/** What the record's facts say beside its fields: results of tests, days counted, whether there are several. */
const derivedDomains: Readonly<Record<string, Domain>> = {
  silver_nitrate: values('component', ids.silverNitrate),
  magnet: values('component', ids.magnet),
  radiograph: values('component', ids.radiograph, { many: true }),
  oxygen_uptake: values('component', ids.oxygenUptake),
  xrf: values('component', [], { many: true, open: true }),
  xrd: values('component', [], { many: true, open: true }),
  raman: values('component', [], { many: true, open: true }),
  residual_chloride_ppm: number('component', 0, 1_000_000),
  bath_chloride_mg_l: number('component', 0, 1_000_000),
  needed_within_days: number('find', -100_000, 100_000, true),
  days_since_coating: number('find', 0, 100_000, true),
  parts: values('find', ['one', 'several'], { answered: true }),
  bulk: values('find', ids.yesNo),
}

function fieldDomain(field: Field): Domain | null {
  switch (field.kind) {
    case 'choice':
      return values(field.level, field.ids ?? [])
    case 'choices':
      return values(field.level, field.ids ?? [], { many: true })
    case 'open-choice':
      return values(field.level, field.ids ?? [], { open: true })
    case 'number':
    case 'whole': {
      const [from, to] = field.range ?? [-Infinity, Infinity]
      return number(field.level, from, to, field.kind === 'whole')
    }
    default:
      return null
  }
}

/** The fact that holds the answer to a question. */
export const lookedFact = (question: string): string => `looked.${question}`
export const isLookedFact = (fact: string): boolean => fact.startsWith('looked.')

/** A fact for each question, with its answers and `none`. */
export function lookedDomains(questions: Looks): Readonly<Record<string, Domain>> {
  return Object.fromEntries(
    Object.entries(questions).map(([question, answers]) => [
      lookedFact(question),
      values('component', [...answers, 'none']),
    ]),
  )
}

/** Every fact that a record can state and a rule may read. */
export const recordDomains: Readonly<Record<string, Domain>> = {
  ...Object.fromEntries(
    Object.entries(fields).flatMap(([name, field]) => {
      const domain = fieldDomain(field)
      return domain === null ? [] : [[name, domain]]
    }),
  ),
  ...derivedDomains,
  ...lookedDomains(looks),
}

/** A decision as a fact of later decisions, or null where it gives nothing that a cell could name. */
export function decisionDomain(decision: Pick<Decision, 'each' | 'policy' | 'answers'>): Domain | null {
  if (decision.answers.length === 0) return null
  return values(decision.each, decision.answers, { many: decision.policy === 'collect', answered: true })
}
