import type { Method } from '../knowledge/knowledge.ts'
import type { RecordFacts } from '../record/fact.ts'
import { floorBits, gainBits } from './gain.ts'
import { probabilities, type Joint } from './joint.ts'
import { isIdle } from './meanings.ts'
import { askable, isOpen } from './open-matters.ts'
import type { Raised } from './raised.ts'
import { datingWanted, rays } from './request-order.ts'

/** One find as the assemblage plan sees it. */
export interface AssemblageFind {
  /** Its own among all finds. */
  readonly id: string
  readonly facts: RecordFacts
  readonly raised: readonly Raised[]
  /** A stop stands: it must not be moved. */
  readonly stopped: boolean
  /** The sample for a luminescence date that is wanted is noted as taken. */
  readonly datingSampled: boolean
  /** How much of the plan hangs on the answer, from 1 for nothing. Plans are made again for it, so it is asked late. */
  readonly stakes: (raised: Raised) => number
  /** More than this the stakes cannot be. */
  readonly stakesAtMost: (raised: Raised) => number
}

/** What is open on one part and what the methods at hand could tell of it. Sets of methods are bits, by number. */
export interface PartTold {
  readonly part: number
  readonly component: string
  /** Methods that tell something worth asking for. */
  readonly telling: readonly number[]
  readonly of: (method: number) => readonly TellableMatter[]
  /** What a set of methods would tell together [bit], and the same weighted by what hangs on it. */
  readonly together: (methods: number, stakes: Stakes) => Told
}

/** `most`: weighted by the most that may hang on it; `known`: by what does. */
export type Stakes = 'most' | 'known'

export interface Told {
  readonly gainBits: number
  readonly weighted: number
}

export interface TellableMatter {
  readonly matter: string
  readonly asks: string
  /** What is open of it [bit]. */
  readonly openBits: number
}

interface Open {
  readonly raised: Raised
  readonly stakes: (how: Stakes) => number
  readonly openBits: number
  /** By method, the groups that it answers; none where no answer could move the matter. */
  readonly groups: readonly (readonly number[])[]
}

/** What is open of a matter [bit]: nothing where one explanation is certain. */
export function openBitsOf({ weights, tables }: Joint): number {
  let bits = 0
  for (const probability of probabilities(weights, tables.rivals.length))
    if (probability > 0) bits -= probability * Math.log2(probability)
  return bits
}

function openOf(raised: Raised, methods: readonly string[], find: AssemblageFind): Open | null {
  const groups = methods.map((method) => {
    const found = askable(raised, ({ by }) => by === method)
    return found.length === 0 || isIdle(raised.joint, found) ? [] : found
  })
  if (groups.every((found) => found.length === 0)) return null
  const most = find.stakesAtMost(raised)
  let known: number | null = null
  const stakes = (how: Stakes) => (how === 'most' ? most : (known ??= find.stakes(raised)))
  return { raised, groups, stakes, openBits: openBitsOf(raised.joint) }
}

function toldOf(open: readonly Open[], known: Map<string, number>): PartTold['together'] {
  return (methods, how) => {
    let bits = 0
    let weighted = 0
    open.forEach(({ raised, groups, stakes }, at) => {
      const asked =
        groups.reduce((set, found, method) => set | (found.length > 0 ? 1 << method : 0), 0) & methods
      if (asked === 0) return
      const key = `${at} ${asked}`
      const gain =
        known.get(key) ??
        gainBits(
          raised.joint,
          groups.flatMap((found, method) => (asked & (1 << method) ? found : [])),
        )
      known.set(key, gain)
      bits += gain
      weighted += stakes(how) * gain
    })
    return { gainBits: bits, weighted }
  }
}

/** Every part of a find on which these methods could tell something. */
export function partsTold(find: AssemblageFind, methods: readonly string[]): readonly PartTold[] {
  const parts = Map.groupBy(find.raised.filter(isOpen), ({ part }) => part)
  return [...parts].flatMap(([part, raised]) => {
    const open = raised.flatMap((one) => openOf(one, methods, find) ?? [])
    const together = toldOf(open, new Map())
    const telling = methods.flatMap((_, method) =>
      together(1 << method, 'most').gainBits >= floorBits ? [method] : [],
    )
    if (telling.length === 0) return []
    const of = (method: number) =>
      open
        .filter(({ groups }) => groups[method]!.length > 0)
        .map(({ raised: { matter }, openBits }) => ({ matter: matter.id, asks: matter.asks, openBits }))
    return [{ part, component: raised[0]!.component, telling, of, together }]
  })
}

/** Rays must wait: they would spoil a date that is wanted and whose sample is not taken yet. */
export const raysMustWait = ({ facts, datingSampled }: AssemblageFind, method: Method): boolean =>
  datingWanted(facts) && !datingSampled && !method.sampling && rays(method)
