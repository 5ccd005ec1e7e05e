import type { Chosen } from './assemblage-choose.ts'
import type { AssemblageFind, TellableMatter } from './assemblage-find.ts'
import { toldBy, type Ask, type Candidate } from './assemblage-options.ts'
import type { Allowed, Step } from './assemblage-steps.ts'
import { hoursFor } from './method-hours.ts'

/** What is sent to one method, and what further hours there would buy. */
export interface MethodBatch {
  readonly method: string
  readonly hours: number | null
  readonly places: number
  readonly hoursUsed: number
  /** What settles most of what matters first. */
  readonly asks: readonly ChosenAsk[]
  readonly gainBits: number
  readonly weightedBits: number
  /** Finds of which it could tell something. */
  readonly candidates: number
  /** The hours that would be enough for one object more. */
  readonly oneMoreAtHours: number
  /** Hour by hour, or place by place where places are given; each against the one before. */
  readonly further: readonly Further[]
}

export interface ChosenAsk {
  readonly find: AssemblageFind
  readonly method: string
  readonly parts: readonly ChosenPart[]
  /** What it adds to the methods before it [bit], and that weighted. */
  readonly gainBits: number
  readonly weightedBits: number
}

export interface ChosenPart {
  readonly part: number
  readonly component: string
  readonly matters: readonly TellableMatter[]
  /** What the method tells of it by itself [bit], and what is open of these matters. */
  readonly aloneBits: number
  readonly openBits: number
}

export interface Further {
  /** Hours then, or null where places are given. */
  readonly hours: number | null
  readonly places: number
  /** What would be sent there that is not sent there with an hour less. */
  readonly adds: readonly ChosenAsk[]
  /** Over all methods: with more room here, others may be better used. */
  readonly gainBits: number
  readonly weightedBits: number
}

function partsOf({ method, parts }: Ask): readonly ChosenPart[] {
  return parts.map((told) => {
    const matters = told.of(method)
    return {
      part: told.part,
      component: told.component,
      matters,
      aloneBits: told.together(1 << method, 'known').gainBits,
      openBits: matters.reduce((sum, { openBits }) => sum + openBits, 0),
    }
  })
}

/** The asks of one find in the order of their methods, each with what it adds to those before it. */
function asksOf(
  { find, weight }: Candidate,
  asks: readonly Ask[],
  allowed: readonly Allowed[],
): readonly ChosenAsk[] {
  return asks.map((ask, at) => {
    const before = toldBy(asks.slice(0, at), weight, 'known')
    const after = toldBy(asks.slice(0, at + 1), weight, 'known')
    return {
      find,
      method: allowed[ask.method]!.method.id,
      parts: partsOf(ask),
      gainBits: after.gainBits - before.gainBits,
      weightedBits: after.worth - before.worth,
    }
  })
}

const optionOf = ({ options }: Candidate, { choice }: Pick<Chosen, 'choice'>, at: number) =>
  options[choice[at]!]!

function gainOf(candidates: readonly Candidate[], chosen: Pick<Chosen, 'choice'>): number {
  return candidates.reduce((sum, candidate, at) => {
    const { asks } = optionOf(candidate, chosen, at)
    return asks.length === 0 ? sum : sum + toldBy(asks, candidate.weight, 'known').gainBits
  }, 0)
}

/** What one choice asks of a method that another does not. */
function added(
  method: number,
  candidates: readonly Candidate[],
  from: Chosen,
  to: Chosen,
  allowed: readonly Allowed[],
): readonly ChosenAsk[] {
  const found = candidates.flatMap((candidate, at) => {
    if (from.choice[at] === to.choice[at]) return []
    const had = new Set(optionOf(candidate, from, at).asks)
    const { asks } = optionOf(candidate, to, at)
    const told = asksOf(candidate, asks, allowed)
    return told.filter((_, one) => asks[one]!.method === method && !had.has(asks[one]!))
  })
  return found.toSorted(mostFirst)
}

const mostFirst = (a: ChosenAsk, b: ChosenAsk) =>
  b.weightedBits - a.weightedBits || (a.find.id < b.find.id ? -1 : a.find.id > b.find.id ? 1 : 0)

function furtherOf(
  method: number,
  steps: readonly Step[],
  allowed: readonly Allowed[],
  candidates: readonly Candidate[],
  chosen: Chosen,
): readonly Further[] {
  return steps.map(({ hours, places, chosen: then }, at) => {
    const now = at === 0 ? chosen : steps[at - 1]!.chosen
    return {
      hours,
      places,
      adds: added(method, candidates, now, then, allowed),
      gainBits: gainOf(candidates, then) - gainOf(candidates, now),
      weightedBits: then.worth - now.worth,
    }
  })
}

export function batchesOf(
  allowed: readonly Allowed[],
  candidates: readonly Candidate[],
  chosen: Chosen,
  steps: readonly (readonly Step[])[],
): readonly MethodBatch[] {
  const all = candidates.flatMap((candidate, at) =>
    asksOf(candidate, optionOf(candidate, chosen, at).asks, allowed),
  )
  const byMethod = Map.groupBy(all, ({ method }) => method)
  return allowed.map(({ method, hours, places }, at) => {
    const asks = (byMethod.get(method.id) ?? []).toSorted(mostFirst)
    return {
      method: method.id,
      hours,
      places,
      hoursUsed: hoursFor(asks.length, method.minutes),
      asks,
      gainBits: asks.reduce((sum, { gainBits }) => sum + gainBits, 0),
      weightedBits: asks.reduce((sum, { weightedBits }) => sum + weightedBits, 0),
      candidates: candidates.filter((one) => one.asks.some((ask) => ask.method === at)).length,
      oneMoreAtHours: hoursFor(places + 1, method.minutes),
      further: furtherOf(at, steps[at]!, allowed, candidates, chosen),
    }
  })
}
