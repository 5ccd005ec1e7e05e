import type { Element, Matrix, Matter, Question } from '../evidence.ts'
import { lookedDomains, recordDomains } from '../domains.ts'
import type { Kind, Place } from '../flaw.ts'
import { byId } from './by-id.ts'
import type { ContentDocument } from './document.ts'
import { shapedList, type Entry, type Report } from './entries.ts'
import * as forms from './evidence-shapes.ts'
import { linkMatter, readMatter, type WrittenMatter } from './matters.ts'
import { linkElement, linkMatrix } from './physics.ts'
import { linkQuestion, type WrittenQuestion } from './questions.ts'
import type { Written } from './shapes.ts'
import type { Shelf } from './shelf.ts'

export interface WrittenEvidence {
  readonly matters: WrittenMatter[]
  readonly questions: WrittenQuestion[]
  readonly elements: Entry<Written<typeof forms.element>>[]
  readonly matrices: Entry<Written<typeof forms.matrix>>[]
}

export function emptyEvidence(): WrittenEvidence {
  return { matters: [], questions: [], elements: [], matrices: [] }
}

/** Takes a file of the evidence base; says whether the folder is one of its own. */
export function readEvidence(
  folder: string | undefined,
  document: ContentDocument,
  into: WrittenEvidence,
  report: Report,
): boolean {
  if (folder === 'questions') into.questions.push(...shapedList(document, forms.question, report))
  else if (folder === 'elements') into.elements.push(...shapedList(document, forms.element, report))
  else if (folder === 'matrices') into.matrices.push(...shapedList(document, forms.matrix, report))
  else if (folder === 'evidence') {
    const matter = readMatter(document, report)
    if (matter !== null) into.matters.push(matter)
  } else return false
  return true
}

export interface LinkedEvidence {
  readonly matters: Readonly<Record<string, Matter>>
  readonly questions: Readonly<Record<string, Question>>
  readonly elements: Readonly<Record<string, Element>>
  readonly matrices: Readonly<Record<string, Matrix>>
}

export function linkEvidence(written: WrittenEvidence, shelf: Shelf): LinkedEvidence {
  const questions = keyed(written.questions.map((entry) => linkQuestion(entry, shelf)))
  const elements = keyed(written.elements.map((entry) => linkElement(entry, shelf)))
  const matrices = keyed(written.matrices.map((entry) => linkMatrix(entry, elements, shelf)))
  // The content's own questions: whether the record knows the same ones is a check of its own.
  const asked = Object.fromEntries(
    [...questions.values()].map(({ id, answers }) => [id, answers.map((answer) => answer.id)]),
  )
  const domains = new Map(Object.entries({ ...recordDomains, ...lookedDomains(asked) }))
  const linked = { questions, matters: { elements, matrices }, domains }
  return {
    matters: byId(written.matters.map((matter) => linkMatter(matter, linked, shelf))),
    questions: byId(questions.values()),
    elements: byId(elements.values()),
    matrices: byId(matrices.values()),
  }
}

function keyed<Thing extends { readonly id: string }>(things: readonly Thing[]): ReadonlyMap<string, Thing> {
  return new Map(things.map((thing) => [thing.id, thing]))
}

/** Where each thing of the evidence base stands: `matter M`, `rival M/R`, `group M/G`, `state M/G/S`, `question Q` … */
export function evidencePlaces(
  written: WrittenEvidence,
  put: (kind: Kind, id: string, place: Place) => void,
  keep: (key: string, place: Place) => void,
): void {
  for (const { head, rivals, groups } of written.matters) {
    const matter = head.written.matter
    put('matter', matter, head.place('matter'))
    // Repetitions within a matter are reported where it is linked.
    for (const rival of rivals) keep(`rival ${matter}/${rival.written.id}`, rival.place('id'))
    for (const group of groups) {
      keep(`group ${matter}/${group.written.id}`, group.place('id'))
      group.written.states.forEach(({ id }, index) =>
        keep(`state ${matter}/${group.written.id}/${id}`, group.place('states', index, 'id')),
      )
      keep(`state ${matter}/${group.written.id}/rest`, group.place('rest'))
      group.written.failures?.forEach(({ id }, index) =>
        keep(`failure ${matter}/${group.written.id}/${id}`, group.place('failures', index, 'id')),
      )
    }
  }
  for (const question of written.questions) put('question', question.written.id, question.place('id'))
  for (const element of written.elements) put('element', element.written.id, element.place('id'))
  for (const matrix of written.matrices) put('matrix', matrix.written.id, matrix.place('id'))
}
