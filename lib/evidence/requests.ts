import type { Harm, Method, SourceRef } from '../knowledge/knowledge.ts'
import { methodFacts } from '../knowledge/method-facts.ts'
import type { RecordFacts } from '../record/fact.ts'
import type { EvidenceBase } from './base.ts'
import { floorBits, gainBits } from './gain.ts'
import { isIdle, meaningsOf, type Meaning } from './meanings.ts'
import { askable, isOpen } from './open-matters.ts'
import { raisedBy, type Raised } from './raised.ts'
import { ranked } from './request-order.ts'

/** A method worth asking for on one part: what it would tell, of what, at which cost. */
export interface EvidenceRequest {
  readonly method: string
  readonly part: number
  readonly component: string
  /** Over all matters of the part that it can tell something of. */
  readonly gainBits: number
  readonly matters: readonly RequestMatter[]
  readonly sampling: boolean
  readonly harm: Harm
  /** Needs the owner's written leave. */
  readonly leave: boolean
  readonly who: string
  readonly minutes: Method['minutes']
  /** Something that the method found on this part is on record: it may do to look at that again before asking anew. */
  readonly onRecord?: boolean
  /** From 1, over all of the find. */
  readonly rank: number
  /** A sample that would tell much more than any look: it stands this far up only if a conservator agrees. */
  readonly ifConservatorAgrees: boolean
  /** Rays would spoil the dating that is wanted: only after the dating sample is taken. */
  readonly afterDating: boolean
}

export interface RequestMatter {
  readonly matter: string
  /** The question put to the method. */
  readonly asks: string
  readonly gainBits: number
  /** What each outcome would mean, group by group; reckoned when it is read. */
  readonly means: readonly Meaning[]
  /** How the method may go wrong on this part. */
  readonly misleads: readonly {
    readonly group: string
    readonly failure: string
    readonly says: string
    /** The state it would show then, or `rest`. */
    readonly as: string
    readonly sources: readonly SourceRef[]
  }[]
}

interface Tellable {
  readonly raised: Raised
  readonly groups: readonly number[]
  readonly gainBits: number
}

function tellableBy(method: string, raised: Raised): Tellable | null {
  const groups = askable(raised, ({ by }) => by === method)
  if (groups.length === 0 || isIdle(raised.joint, groups)) return null
  return { raised, groups, gainBits: gainBits(raised.joint, groups) }
}

function matterOf({ raised: { joint, matter }, groups, gainBits }: Tellable): RequestMatter {
  return {
    matter: matter.id,
    asks: matter.asks,
    gainBits,
    get means() {
      return groups.flatMap((group) => meaningsOf(joint, group))
    },
    misleads: groups.flatMap((group) =>
      (joint.groups[group]!.mistaken()?.failures ?? []).map(({ id, says, as, sources }) => ({
        group: matter.groups[group]!.id,
        failure: id,
        says,
        as,
        sources,
      })),
    ),
  }
}

/** How much metal is left is stated without a radiograph too, and says nothing of one. */
const ownFacts = (method: string) => (methodFacts[method] ?? []).filter((fact) => fact !== 'core')

const hasResult = (method: string, { lookup }: Raised): boolean =>
  ownFacts(method).some((name) => {
    const fact = lookup(name)
    return fact?.number !== undefined || (fact?.has.some((value) => value !== 'unknown') ?? false)
  })

export type Unranked = Omit<EvidenceRequest, 'rank' | 'ifConservatorAgrees' | 'afterDating'>

export function unrankedOf(raised: readonly Raised[], base: EvidenceBase): readonly Unranked[] {
  const open = raised.filter(isOpen)
  const found: Unranked[] = []
  for (const part of new Set(open.map((one) => one.part))) {
    const here = open.filter((one) => one.part === part)
    for (const method of Object.values(base.methods)) {
      const tellable = here.flatMap((one) => tellableBy(method.id, one) ?? [])
      const gain = tellable.reduce((sum, one) => sum + one.gainBits, 0)
      if (gain < floorBits) continue
      const { sampling, harm, leave, who, minutes } = method
      found.push({
        method: method.id,
        part,
        component: here[0]!.component,
        gainBits: gain,
        matters: tellable.map(matterOf),
        sampling,
        harm,
        leave,
        who,
        minutes,
        ...(hasResult(method.id, here[0]!) ? { onRecord: true } : {}),
      })
    }
  }
  return found
}

/** Every method that would tell something of what is open on a find, in the order in which to ask for it. */
export const requestsOf = (facts: RecordFacts, base: EvidenceBase): readonly EvidenceRequest[] =>
  requestsFor(raisedBy(facts, base), facts, base)

export const requestsFor = (
  raised: readonly Raised[],
  facts: RecordFacts,
  base: EvidenceBase,
): readonly EvidenceRequest[] => ranked(unrankedOf(raised, base), raised, facts, base)
