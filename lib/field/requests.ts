import type { Meaning, Plan, Request, Statement } from '../engine/plan.ts'
import type { Raised } from '../evidence/raised.ts'
import { ranked, type Placeable } from '../evidence/request-order.ts'
import { unrankedOf, type EvidenceRequest } from '../evidence/requests.ts'
import type { Knowledge, SourceRef } from '../knowledge/knowledge.ts'
import type { RecordFacts } from '../record/fact.ts'
import { stillAsked } from './moot-requests.ts'
import type { Supposed } from './supposed.ts'

/** More than this nobody reads: the rest folds under the last. */
const most = 5

const cited = (sources: readonly SourceRef[]): Statement['sources'] => {
  const each = new Map(sources.map(({ work, place, known }) => [`${work} ${place}`, { work, place, known }]))
  return [...each.values()]
}

/** What the rules ask for, as something to rank beside what the evidence asks for: it tells of no matter by itself. */
function placeable(
  { method, components, basis }: Request,
  facts: RecordFacts,
  knowledge: Knowledge,
): Placeable {
  const { sampling, harm, leave, who, minutes } = knowledge.methods[method]!
  const part = Math.max(
    facts.components.findIndex(({ name }) => components.includes(name)),
    0,
  )
  return {
    method,
    part,
    component: facts.components[part]!.name,
    gainBits: 0,
    matters: [],
    sampling,
    harm,
    leave,
    who,
    minutes,
    must: basis.some(({ strength }) => strength === 'must'),
  }
}

/** The evidence base asks as a rule does: with what it rests on. */
function statementOf(request: EvidenceRequest, knowledge: Knowledge): readonly Statement[] {
  return request.matters.map(({ matter }) => {
    const written = knowledge.matters[matter]!
    const groups = written.groups.filter(({ by }) => by === request.method)
    const states = groups.flatMap((group) => group.states)
    return {
      code: request.method,
      text: written.asks,
      because: knowledge.methods[request.method]!.answers,
      strength: 'consider',
      certainty: 'opinion',
      rule: `evidence/${matter}`,
      sources: cited(states.flatMap(({ sources }) => sources)),
      components: [request.component],
      facts: [],
      precautionary: false,
      figures: [...new Set(states.flatMap(({ figures }) => figures))],
      ...(written.contested === null ? {} : { contested: written.contested }),
      also: [],
    }
  })
}

const meaningsOf = (request: EvidenceRequest, supposed: Supposed): readonly Meaning[] =>
  request.matters.flatMap(({ matter, means }) =>
    means.map(({ group, says, chance, leader, probability, standing }) => ({
      component: request.component,
      matter,
      group,
      outcome: says,
      chance,
      interpretation: leader,
      probability,
      standing,
      changes: supposed.changes(request.component, matter, leader),
    })),
  )

function joined(
  method: string,
  asked: readonly EvidenceRequest[],
  rule: Request | undefined,
  knowledge: Knowledge,
  supposed: Supposed | null,
): Omit<Request, 'rank'> {
  const words = knowledge.methods[method]!
  const telling = asked.filter(({ matters }) => matters.length > 0)
  const asks = telling.flatMap(({ matters }) => matters.map((one) => one.asks))
  const misleads = telling.flatMap(({ matters }) => matters.flatMap((one) => one.misleads))
  const ways = new Map(
    misleads.map(({ failure, says, sources }) => [failure, { says, sources: cited(sources) }]),
  )
  return {
    method,
    question: rule?.question ?? [...new Set(asks)].join(' '),
    gainBits: telling.length === 0 ? null : telling.reduce((sum, { gainBits }) => sum + gainBits, 0),
    sampling: words.sampling,
    who: words.who,
    cautions: words.cautions.map(({ text }) => text),
    components: [...new Set([...(rule?.components ?? []), ...telling.map(({ component }) => component)])],
    basis: [...(rule?.basis ?? []), ...telling.flatMap((one) => statementOf(one, knowledge))],
    means: supposed === null ? [] : telling.flatMap((one) => meaningsOf(one, supposed)),
    misleads: [...ways.values()],
    ifConservatorAgrees: asked.some((one) => one.ifConservatorAgrees),
  }
}

/** Requests beyond those that are read keep their reasons, under the last of them. */
function folded(requests: readonly Request[]): readonly Request[] {
  const kept = requests.slice(0, most)
  const last = kept.at(-1)
  if (!last) return kept
  const said = new Set(kept.flatMap(({ basis }) => basis.map(({ rule }) => rule)))
  const beyond = requests.slice(most).flatMap(({ basis }) => basis.filter(({ rule }) => !said.has(rule)))
  const rest = [...new Map(beyond.map((statement) => [statement.rule, statement])).values()]
  if (rest.length === 0) return kept
  const [first, ...more] = last.basis
  return [...kept.slice(0, -1), { ...last, basis: [{ ...first!, also: [...first!.also, ...rest] }, ...more] }]
}

/**
 * What the rules ask for and what the evidence base would learn most from, one a method, in one order. None while a stop
 * stands, for the find must not be moved.
 */
export function joinRequests(
  plan: Plan,
  raised: readonly Raised[],
  facts: RecordFacts,
  knowledge: Knowledge,
  supposed: Supposed | null,
): Plan['requests'] {
  if (plan.cautions.some(({ level }) => level === 'stop')) return plan.requests
  const ruled = stillAsked(plan.requests, raised, facts, knowledge)
  const rules = new Map(ruled.map((request) => [request.method, request]))
  const all = [
    ...unrankedOf(raised, knowledge),
    ...ruled.map((request) => placeable(request, facts, knowledge)),
  ]
  const methods = Map.groupBy(ranked(all, raised, facts, knowledge), ({ method }) => method)
  const requests = [...methods].map(([method, asked], at) => ({
    ...joined(method, asked, rules.get(method), knowledge, supposed),
    rank: at + 1,
  }))
  return folded(requests)
}
