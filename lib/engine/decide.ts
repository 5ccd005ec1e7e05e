import { match, matchCertain, type Lookup } from './match.ts'
import { holds, rulesIn, type RuleIndex } from './rule-index.ts'

/** What a decision comes to for one part, or for the whole find. Rules are given by number. */
export interface Decided {
  /** Rules that hold on what is recorded. */
  readonly holding: readonly number[]
  /** Rules that cannot be told; a protective decision takes them to hold. */
  readonly open: readonly number[]
  /** Value decisions: the answer the plan takes; null where no rule gives one. */
  readonly taken: string | null
  /** Value decisions: every answer that may still turn out right, strictest first. */
  readonly possible: readonly string[]
}

/** Exceptions are named: a rule that holds silences those it overrides; one that may hold leaves them open. */
function heedExceptions(index: RuleIndex, certain: readonly number[], maybe: readonly number[]) {
  if (!index.hasExceptions) return { holding: certain, open: maybe }
  const silenced = new Set(certain.flatMap((rule) => index.silences[rule]!))
  const doubted = new Set(maybe.flatMap((rule) => index.silences[rule]!))
  return {
    holding: certain.filter((rule) => !silenced.has(rule) && !doubted.has(rule)),
    open: [...maybe, ...certain.filter((rule) => doubted.has(rule))].filter((rule) => !silenced.has(rule)),
  }
}

function answersOf(index: RuleIndex, holding: readonly number[], open: readonly number[]): readonly string[] {
  const answers = index.decision.answers
  const settled = holding.map((rule) => index.rank[rule]!)
  const strictest = Math.min(...settled, answers.length)
  // One answer that holds settles a unique decision; in a strictest one, stricter answers stay possible.
  const stillOpen =
    index.decision.policy === 'unique' && settled.length > 0
      ? []
      : open.map((rule) => index.rank[rule]!).filter((rank) => rank < strictest)
  const ranks = new Set([...stillOpen, ...(strictest < answers.length ? [strictest] : [])])
  return answers.filter((_, rank) => ranks.has(rank))
}

const none: readonly number[] = []

const silence: Decided = { holding: [], open: [], taken: null, possible: [] }

/** A silent collecting decision says what holds on what is recorded; what cannot be told says nothing. */
function gather(index: RuleIndex, lookup: Lookup): Decided {
  const certain = rulesIn(matchCertain(index, lookup))
  if (certain.length === 0) return silence
  return { ...silence, holding: heedExceptions(index, certain, []).holding }
}

/**
 * Decides one decision over the facts `lookup` gives. Deterministic; the order of rules and facts changes nothing but the
 * order in which rules are listed, which is their own.
 */
export function decide(index: RuleIndex, lookup: Lookup): Decided {
  const { policy, absent, calledForBy } = index.decision
  if (policy === 'collect' && absent === 'silent') return gather(index, lookup)
  // Nothing called for is nothing said, and nothing else reads what a called-for decision leaves open.
  if (calledForBy.length > 0 && !calledForBy.some((fact) => lookup(fact) !== undefined)) return silence
  const { certain, possible } = match(index, lookup)
  const maybe = possible === certain ? none : rulesIn(possible).filter((rule) => !holds(certain, rule))
  const { holding, open } = heedExceptions(index, rulesIn(certain), maybe)
  // In a silent decision an exception that nobody recorded silences nothing; it only leaves its answer possible.
  const silent = absent === 'silent'
  const spokenOnly = silent
    ? { holding: heedExceptions(index, rulesIn(certain), []).holding, open }
    : { holding, open }
  if (index.decision.answers.length === 0 || policy === 'collect') {
    return { ...spokenOnly, taken: null, possible: [] }
  }
  const answers = answersOf(index, holding, open)
  if (!silent) return { holding, open, taken: answers[0] ?? null, possible: answers }
  return { ...spokenOnly, taken: answersOf(index, spokenOnly.holding, [])[0] ?? null, possible: answers }
}
