import type { Urgency } from '../engine/plan.ts'
import type { Planned } from '../field/bag.ts'
import { doNow, type DoNow } from '../field/do-now.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { codeLabel } from '../wording/fact.ts'
import { keepSentence } from '../wording/keep.ts'
import { findWords } from '../wording/plan-text.ts'
import { labelOf, type Label } from './label.ts'

/** The sheet that goes with a bag: what to do now, a line a find, and the labels to cut out. */
export interface BagSheet {
  readonly contexts: readonly string[]
  readonly now: DoNow
  readonly lines: readonly BagLine[]
  readonly labels: readonly Label[]
}

export interface BagLine {
  readonly find: string
  readonly words: string
  readonly urgency: Urgency
  readonly keep: string
  readonly packing: string
  /** What the finds assistant does; the rest of the steps are for others. */
  readonly steps: readonly { readonly text: string; readonly by: string }[]
}

export function bagSheet(bag: readonly Planned[], knowledge: Knowledge): BagSheet {
  return {
    contexts: [...new Set(bag.flatMap(({ record }) => record.context ?? []))],
    now: doNow(bag),
    lines: bag.map((planned) => lineOf(planned, knowledge)),
    labels: bag.map((planned) => labelOf(planned, knowledge)),
  }
}

function lineOf({ record, plan }: Planned, knowledge: Knowledge): BagLine {
  return {
    find: record.find_number,
    words: findWords(record, knowledge),
    urgency: plan.urgency,
    keep: keepSentence(plan.storage),
    packing: plan.packing.map(({ code }) => codeLabel(code, knowledge)).join('; '),
    steps: plan.steps.filter(({ who }) => who === 'assistant').map(({ text, by }) => ({ text, by })),
  }
}
