import type { IsoDate } from '../base/calendar.ts'
import { cellHolds } from '../knowledge/cell-holds.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { factsOf } from '../record/facts.ts'
import type { ConditionRecord } from '../record/record.ts'
import type { RecordFacts } from '../record/fact.ts'
import { cautionsOf, inspectionOf, linesOf, objectionsOf, requestsOf, stepsOf } from './advice.ts'
import { mergeByCode } from './fold.ts'
import { lookNext } from './look-next.ts'
import type { Contacts, Plan, Urgency } from './plan.ts'
import { lookupIn, reason, type Reasoning } from './reasoning.ts'
import { saidOf, storageOf, valueOf } from './storage.ts'

export interface Occasion {
  /** The day it is planned for; the engine has no clock. */
  readonly asOf: IsoDate
  readonly contacts?: Contacts
  /** False leaves `lookNext` empty: a queue of thousands needs no questions. */
  readonly questions?: boolean
}

function notCoveredBy(reasoning: Reasoning, knowledge: Knowledge): Plan['notCovered'] {
  const left = knowledge.decisions.flatMap((decision) =>
    decision.notCovered.filter(({ when, quiet }) => {
      if (quiet) return false
      const parts = decision.each === 'find' ? [null] : reasoning.facts.components.map((_, part) => part)
      return parts.some((part) => {
        const lookup = lookupIn(reasoning, part, true)
        return when.every((cell) => cellHolds(cell, lookup(cell.fact)) === 'yes')
      })
    }),
  )
  return left.map(({ what, because }) => ({ what, because }))
}

function planOf(find: string, reasoning: Reasoning, knowledge: Knowledge, occasion: Occasion): Plan {
  const contacts = occasion.contacts ?? {}
  const cautions = cautionsOf(reasoning, knowledge, contacts)
  const stopped = cautions.some(({ level }) => level === 'stop')
  const urgency = valueOf(reasoning, 'urgency')
  const storage = storageOf(reasoning, stopped)
  return {
    find,
    knowledge: knowledge.hash,
    asOf: occasion.asOf,
    urgency: (urgency.taken ?? 'routine') as Urgency,
    urgencyBasis: urgency.basis,
    storage,
    steps: stepsOf(reasoning, occasion.asOf, stopped),
    inspection: inspectionOf(reasoning, occasion.asOf, storage.interim),
    handling: linesOf(reasoning, 'handling'),
    packing: linesOf(reasoning, 'packing'),
    cautions,
    objections: objectionsOf(reasoning),
    interpretations: [],
    requests: requestsOf(reasoning, knowledge, stopped),
    lookNext: occasion.questions === false ? [] : lookNext(reasoning, knowledge),
    referrals: mergeByCode(saidOf(reasoning, 'referrals')).map(({ statement }) => statement),
    selection: mergeByCode(saidOf(reasoning, 'selection')).map(({ statement }) => statement),
    notCovered: notCoveredBy(reasoning, knowledge),
  }
}

/** The plan for facts already read from a record: what properties and questions are asked of. */
export function assessFacts(
  find: string,
  facts: RecordFacts,
  knowledge: Knowledge,
  occasion: Occasion,
): Plan {
  return planOf(find, reason(facts, knowledge), knowledge, occasion)
}

/** The plan for one condition record. Same record, knowledge, day and contacts give the same plan. */
export function assess(record: ConditionRecord, knowledge: Knowledge, occasion: Occasion): Plan {
  const facts = factsOf(record, knowledge.vocabulary.textWords, occasion.asOf)
  return assessFacts(record.find_number, facts, knowledge, occasion)
}
