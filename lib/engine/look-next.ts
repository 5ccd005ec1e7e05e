import { cellHolds } from '../knowledge/cell-holds.ts'
import { recordDomains } from '../knowledge/domains.ts'
import type { FieldWords, Fills, Knowledge } from '../knowledge/knowledge.ts'
import { stated, type Fact, type RecordFacts } from '../record/fact.ts'
import { objectionsIn } from './objection.ts'
import type { LookNext, Plan } from './plan.ts'
import { lookupIn, reasonAgain, touchedBy, type Reasoning, type Reconsidered } from './reasoning.ts'
import type { RuleIndex } from './rule-index.ts'
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

const axes = {
  band: ['storage.rh', 'storage.keep'],
  keep: ['storage.keep'],
  urgency: ['urgency'],
  stops: ['cautions'],
  objections: ['objections'],
} as const satisfies Record<keyof Pressing, readonly Fills[]>

const ids = (said: readonly Spoken[]) => new Set(said.map(({ id }) => id))

const look: { readonly [Axis in keyof Pressing]: (reasoning: Reasoning) => Pressing[Axis] } = {
  band: (reasoning) => {
    const { band } = humidityOf(reasoning)
    return band === null || keepOf(reasoning) === 'wet' ? null : [band.min, band.max]
  },
  keep: keepOf,
  urgency: (reasoning) => takenOf(reasoning, 'urgency').rank,
  stops: (reasoning) => ids(saidOf(reasoning, 'cautions').filter(({ rule }) => rule.level === 'stop')),
  objections: (reasoning) => ids(objectionsIn(reasoning)),
}

function pressing(reasoning: Reasoning): Pressing {
  const { band, keep, urgency, stops, objections } = look
  return {
    band: band(reasoning),
    keep: keep(reasoning),
    urgency: urgency(reasoning),
    stops: stops(reasoning),
    objections: objections(reasoning),
  }
}

/** Whether a decision that came out differently can show on an axis; for stops, only one that can say stop. */
function shows(axis: keyof Pressing, { decision }: RuleIndex): boolean {
  if (decision.fills === null || !(axes[axis] as readonly Fills[]).includes(decision.fills)) return false
  return axis !== 'stops' || decision.rules.some(({ level }) => level === 'stop')
}

/** What presses now, looked at anew only on the axes that moved decisions show on. */
function pressingAgain(before: Pressing, { reasoning, moved }: Reconsidered): Pressing {
  const indexes = [...moved].flatMap((id) => reasoning.conclusions.get(id)?.index ?? [])
  const now = <Axis extends keyof Pressing>(axis: Axis): Pressing[Axis] =>
    indexes.some((index) => shows(axis, index)) ? look[axis](reasoning) : before[axis]
  return {
    band: now('band'),
    keep: now('keep'),
    urgency: now('urgency'),
    stops: now('stops'),
    objections: now('objections'),
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

/** How one fact is tried: the decisions between it and what presses, and the answers they tell apart. */
interface Trial {
  readonly indexes: readonly RuleIndex[]
  /** Each answer with how many of the domain it stands for; none where no answer can press. */
  readonly answers: ReadonlyMap<string, number>
}

/** Of the decisions a fact can move, those that press or are read on the way to one that does. */
function onTheWay(touched: readonly RuleIndex[]): readonly RuleIndex[] {
  const wanted = new Set<string>()
  const kept = touched.toReversed().filter((index) => {
    const presses = (Object.keys(axes) as (keyof Pressing)[]).some((axis) => shows(axis, index))
    if (!presses && !wanted.has(index.decision.id)) return false
    for (const fact of index.decision.facts) wanted.add(fact)
    return true
  })
  return kept.reverse()
}

function trialOf(words: FieldWords, knowledge: Knowledge): Trial {
  const indexes = onTheWay(touchedBy(words.id, knowledge))
  const readers = indexes.flatMap(({ facts }) => facts.filter(({ fact }) => fact === words.id))
  const classes = new Map<string, { answer: string; size: number }>()
  for (const { id: answer } of indexes.length === 0 ? [] : words.values) {
    const key = readers
      .map((one) => `${one.anyOf.get(answer) ?? ''}|${one.noneOf.get(answer) ?? ''}`)
      .join(' ')
    const known = classes.get(key)
    classes.set(key, { answer: known?.answer ?? answer, size: (known?.size ?? 0) + 1 })
  }
  return { indexes, answers: new Map([...classes.values()].map(({ answer, size }) => [answer, size])) }
}

const trials = new WeakMap<Knowledge, Map<string, Trial>>()

function trialFor(words: FieldWords, knowledge: Knowledge): Trial {
  const known = trials.get(knowledge) ?? new Map<string, Trial>()
  trials.set(knowledge, known)
  const trial = known.get(words.id) ?? trialOf(words, knowledge)
  known.set(words.id, trial)
  return trial
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

/** The answers that some rule would heed here: pale green powder is not asked of iron. */
function heeded(
  { part, words }: Question,
  indexes: readonly RuleIndex[],
  reasoning: Reasoning,
): ReadonlySet<string> {
  const answers = new Set<string>()
  for (const { decision } of indexes) {
    const lookup = lookupIn(reasoning, decision.each === 'find' ? null : part, true)
    for (const { when, retired } of decision.rules) {
      const asked = when.find(({ fact }) => fact === words.id)
      if (retired !== null || asked === undefined || 'interval' in asked) continue
      const others = when.filter((cell) => cell !== asked)
      if (others.some((cell) => cellHolds(cell, lookup(cell.fact)) === 'no')) continue
      for (const answer of 'any' in asked ? asked.any : asked.none) answers.add(answer)
    }
  }
  return answers
}

function openQuestions(reasoning: Reasoning, knowledge: Knowledge): readonly Question[] {
  return Object.values(knowledge.vocabulary.fields)
    .filter((words) => words.lookable && trialFor(words, knowledge).answers.size > 0)
    .flatMap((words): Question[] => {
      const level = recordDomains[words.id]?.each
      if (level === undefined) return []
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
  const scored = openQuestions(reasoning, knowledge).map((question) => {
    const { part, words } = question
    const domain = recordDomains[words.id]
    const takesMany = domain?.kind === 'values' && domain.many
    const { indexes, answers } = trialFor(words, knowledge)
    const worth = heeded(question, indexes, reasoning)
    const tries = [
      ...[...answers]
        .filter(([answer]) => worth.has(answer))
        .map(([answer, size]) => ({ fact: stated(answer), weight: size })),
      // A person who looks mostly finds none of the signs asked for.
      ...(takesMany ? [{ fact: stated(), weight: words.values.length }] : []),
    ]
    const total = tries.reduce((sum, { weight }) => sum + weight, 0)
    const settles = new Set<string>()
    let score = 0
    for (const { fact, weight } of tries) {
      const facts = withFact(reasoning.facts, part, words.id, fact)
      const after = pressingAgain(before, reasonAgain(reasoning, facts, words.id, indexes, knowledge))
      for (const [axis, change] of Object.entries(moved(before, after)) as [keyof typeof weights, number][]) {
        if (change === 0) continue
        settles.add(names[axis])
        score += (change * weights[axis] * weight) / total
      }
    }
    return { part, words, worth, settles, score }
  })
  return scored
    .filter(({ score }) => score > 0)
    .toSorted(
      (a, b) =>
        Number(a.words.seldom ?? false) - Number(b.words.seldom ?? false) ||
        b.score - a.score ||
        (a.words.id < b.words.id ? -1 : 1) ||
        (a.part ?? -1) - (b.part ?? -1),
    )
    .slice(0, most)
    .map(({ part, words, worth, settles }): LookNext => ({
      fact: part === null ? words.id : `${reasoning.facts.components[part]!.name}.${words.id}`,
      why: words.why ?? words.means,
      wouldSettle: [...settles].sort(),
      asks: words.asks,
      tell: words.tell,
      answers: words.values.flatMap(({ id }) => (worth.has(id) ? id : [])),
    }))
}
