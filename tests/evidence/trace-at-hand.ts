import { requestsOf } from '../../lib/evidence/requests.ts'
import { weigh, type Weighed } from '../../lib/evidence/weigh.ts'
import type { Failure, Group, Rival, State } from '../../lib/knowledge/evidence.ts'
import { factsOf } from '../../lib/record/facts.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { record, today } from '../record-at-hand.ts'

type Part = Parameters<typeof record>[1]
type Find = Omit<Partial<ConditionRecord>, 'components'>

const factsFor = (find: Find, part: Part) =>
  factsOf(record(find, part), knowledge.vocabulary.textWords, today)

/** What the trace that a part shows may be, as the project's own evidence has it. */
export function trace(part: Part, find: Find = {}): Weighed {
  const about = part.evidence![0]!
  const found = weigh(factsFor(find, part), knowledge).find(({ matter }) => matter === about)
  if (!found) throw new Error(`${about} raises no matter of that name`)
  return found
}

export const leader = ({ rivals }: Weighed): string => rivals[0]!.id

export const chance = ({ rivals }: Weighed, id: string): number =>
  rivals.find((one) => one.id === id)!.probability

/** The methods worth asking for, first first. */
export const methodsFor = (part: Part, find: Find = {}): readonly string[] =>
  requestsOf(factsFor(find, part), knowledge).map(({ method }) => method)

function named<One extends { readonly id: string }>(list: readonly One[], id: string): One {
  const found = list.find((one) => one.id === id)
  if (!found) throw new Error(`No ${id} among ${list.map((one) => one.id).join(', ')}`)
  return found
}

const groupOf = (matter: string, group: string): Group => named(knowledge.matters[matter]!.groups, group)

/** Entries of the evidence base, for a check to rest on their sources. */
export const stateOf = (matter: string, group: string, state: string): State =>
  named(groupOf(matter, group).states, state)
export const failureOf = (matter: string, group: string, failure: string): Failure =>
  named(groupOf(matter, group).failures, failure)
export const rivalOf = (matter: string, rival: string): Rival =>
  named(knowledge.matters[matter]!.rivals, rival)
