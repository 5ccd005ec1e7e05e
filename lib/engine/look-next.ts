import type { FieldWords, Knowledge } from '../knowledge/knowledge.ts'
import { fields, type FieldName } from '../record/fields.ts'
import { stated, type Fact, type RecordFacts } from '../record/fact.ts'
import type { LookNext, Plan } from './plan.ts'
import { indexesOf, reasonAgain, type Reasoning } from './reasoning.ts'
import type { Spoken } from './statement.ts'
import { humidityOf, keepOf, saidOf, takenOf } from './storage.ts'

/**
 * What to look at next, computed, not listed: every absent fact a person can look for is tried with each answer that the
 * rules tell apart, only what reads it is decided again, and facts are ranked by how much of the plan the answers move.
 */
interface Pressing {
  readonly band: readonly [number, number] | null
  readonly keep: string
  readonly urgency: number
  readonly stops: ReadonlySet<string>
  readonly objections: ReadonlySet<string>
}

const ids = (said: readonly Spoken[]) => new Set(said.map(({ id }) => id))

function pressing(reasoning: Reasoning): Pressing {
  const { band } = humidityOf(reasoning)
  const keep = keepOf(reasoning)
  return {
    band: band === null || keep === 'wet' ? null : [band.min, band.max],
    keep,
    urgency: takenOf(reasoning, 'urgency').rank,
    stops: ids(saidOf(reasoning, 'cautions').filter(({ rule }) => rule.level === 'stop')),
    objections: ids(saidOf(reasoning, 'objections')),
  }
}

/** Weights are ours: a stop outweighs a band, a band outweighs an objection. They order questions and nothing else. */
const weights = { stops: 8, keep: 4, urgency: 2, band: 3, objections: 1 } as const

const differ = (a: ReadonlySet<string>, b: ReadonlySet<string>) => a.symmetricDifference(b).size

function moved(from: Pressing, to: Pressing): Readonly<Record<keyof typeof weights, number>> {
  const bandGap =
    from.band === null || to.band === null
      ? Number(from.band !== to.band) * 20
      : Math.abs(from.band[0] - to.band[0]) + Math.abs(from.band[1] - to.band[1])
  return {
    stops: differ(from.stops, to.stops),
    keep: Number(from.keep !== to.keep),
    urgency: Math.abs(from.urgency - to.urgency),
    band: Math.min(bandGap / 10, 3),
    objections: differ(from.objections, to.objections),
  }
}

/** Answers to one fact that no rule tells apart need trying once. */
function answersThatMatter(
  fact: string,
  domain: readonly string[],
  knowledge: Knowledge,
): ReadonlyMap<string, number> {
  const index = indexesOf(knowledge).flatMap(({ facts }) => facts.filter((one) => one.fact === fact))
  const classes = new Map<string, { answer: string; size: number }>()
  for (const answer of domain) {
    const key = index.map((one) => `${one.anyOf.get(answer) ?? ''}|${one.noneOf.get(answer) ?? ''}`).join(' ')
    const known = classes.get(key)
    classes.set(key, { answer: known?.answer ?? answer, size: (known?.size ?? 0) + 1 })
  }
  return new Map([...classes.values()].map(({ answer, size }) => [answer, size]))
}

const tried = new WeakMap<Knowledge, Map<string, ReadonlyMap<string, number>>>()

function answersFor(words: FieldWords, knowledge: Knowledge): ReadonlyMap<string, number> {
  const known = tried.get(knowledge) ?? new Map<string, ReadonlyMap<string, number>>()
  tried.set(knowledge, known)
  const cached = known.get(words.id)
  if (cached) return cached
  const fresh = answersThatMatter(
    words.id,
    words.values.map(({ id }) => id),
    knowledge,
  )
  known.set(words.id, fresh)
  return fresh
}

function withFact(facts: RecordFacts, part: number | null, id: string, fact: Fact): RecordFacts {
  if (part === null) return { ...facts, find: { ...facts.find, [id]: fact } }
  const components = facts.components.map((one, at) =>
    at === part ? { ...one, facts: { ...one.facts, [id]: fact } } : one,
  )
  return { ...facts, components }
}

interface Question {
  readonly part: number | null
  readonly words: FieldWords
}

function openQuestions(reasoning: Reasoning, knowledge: Knowledge): readonly Question[] {
  const read = new Set(indexesOf(knowledge).flatMap(({ decision }) => decision.facts))
  return Object.values(knowledge.vocabulary.fields)
    .filter((words) => words.lookable && read.has(words.id) && words.values.length > 0)
    .flatMap((words): Question[] => {
      const level = fields[words.id as FieldName]?.level
      if (level === 'find') return reasoning.facts.find[words.id] ? [] : [{ part: null, words }]
      return reasoning.facts.components.flatMap(({ facts }, part) =>
        facts[words.id] ? [] : [{ part, words }],
      )
    })
}

const names = {
  band: 'storage',
  keep: 'storage',
  urgency: 'urgency',
  stops: 'cautions',
  objections: 'objections',
} as const

/** The five questions that would settle most, the one that would settle most first; none that would change nothing. */
export function lookNext(reasoning: Reasoning, knowledge: Knowledge, most = 5): Plan['lookNext'] {
  const before = pressing(reasoning)
  const scored = openQuestions(reasoning, knowledge).map(({ part, words }) => {
    const takesMany = fields[words.id as FieldName]?.kind === 'choices'
    const answers = [...answersFor(words, knowledge)]
    const trials = [
      ...answers.map(([answer, size]) => ({ fact: stated(answer), weight: size })),
      // A person who looks mostly finds none of the signs asked for.
      ...(takesMany ? [{ fact: stated(), weight: words.values.length }] : []),
    ]
    const total = trials.reduce((sum, { weight }) => sum + weight, 0)
    const settles = new Set<string>()
    let score = 0
    for (const { fact, weight } of trials) {
      const facts = withFact(reasoning.facts, part, words.id, fact)
      const after = pressing(reasonAgain(reasoning, facts, words.id, knowledge))
      for (const [axis, change] of Object.entries(moved(before, after)) as [keyof typeof weights, number][]) {
        if (change === 0) continue
        settles.add(names[axis])
        score += (change * weights[axis] * weight) / total
      }
    }
    return { part, words, settles, score: words.seldom ? score / 10 : score }
  })
  return scored
    .filter(({ score }) => score > 0)
    .toSorted(
      (a, b) => b.score - a.score || (a.words.id < b.words.id ? -1 : 1) || (a.part ?? -1) - (b.part ?? -1),
    )
    .slice(0, most)
    .map(({ part, words, settles }): LookNext => ({
      fact: part === null ? words.id : `${reasoning.facts.components[part]!.name}.${words.id}`,
      why: words.why ?? words.means,
      wouldSettle: [...settles].sort(),
      asks: words.asks,
      tell: words.tell,
    }))
}
