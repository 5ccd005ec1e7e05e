import type { IsoDate } from '../../lib/base/calendar.ts'
import { raisedBy } from '../../lib/evidence/raised.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { factsOf } from '../../lib/record/facts.ts'
import type { FieldName } from '../../lib/record/fields.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { askableFields } from './guided-facts.ts'
import { drawnFind } from './guided-find.ts'
import { guide, type Guided } from './guided-run.ts'

/** Many finds guided, and what it took. */
export interface GuidedFigures {
  readonly finds: number
  /** Facts in the full record, on average. */
  readonly full: number
  /** Share of the facts needed until the plan was that of the full record; all of them where it never was. */
  readonly needed: { readonly mean: number; readonly median: number }
  readonly reached: number
  /** Share of the facts in hand when nothing more was asked, and facts given after the plan stood. */
  readonly stopped: number
  readonly overshoot: number
  /** Questions a find that its full record has no answer to. */
  readonly inVain: number
  /** What still differed at the end, by how many finds. */
  readonly differs: Readonly<Record<string, number>>
  readonly milliseconds: { readonly median: number; readonly p95: number; readonly worst: number }
}

const mean = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0) / numbers.length

const at = (numbers: readonly number[], share: number) =>
  numbers.toSorted((a, b) => a - b)[Math.min(numbers.length - 1, Math.floor(numbers.length * share))]!

export function figuresOf(all: readonly Guided[]): GuidedFigures {
  const needed = all.map(({ reachedAt, full }) => (reachedAt ?? full) / full)
  const reached = all.flatMap(({ reachedAt, stoppedAt }) =>
    reachedAt === null ? [] : [{ reachedAt, stoppedAt }],
  )
  const milliseconds = all.flatMap((one) => one.milliseconds)
  const differs: Record<string, number> = {}
  for (const part of all.flatMap((one) => one.differs)) differs[part] = (differs[part] ?? 0) + 1
  return {
    finds: all.length,
    full: mean(all.map(({ full }) => full)),
    needed: { mean: mean(needed), median: at(needed, 0.5) },
    reached: reached.length / all.length,
    stopped: mean(all.map(({ stoppedAt, full }) => stoppedAt / full)),
    overshoot: mean(reached.map(({ reachedAt, stoppedAt }) => stoppedAt - reachedAt)),
    inVain: mean(all.map(({ inVain }) => inVain)),
    differs,
    milliseconds: { median: at(milliseconds, 0.5), p95: at(milliseconds, 0.95), worst: at(milliseconds, 1) },
  }
}

/** Finds drawn from the knowledge: at hand are the material and the list in which the matter was ticked. */
export function guideDrawn(finds: number, knowledge: Knowledge, asOf: IsoDate): readonly Guided[] {
  const askable = askableFields(knowledge)
  return Array.from({ length: finds }, (_, number) => {
    const { record, raisedBy: list } = drawnFind(number + 1, knowledge, askable, asOf)
    return guide(record, ['material', list], askable, knowledge, asOf)
  })
}

/** The lists in which something was ticked that has to be explained. */
function raisingLists(record: ConditionRecord, knowledge: Knowledge, asOf: IsoDate): readonly FieldName[] {
  const raised = raisedBy(factsOf(record, knowledge.vocabulary.textWords, asOf), knowledge)
  return (['seen', 'evidence'] as const).filter((field) =>
    raised.some(({ matter, about }) =>
      matter.about.some((one) => one.field === field && one.value === about),
    ),
  )
}

/** Recorded finds: at hand is what no question can ask for, the materials, and the lists in which something was ticked. */
export function guideRecorded(
  records: readonly ConditionRecord[],
  knowledge: Knowledge,
  asOf: IsoDate,
): readonly Guided[] {
  const askable = askableFields(knowledge)
  return records.map((record) =>
    guide(record, ['material', ...raisingLists(record, knowledge, asOf)], askable, knowledge, asOf),
  )
}
