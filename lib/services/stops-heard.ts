import { assess } from '../engine/assess.ts'
import type { IsoDate } from '../base/calendar.ts'
import type { Caution } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { hazardsIn } from '../record/hazard-words.ts'
import { hazardsNoticed } from '../record/ids.ts'
import type { ConditionRecord } from '../record/record.ts'

const remembered = new WeakMap<Knowledge, Map<string, readonly Caution[]>>()

/**
 * The stops that hazards call for where no find is known: all else is unknown of it, so one is supposed of which nothing
 * is recorded but what was heard.
 */
export function stopsHeard(
  name: string,
  hazards: Iterable<string>,
  knowledge: Knowledge,
  asOf: IsoDate,
): readonly Caution[] {
  const heard = new Set(hazards)
  const noticed = hazardsNoticed.filter((id) => heard.has(id))
  if (noticed.length === 0) return []
  const memory = remembered.get(knowledge) ?? new Map<string, readonly Caution[]>()
  remembered.set(knowledge, memory)
  const key = `${asOf} ${noticed.join()}`
  const known = memory.get(key)
  if (known) return known
  const supposed: ConditionRecord = {
    find_number: name,
    hazards_noticed: noticed,
    components: [{ component: 'body', material: 'metal-unidentified' }],
  }
  const plan = assess(supposed, knowledge, { asOf, questions: false })
  const stops = plan.cautions.filter(({ level }) => level === 'stop')
  memory.set(key, stops)
  return stops
}

/** The stops that words call for, wherever they stand: a note on a seal, a remark of a round. */
export function stopsInWords(
  name: string,
  texts: readonly string[],
  knowledge: Knowledge,
  asOf: IsoDate,
): readonly Caution[] {
  const { textWords } = knowledge.vocabulary
  const heard = texts.flatMap((text) => hazardsIn(text, textWords).map(({ hazard }) => hazard))
  return stopsHeard(name, heard, knowledge, asOf)
}
