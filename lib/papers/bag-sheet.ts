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
  /** What the finds assistant does, each thing once for all finds it is for; the other steps are for others. */
  readonly steps: readonly BagStep[]
  readonly labels: readonly Label[]
}

export interface BagLine {
  readonly find: string
  readonly words: string
  readonly urgency: Urgency
  readonly keep: string
  readonly packing: string
}

export interface BagStep {
  readonly text: string
  readonly by: string
  readonly finds: readonly string[]
}

export function bagSheet(bag: readonly Planned[], knowledge: Knowledge): BagSheet {
  return {
    contexts: [...new Set(bag.flatMap(({ record }) => record.context ?? []))],
    now: doNow(bag),
    lines: bag.map((planned) => lineOf(planned, knowledge)),
    steps: stepsOf(bag, knowledge),
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
  }
}

/** In the order of the rules, which is the order of every single plan. */
function stepsOf(bag: readonly Planned[], knowledge: Knowledge): readonly BagStep[] {
  const order = new Map(
    knowledge.decisions.flatMap(({ id, rules }) => rules.map((rule) => [`${id}/${rule.id}`, rule.order])),
  )
  const steps = new Map<string, { text: string; by: string; place: number; finds: string[] }>()
  for (const { plan } of bag) {
    for (const { rule, text, by, who } of plan.steps) {
      if (who !== 'assistant') continue
      const key = `${rule} ${text} ${by}`
      const known = steps.get(key)
      if (known === undefined) steps.set(key, { text, by, place: order.get(rule) ?? 0, finds: [plan.find] })
      else known.finds.push(plan.find)
    }
  }
  return [...steps.values()].toSorted((a, b) => a.place - b.place)
}
