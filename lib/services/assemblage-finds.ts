import type { IsoDate } from '../base/calendar.ts'
import { assessFacts } from '../engine/assess.ts'
import type { Plan } from '../engine/plan.ts'
import type { AssemblageFind } from '../evidence/assemblage-find.ts'
import { raisedBy, withIdentified, type Identified } from '../evidence/raised.ts'
import { stakesAtMost, stakesOf } from '../field/stakes.ts'
import { Supposed } from '../field/supposed.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { factsOf } from '../record/facts.ts'
import type { ConditionRecord } from '../record/record.ts'

/** A dating sample is noted by its name; a bare number may be a sample of anything. */
const datingSample = /luminescence|\bosl\b|\btl\b/i

/** What is costly to reckon of a record, kept for whoever asks again. */
export interface Reckoned {
  stopped: boolean | null
  readonly stakes: Map<string, number>
}

export const nothingReckoned = (): Reckoned => ({ stopped: null, stakes: new Map() })

interface Beside {
  readonly identified: readonly Identified[]
  readonly reckoned: Reckoned
}

/** A find as the assemblage plan sees it; null where nothing was seen that has more than one explanation. */
export function assemblageFind(
  id: string,
  record: ConditionRecord,
  knowledge: Knowledge,
  asOf: IsoDate,
  { identified, reckoned }: Beside = { identified: [], reckoned: nothingReckoned() },
): AssemblageFind | null {
  const facts = factsOf(record, knowledge.vocabulary.textWords, asOf)
  const raised = withIdentified(raisedBy(facts, knowledge), identified)
  if (raised.length === 0) return null
  const occasion = { asOf, questions: false } as const
  let made: Plan | null = null
  const plan = () => (made ??= assessFacts(record.find_number, facts, knowledge, occasion))
  let known: Supposed | null = null
  const supposed = () => (known ??= new Supposed(record, plan(), knowledge, occasion))
  return {
    id,
    facts,
    raised,
    stakesAtMost,
    stopped: (reckoned.stopped ??= plan().cautions.some(({ level }) => level === 'stop')),
    datingSampled: (record.samples ?? []).some((sample) => datingSample.test(sample)),
    stakes: (one) => {
      const key = `${one.part} ${one.matter.id}`
      const stakes = reckoned.stakes.get(key) ?? stakesOf(one, supposed())
      reckoned.stakes.set(key, stakes)
      return stakes
    },
  }
}
