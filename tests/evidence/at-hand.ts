import { requestsOf } from '../../lib/evidence/requests.ts'
import { weigh, type Weighed } from '../../lib/evidence/weigh.ts'
import { factsOf } from '../../lib/record/facts.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { record, today } from '../record-at-hand.ts'

type Find = Parameters<typeof record>[0]
type Part = Parameters<typeof record>[1]

const factsFor = (find: Find, part: Part) =>
  factsOf(record(find, part), knowledge.vocabulary.textWords, today)

/** What the project's own evidence makes of one matter on one part. */
export function weighed(matter: string, find: Find, part: Part): Weighed {
  const all = weigh(factsFor(find, part), knowledge)
  const found = all.filter((one) => one.matter === matter)
  if (found.length !== 1) throw new Error(`${matter} is raised ${found.length} times`)
  return found[0]!
}

/** What a part of which one observation is written down may be. */
export const trace = (part: Part, find: Find = {}): Weighed => weighed(part.evidence![0]!, find, part)

/** The methods worth asking for, first first. */
export const methodsFor = (part: Part, find: Find = {}): readonly string[] =>
  requestsOf(factsFor(find, part), knowledge).map(({ method }) => method)

export const share = ({ rivals }: Weighed, id: string): number =>
  rivals.find((rival) => rival.id === id)!.probability

export const leader = ({ rivals }: Weighed): string => rivals[0]!.id

export const matter = (id: string) => knowledge.matters[id]!

/** A state of a group as written, to rest a claim on its sources. */
export function stateOf(of: string, group: string, state: string) {
  const found = matter(of)
    .groups.find(({ id }) => id === group)
    ?.states.find(({ id }) => id === state)
  if (!found) throw new Error(`${of} has no ${group}/${state}`)
  return found
}

export function rivalOf(of: string, id: string) {
  const found = matter(of).rivals.find((rival) => rival.id === id)
  if (!found) throw new Error(`${of} has no rival ${id}`)
  return found
}

export function failureOf(of: string, group: string, failure: string) {
  const found = matter(of)
    .groups.find(({ id }) => id === group)
    ?.failures.find(({ id }) => id === failure)
  if (!found) throw new Error(`${of} has no failure ${group}/${failure}`)
  return found
}
