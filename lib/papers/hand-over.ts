import type { Urgency } from '../engine/plan.ts'
import type { Planned } from '../field/bag.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { codeLabel } from '../wording/fact.ts'
import { keepSentence } from '../wording/keep.ts'
import { findWords } from '../wording/plan-text.ts'

export const destinations = ['laboratory', 'store'] as const
export type Destination = (typeof destinations)[number]

/** What is handed over, find by find, and the two who sign for it. */
export interface HandOver {
  readonly to: Destination
  readonly stops: readonly { readonly find: string; readonly text: string; readonly who: string }[]
  readonly lines: readonly HandOverLine[]
  readonly pieces: number
}

export interface HandOverLine {
  readonly find: string
  readonly words: string
  readonly pieces: number
  readonly urgency: Urgency
  readonly keep: string
  readonly careful: string
  /** Laboratory: what is asked. Store: how it stands in the box and when it is next looked at. */
  readonly asked: readonly string[]
}

export function handOver(bag: readonly Planned[], to: Destination, knowledge: Knowledge): HandOver {
  const lines = bag.map((planned) => lineOf(planned, to, knowledge))
  return {
    to,
    stops: bag.flatMap(({ plan }) =>
      plan.cautions
        .filter(({ level }) => level === 'stop')
        .map(({ text, who }) => ({ find: plan.find, text, who })),
    ),
    lines,
    pieces: lines.reduce((sum, { pieces }) => sum + pieces, 0),
  }
}

function lineOf({ record, plan }: Planned, to: Destination, knowledge: Knowledge): HandOverLine {
  const requests = plan.requests.map(
    ({ method, question }) => `${knowledge.methods[method]?.label ?? method}: ${question}`,
  )
  const packing = plan.packing.map(({ code }) => codeLabel(code, knowledge))
  const { quantity, fragments } = record
  const pieces = typeof fragments === 'number' ? fragments : typeof quantity === 'number' ? quantity : 1
  return {
    find: record.find_number,
    words: findWords(record, knowledge),
    pieces,
    urgency: plan.urgency,
    keep: keepSentence(plan.storage),
    careful: plan.cautions.map(({ code }) => codeLabel(code, knowledge)).join('; '),
    asked:
      to === 'laboratory'
        ? requests
        : [packing.join('; '), `Look again on ${plan.inspection.nextOn}: ${plan.inspection.look}`],
  }
}
