import type { EvidenceBase } from './base.ts'
import { batchesOf, type MethodBatch } from './assemblage-batches.ts'
import { raysMustWait, partsTold, type AssemblageFind } from './assemblage-find.ts'
import { candidateOf, type Candidate } from './assemblage-options.ts'
import { chooseSteps } from './assemblage-steps.ts'
import { slotsIn } from './method-hours.ts'

/**
 * Given so many hours or places for each method: which finds to send to which, so that the most is learnt of what matters.
 * What is learnt of a find is what its methods tell together, so a second method counts for what it adds. Bits are weighed
 * by how significant the find is and by how much of its plan hangs on the answer.
 */
export interface Allowance {
  readonly method: string
  /** Hours at the instrument, setting up included, or places for objects. */
  readonly hours: number | null
  readonly slots: number | null
}

export interface AssemblageAsked {
  readonly allowances: readonly Allowance[]
  /** A conservator agrees to samples. */
  readonly sampling: boolean
  /** How many further hours are tried of each method. */
  readonly further: number
}

export type WhyLeftOut =
  /** A stop stands on the find. */
  | 'stop'
  /** Its sample for luminescence dating comes before this method's rays. */
  | 'dating-first'
  /** The method takes samples, and nobody agreed to that. */
  | 'samples'

export interface LeftOut {
  /** Null: no find at all is sent there. */
  readonly find: AssemblageFind | null
  readonly method: string | null
  readonly because: WhyLeftOut
}

export interface Assemblage {
  /** In the order in which methods are asked for. */
  readonly methods: readonly MethodBatch[]
  readonly gainBits: number
  readonly weightedBits: number
  /** No choice is worth more. */
  readonly boundWeightedBits: number
  readonly proved: boolean
  readonly leftOut: readonly LeftOut[]
  /** Finds of which the methods could tell something. */
  readonly candidates: number
}

/** Input in any order gives the same plan. */
const byId = (a: AssemblageFind, b: AssemblageFind) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)

/** In the order in which they bind: what holds for all, then what nobody may touch, then what has to wait. */
const reasons: readonly WhyLeftOut[] = ['samples', 'stop', 'dating-first']

export function assemble(
  given: readonly AssemblageFind[],
  { allowances, sampling, further }: AssemblageAsked,
  base: EvidenceBase,
): Assemblage {
  const leftOut: LeftOut[] = []
  const allowed = allowances
    .filter(({ method }) => {
      const refused = base.methods[method]!.sampling && !sampling
      if (refused) leftOut.push({ find: null, method, because: 'samples' })
      return !refused
    })
    .map((one) => {
      const method = base.methods[one.method]!
      return { ...one, method, places: one.slots ?? slotsIn(one.hours ?? 0, method.minutes) }
    })
    .sort((a, b) => a.method.order - b.method.order || (a.method.id < b.method.id ? -1 : 1))
  const methods = allowed.map(({ method }) => method)
  const ids = methods.map(({ id }) => id)
  const candidates: Candidate[] = []
  for (const find of given.toSorted(byId)) {
    const parts = partsTold(find, ids)
    if (parts.length === 0) continue
    if (find.stopped) {
      leftOut.push({ find, method: null, because: 'stop' })
      continue
    }
    const telling = new Set(parts.flatMap((part) => part.telling))
    const waits = methods.filter((one, at) => telling.has(at) && raysMustWait(find, one))
    for (const { id } of waits) leftOut.push({ find, method: id, because: 'dating-first' })
    const candidate = candidateOf(find, parts, methods, (method) => waits.includes(method))
    if (candidate !== null) candidates.push(candidate)
  }
  const { chosen, steps, candidates: weighed } = chooseSteps(candidates, allowed, further)
  const batches = batchesOf(allowed, weighed, chosen, steps)
  const sum = (of: (batch: MethodBatch) => number) => batches.reduce((all, batch) => all + of(batch), 0)
  return {
    methods: batches,
    gainBits: sum(({ gainBits }) => gainBits),
    weightedBits: chosen.worth,
    boundWeightedBits: chosen.bound,
    proved: chosen.proved,
    leftOut: leftOut.toSorted((a, b) => reasons.indexOf(a.because) - reasons.indexOf(b.because)),
    candidates: candidates.length,
  }
}
