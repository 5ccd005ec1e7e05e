import type { Failure, Fits, Group, Question, State } from '../evidence.ts'
import type { Place } from '../flaw.ts'
import type { Cell } from '../knowledge.ts'
import { lookedFact } from '../domains.ts'
import { methodFacts } from '../method-facts.ts'
import { linkCells, type Domains } from './cells.ts'
import { covers } from './covers.ts'
import { linkDepth } from './depths.ts'
import type { Entry } from './entries.ts'
import type * as forms from './evidence-shapes.ts'
import type { Matters } from './physics.ts'
import { checkBy } from './questions.ts'
import { fillSentence } from './sentence.ts'
import type { Written } from './shapes.ts'
import { checkSources, unknownId, type Shelf } from './shelf.ts'

export type WrittenGroup = Entry<Written<typeof forms.group>>

/** What the groups of one matter are linked against. */
export interface Surroundings {
  readonly matter: string
  readonly rivals: readonly string[]
  readonly questions: ReadonlyMap<string, Question>
  readonly matters: Matters
  readonly domains: Domains
  readonly shelf: Shelf
}

export function linkGroup({ written, place }: WrittenGroup, around: Surroundings): Group {
  const { shelf } = around
  const question = questionOf(written, place, around)
  checkCorrected(written.rest.corrected, (...path) => place('rest', 'corrected', ...path), around)
  checkBy(written.by, ['eye', 'record'], place('by'), shelf)
  const states = written.states.map((_, index) => linkState(written, index, question, place, around))
  checkParted(states, written.id, place, around)
  checkDuplicates('state', written.states, (index) => place('states', index, 'id'), shelf)
  checkDuplicates('failure', written.failures ?? [], (index) => place('failures', index, 'id'), shelf)
  return {
    id: written.id,
    label: fillSentence(written.label, 'label', place('label'), shelf, new Set()),
    by: written.by,
    question: written.question ?? null,
    sameCauseAs: written['same-cause-as'] ?? null,
    states,
    rest: {
      says: fillSentence(written.rest.says, 'rest.says', place('rest', 'says'), shelf, new Set()),
      fits: linkFits(written.rest.fits, `${written.id}/rest`, place('rest', 'fits'), around),
    },
    failures: (written.failures ?? []).map((_, index) => linkFailure(written, index, place, around)),
  }
}

function questionOf(
  written: WrittenGroup['written'],
  place: WrittenGroup['place'],
  { questions, shelf }: Surroundings,
): Question | null {
  if (written.question === undefined) return null
  const question = questions.get(written.question)
  if (question === undefined) {
    unknownId('question', written.question, questions.keys(), place('question'), shelf.report)
    return null
  }
  if (question.by !== written.by) {
    shelf.report.add('by-differs', place('by'), {
      group: written.id,
      by: written.by,
      question: question.id,
      of: question.by,
    })
  }
  return question
}

function linkState(
  group: WrittenGroup['written'],
  index: number,
  question: Question | null,
  place: WrittenGroup['place'],
  around: Surroundings,
): State {
  const { shelf, domains } = around
  const state = group.states[index]!
  const at = (...path: (string | number)[]): Place => place('states', index, ...path)
  const figures = new Set<string>()
  const name = `${group.id}/${state.id}`
  const asked = group.question !== undefined
  if (asked === (state.when !== undefined)) {
    shelf.report.add('state-when', at('when'), { state: name, question: group.question ?? null })
  }
  const answers = question?.answers.map(({ id }) => id) ?? []
  if (question !== null && !answers.includes(state.id)) {
    unknownId('question-answer', state.id, answers, at('id'), shelf.report)
  }
  const written = linkCells(state.when ?? {}, (...path) => at('when', ...path), domains, shelf, figures)
  if (!asked) checkMeasured(group.by, state.when ?? {}, name, at('when'), shelf)
  const when: Cell[] = asked ? [{ fact: lookedFact(group.question!), any: [state.id] }] : written
  checkSources(state.sources, (source) => at('sources', source), shelf)
  checkCorrected(state.corrected, (...path) => at('corrected', ...path), around)
  return {
    id: state.id,
    says: fillSentence(state.says, 'says', at('says'), shelf, figures),
    when,
    fits: linkFits(state.fits, name, at('fits'), around),
    sources: state.sources,
    figures: [...figures].toSorted(),
  }
}

/** What stands behind a changed grade is a work like any other. */
function checkCorrected(
  corrected: WrittenGroup['written']['rest']['corrected'],
  place: (...path: (string | number)[]) => Place,
  { rivals, shelf }: Surroundings,
): void {
  const entries = corrected ?? []
  entries.forEach(({ rival }, index) => {
    if (!rivals.includes(rival)) unknownId('rival', rival, rivals, place(index), shelf.report)
  })
  checkSources(
    entries.map((entry) => ({ work: entry.work, place: entry.place, known: entry.known, says: 'supports' })),
    (index) => place(index),
    shelf,
  )
}

/** A state found by a method reads a result of it; otherwise it would hold before anything was measured. */
function checkMeasured(by: string, when: object, state: string, place: Place, shelf: Shelf): void {
  if (by === 'eye' || by === 'record' || !shelf.ids.method.has(by)) return
  const wants = methodFacts[by] ?? []
  if (Object.keys(when).some((fact) => wants.includes(fact) || fact.startsWith('looked.'))) return
  shelf.report.add('state-unmeasured', place, { state, by, wants })
}

/** Each state leaves something to those after it. */
function checkParted(
  states: readonly State[],
  group: string,
  place: WrittenGroup['place'],
  { domains, shelf }: Surroundings,
): void {
  states.forEach((state, index) => {
    const before = states.slice(0, index).find((earlier) => covers(earlier.when, state.when, domains))
    if (before === undefined || before.id === state.id) return
    shelf.report.add('state-covered', place('states', index, 'when'), {
      state: `${group}/${state.id}`,
      by: before.id,
    })
  })
}

function linkFits(written: Fits, at: string, place: Place, { rivals, matter, shelf }: Surroundings): Fits {
  for (const rival of Object.keys(written)) {
    if (!rivals.includes(rival)) unknownId('rival', rival, rivals, place, shelf.report)
  }
  for (const rival of rivals) {
    if (!Object.hasOwn(written, rival))
      shelf.report.add('grade-missing', place, { at: `${matter}/${at}`, rival })
  }
  return written
}

function linkFailure(
  group: WrittenGroup['written'],
  index: number,
  place: WrittenGroup['place'],
  around: Surroundings,
): Failure {
  const { shelf, domains, rivals } = around
  const failure = group.failures![index]!
  const at = (...path: (string | number)[]): Place => place('failures', index, ...path)
  const figures = new Set<string>()
  const shown = [...group.states.map(({ id }) => id), 'rest']
  if (!shown.includes(failure.as)) unknownId('state', failure.as, shown, at('as'), shelf.report)
  failure.of?.forEach((rival, number) => {
    if (!rivals.includes(rival)) unknownId('rival', rival, rivals, at('of', number), shelf.report)
  })
  const given = (['grade', 'depth'] as const).filter((key) => failure[key] !== undefined)
  if (given.length !== 1) shelf.report.add('one-of', at(), { wants: ['grade', 'depth'], found: given })
  checkSources(failure.sources, (source) => at('sources', source), shelf)
  const depth =
    failure.depth === undefined ? null : linkDepth(failure.depth, at('depth'), around.matters, shelf, figures)
  return {
    id: failure.id,
    says: fillSentence(failure.says, 'says', at('says'), shelf, figures),
    when: linkCells(failure.when ?? {}, (...path) => at('when', ...path), domains, shelf, figures),
    of: failure.of ?? null,
    as: failure.as,
    how: depth === null ? { grade: failure.grade ?? 'rare' } : { depth },
    sources: failure.sources,
    figures: [...figures].toSorted(),
  }
}

export function checkDuplicates(
  kind: 'state' | 'failure' | 'rival' | 'group',
  things: readonly { readonly id: string }[],
  place: (index: number) => Place,
  shelf: Shelf,
): void {
  things.forEach(({ id }, index) => {
    const first = things.findIndex((other) => other.id === id)
    if (first === index) return
    const { file, line } = place(first)
    shelf.report.add('duplicate', place(index), { kind, id, first: `${file}:${line}` })
  })
}
