import type { IsoDate } from '../../lib/base/calendar.ts'
import { drawFrom } from './draw-from.ts'
import { raisedBy } from '../../lib/evidence/raised.ts'
import { allHold } from '../../lib/evidence/read-cells.ts'
import type { Matter } from '../../lib/knowledge/evidence.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { stated } from '../../lib/record/fact.ts'
import { factsOf } from '../../lib/record/facts.ts'
import { fields, type FieldName } from '../../lib/record/fields.ts'
import type { Component, ConditionRecord } from '../../lib/record/record.ts'
import { chance, type Chance } from '../demo/chance.ts'

const ferrous: readonly string[] = ['iron', 'cast-iron', 'steel']

/**
 * Finds drawn from the knowledge itself, each of which raises a matter: every fact that a question could ask of it is
 * known, and what a look would show is drawn from what the evidence base says of the explanation that is true.
 */
export interface DrawnFind {
  readonly record: ConditionRecord
  /** The field in which the matter was seen: what somebody who asks knows already. */
  readonly raisedBy: 'seen' | 'evidence'
}

const metals = ['iron', 'copper-alloy', 'lead', 'tin', 'silver', 'bronze', 'brass', 'pewter', 'gold']

const suits = ({ where }: Matter, material: string): boolean =>
  allHold(where, (fact) => (fact === 'material' ? stated(material) : undefined)) !== 'no'

/** Something of a kind that the matter is about: a metal where it may be one, else what the matter names itself. */
function materialFor(matter: Matter, knowledge: Knowledge, { pick }: Chance): string {
  const fitting = metals.filter((one) => suits(matter, one))
  const all = knowledge.vocabulary.fields['material']!.values.map(({ id }) => id)
  return pick(fitting.length > 0 ? fitting : all.filter((one) => suits(matter, one)))
}

/** One more thing that may be seen on such a material, now and then; otherwise nothing further. */
function alsoSeen(
  field: 'seen' | 'evidence',
  material: string,
  knowledge: Knowledge,
  { pick, happens }: Chance,
): readonly string[] {
  const may = Object.values(knowledge.matters)
    .filter((one) => one.where.length > 0 && suits(one, material))
    .flatMap(({ about }) => about.flatMap((one) => (one.field === field ? one.value : [])))
  return may.length > 0 && happens(0.4) ? [pick(may)] : []
}

/** A value for a field: for a list one or two of its words, or that none of them was there. */
function valueOf(field: FieldName, knowledge: Knowledge, { pick, happens }: Chance): unknown {
  const { values, seldom } = knowledge.vocabulary.fields[field]!
  const ids = values.map(({ id }) => id)
  if (fields[field].kind !== 'choices') return pick(ids)
  // Burial always has a ground; of hazards and what was done, most finds have none.
  if (field !== 'burial' && happens(seldom === true ? 0.95 : 0.5)) return ['none']
  return [...new Set([pick(ids), ...(happens(0.3) ? [pick(ids)] : [])])]
}

function lookedAt(record: ConditionRecord, knowledge: Knowledge, luck: Chance, asOf: IsoDate): Component {
  const facts = factsOf(record, knowledge.vocabulary.textWords, asOf)
  const answers = new Map<string, string>()
  for (const { matter, lookup } of raisedBy(facts, knowledge)) {
    const { states } = drawFrom(matter, knowledge, lookup, luck.next)
    for (const [at, { by, question, states: known }] of matter.groups.entries()) {
      // A question that two matters share has one answer: that of the first.
      if (by !== 'eye' || question === null || answers.has(question)) continue
      answers.set(question, known[states[at]!]?.id ?? 'none')
    }
  }
  return {
    ...record.components[0]!,
    looked: [...answers].map(([question, answer]) => `${question}:${answer}`),
  }
}

export function drawnFind(
  seed: number,
  knowledge: Knowledge,
  askable: readonly FieldName[],
  asOf: IsoDate,
): DrawnFind {
  const luck = chance(seed)
  const matter = luck.pick(Object.values(knowledge.matters))
  const about = luck.pick(matter.about)
  const material = materialFor(matter, knowledge, luck)
  const find: Record<string, unknown> = {}
  const part: Record<string, unknown> = {}
  for (const field of askable) {
    if (field === 'material') continue
    const value =
      field === 'seen' || field === 'evidence'
        ? [
            ...new Set([
              ...(field === about.field ? [about.value] : []),
              ...alsoSeen(field, material, knowledge, luck),
            ]),
          ]
        : valueOf(field, knowledge, luck)
    const holder = fields[field].level === 'find' ? find : part
    holder[field] = Array.isArray(value) && value.length === 0 ? ['none'] : value
  }
  const body = { component: 'body', material, ...part } as Component
  // Known from the start, as the material is: who holds the find holds the magnet too.
  const tests = [`body/magnet:${ferrous.includes(material) ? 'strong' : 'none'}`]
  const record = { find_number: `drawn-${seed}`, ...find, tests, components: [body] } as ConditionRecord
  return {
    record: { ...record, components: [lookedAt(record, knowledge, luck, asOf)] },
    raisedBy: about.field,
  }
}
