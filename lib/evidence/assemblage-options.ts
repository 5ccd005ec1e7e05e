import type { Method } from '../knowledge/knowledge.ts'
import type { AssemblageFind, PartTold, Stakes } from './assemblage-find.ts'
import type { Option } from './assemblage-problem.ts'
import { significanceWeight } from './assemblage-weights.ts'

/** More than three methods on one part nobody plans at once: what the third shows decides about the fourth. */
const mostMethods = 3

/** Ways to combine grow with each ask; beyond so many of one find only those that tell most are combined. */
const mostAsks = 8

/** One thing to ask of a find: a method on one part; an image shows all parts of the find at once. */
export interface Ask {
  readonly method: number
  readonly parts: readonly PartTold[]
}

export interface Candidate {
  readonly find: AssemblageFind
  readonly asks: readonly Ask[]
  /** What a bit on this find is worth. */
  readonly weight: number
  /** Whether the options are weighed by what hangs on them, or by the most that may. */
  readonly stakes: Stakes
  readonly options: readonly (Option & { readonly asks: readonly Ask[] })[]
}

/** What is seen of the whole find takes a place once, whatever it shows. */
const seesAll = ({ kind }: Method) => kind === 'imaging' || kind === 'looking'

function asksOf(parts: readonly PartTold[], methods: readonly Method[]): readonly Ask[] {
  const asks = methods.flatMap((method, at): readonly Ask[] => {
    const told = parts.filter(({ telling }) => telling.includes(at))
    if (told.length === 0) return []
    return seesAll(method)
      ? [{ method: at, parts: told }]
      : told.map((part) => ({ method: at, parts: [part] }))
  })
  const tells = ({ method, parts }: Ask) =>
    parts.reduce((sum, { together }) => sum + together(1 << method, 'most').weighted, 0)
  return asks.length <= mostAsks ? asks : asks.toSorted((a, b) => tells(b) - tells(a)).slice(0, mostAsks)
}

/** For each part the set of methods that a set of asks sends to it, as bits. */
function setsOf(asks: readonly Ask[]): ReadonlyMap<PartTold, number> {
  const sets = new Map<PartTold, number>()
  for (const { method, parts } of asks)
    for (const part of parts) sets.set(part, (sets.get(part) ?? 0) | (1 << method))
  return sets
}

function bitsIn(set: number): number {
  let count = 0
  for (let left = set; left > 0; left &= left - 1) count++
  return count
}

/** What a set of asks tells of a find together [bit], and its weight. */
export function toldBy(
  asks: readonly Ask[],
  weight: number,
  stakes: Stakes,
): { readonly gainBits: number; readonly worth: number } {
  let gainBits = 0
  let weighted = 0
  for (const [part, set] of setsOf(asks)) {
    const told = part.together(set, stakes)
    gainBits += told.gainBits
    weighted += told.weighted
  }
  return { gainBits, worth: weight * weighted }
}

/** The same candidate weighed by what truly hangs on it. */
export function settled(candidate: Candidate): Candidate {
  const options = candidate.options.map((option) => ({
    ...option,
    worth: toldBy(option.asks, candidate.weight, 'known').worth,
  }))
  return { ...candidate, stakes: 'known', options }
}

/**
 * All that can be asked of a find, and every way to combine it; null where these methods tell nothing of it, or those that do
 * must wait.
 */
export function candidateOf(
  find: AssemblageFind,
  parts: readonly PartTold[],
  methods: readonly Method[],
  mustWait: (method: Method) => boolean,
): Candidate | null {
  const asks = asksOf(parts, methods).filter(({ method }) => !mustWait(methods[method]!))
  if (asks.length === 0) return null
  const weight = significanceWeight(find.facts.find['significance']?.has[0] ?? null)
  const options: Candidate['options'][number][] = []
  for (let set = 0; set < 1 << asks.length; set++) {
    const chosen = asks.filter((_, at) => set & (1 << at))
    if ([...setsOf(chosen).values()].some((one) => bitsIn(one) > mostMethods)) continue
    const uses = methods.map((_, at) => chosen.filter(({ method }) => method === at).length)
    options.push({ asks: chosen, uses, worth: toldBy(chosen, weight, 'most').worth })
  }
  return { find, asks, weight, stakes: 'most', options }
}
