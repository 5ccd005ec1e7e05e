import { canonical } from '../../base/canonical.ts'
import type { Flaw, Kind, Place } from '../flaw.ts'
import type { Decision, Knowledge } from '../knowledge.ts'
import { byId } from './by-id.ts'
import { domainsOf, headOf, linkDecision, readDecision, type WrittenDecision } from './decisions.ts'
import { readDocument, type ContentDocument, type SourceFile } from './document.ts'
import { newReport, shapedList, type Entry, type Report } from './entries.ts'
import { emptyEvidence, evidencePlaces, linkEvidence, readEvidence, type WrittenEvidence } from './evidence.ts'
import { linkContested, linkFigure, linkWork } from './library.ts'
import { linkMethod } from './methods.ts'
import { sha256 } from './hash.ts'
import { inOrder } from './order.ts'
import * as shapes from './shapes.ts'
import { checkFigureSource, checkId, type Shelf } from './shelf.ts'
import { linkIsotherm, linkTask } from './store-room.ts'
import { emptyVocabulary, linkVocabulary, readVocabulary, type WrittenVocabulary } from './vocabulary.ts'

export interface Compiled {
  readonly knowledge: Knowledge
  readonly flaws: readonly Flaw[]
  /** Where each thing stands, by `work ID`, `figure ID`, `decision ID`, `rule DECISION/RULE`, `code ID` … */
  readonly places: ReadonlyMap<string, Place>
  /** What some rule, sentence, method or contested matter refers to. */
  readonly used: { readonly works: ReadonlySet<string>; readonly figures: ReadonlySet<string> }
}

interface Written {
  readonly works: Entry<shapes.Written<typeof shapes.work>>[]
  readonly figures: Entry<shapes.Written<typeof shapes.figure>>[]
  readonly methods: Entry<shapes.Written<typeof shapes.method>>[]
  readonly contested: Entry<shapes.Written<typeof shapes.contested>>[]
  readonly tasks: Entry<shapes.Written<typeof shapes.task>>[]
  readonly isotherms: Entry<shapes.Written<typeof shapes.isotherm>>[]
  readonly decisions: WrittenDecision[]
  readonly vocabulary: WrittenVocabulary
  readonly evidence: WrittenEvidence
}

/** Content files in, knowledge out. Whatever is wrong with the content is a flaw; nothing about content is thrown. */
export function compile(files: readonly SourceFile[]): Compiled {
  const report = newReport()
  const written: Written = {
    works: [],
    figures: [],
    methods: [],
    contested: [],
    tasks: [],
    isotherms: [],
    decisions: [],
    vocabulary: emptyVocabulary(),
    evidence: emptyEvidence(),
  }
  for (const file of files.toSorted((a, b) => (a.file < b.file ? -1 : 1))) {
    const { document, flaws } = readDocument(file)
    report.flaws.push(...flaws)
    if (document.data !== null) readInto(document, written, report)
  }
  const places = placesOf(written, report)
  const works = new Map(written.works.map((entry) => [entry.written.id, linkWork(entry)]))
  const figures = new Map(written.figures.map((entry) => [entry.written.id, linkFigure(entry)]))
  const shelf = shelfOf(written, works, figures, report)
  for (const entry of written.figures) {
    checkFigureSource(figures.get(entry.written.id)!, entry.place('source'), shelf)
    checkId('unit', entry.written.unit, entry.place('unit'), shelf)
  }
  const content = {
    works: byId(works.values()),
    figures: byId(figures.values()),
    decisions: linkDecisions(written.decisions, shelf, report),
    methods: byId(written.methods.map((entry) => linkMethod(entry, shelf))),
    contested: byId(written.contested.map((entry) => linkContested(entry, shelf))),
    tasks: byId(written.tasks.map((entry) => linkTask(entry, shelf))),
    isotherms: byId(written.isotherms.map((entry) => linkIsotherm(entry, shelf))),
    ...linkEvidence(written.evidence, shelf),
    vocabulary: linkVocabulary(written.vocabulary, report),
  }
  return {
    knowledge: { hash: sha256(canonical(content)), ...content },
    flaws: report.flaws,
    places,
    used: shelf.used,
  }
}

function readInto(document: ContentDocument, written: Written, report: Report): void {
  const folder = document.file.split('/')[1]
  if (folder === 'works') written.works.push(...shapedList(document, shapes.work, report))
  else if (folder === 'figures') written.figures.push(...shapedList(document, shapes.figure, report))
  else if (folder === 'methods') written.methods.push(...shapedList(document, shapes.method, report))
  else if (folder === 'contested') written.contested.push(...shapedList(document, shapes.contested, report))
  else if (folder === 'tasks') written.tasks.push(...shapedList(document, shapes.task, report))
  else if (folder === 'isotherms') written.isotherms.push(...shapedList(document, shapes.isotherm, report))
  else if (folder === 'vocabulary') readVocabulary(document, written.vocabulary, report)
  else if (folder === 'decisions') {
    const decision = readDecision(document, report)
    if (decision !== null) written.decisions.push(decision)
  } else if (!readEvidence(folder, document, written.evidence, report))
    report.add('out-of-place', { file: document.file, line: 1 }, { folder: 'content' })
}

function linkDecisions(written: readonly WrittenDecision[], shelf: Shelf, report: Report): Decision[] {
  const domains = domainsOf(written.map(headOf))
  const linked = new Map(
    written.map((decision) => [decision.head.written.decision, linkDecision(decision, domains, shelf)]),
  )
  const { order, circles } = inOrder(new Map([...linked].map(([id, decision]) => [id, readsOf(decision)])))
  for (const ids of circles) {
    const first = written.find(({ head }) => head.written.decision === ids[0])
    if (first !== undefined) report.add('cycle', first.head.place('facts'), { ids })
  }
  return order.map((id) => linked.get(id)!)
}

/** By its cells as well as by its list, so that an undeclared fact still orders the decisions rightly. */
function readsOf(decision: Decision): string[] {
  const cells = [...decision.rules, ...decision.notCovered].flatMap((part) =>
    part.when.map((cell) => cell.fact),
  )
  return [...new Set([...decision.facts, ...decision.calledForBy, ...cells])]
}

function shelfOf(written: Written, works: Shelf['works'], figures: Shelf['figures'], report: Report): Shelf {
  return {
    report,
    works,
    figures,
    ids: {
      unit: idsOf(written.vocabulary.units),
      contact: idsOf(written.vocabulary.contacts),
      code: idsOf(written.vocabulary.codes),
      contested: idsOf(written.contested),
      method: idsOf(written.methods),
    },
    units: new Map(written.vocabulary.units.map((entry) => [entry.written.id, entry.written])),
    used: { works: new Set(), figures: new Set() },
  }
}

function idsOf(entries: readonly Entry<{ readonly id: string }>[]): Set<string> {
  return new Set(entries.map((entry) => entry.written.id))
}

function placesOf(written: Written, report: Report): Map<string, Place> {
  const places = new Map<string, Place>()
  const put = (kind: Kind, id: string, place: Place): void => {
    const key = `${kind} ${id}`
    const first = places.get(key)
    if (first === undefined) places.set(key, place)
    else report.add('duplicate', place, { kind, id, first: `${first.file}:${first.line}` })
  }
  const putAll = (kind: Kind, entries: readonly Entry<{ readonly id: string }>[]): void =>
    entries.forEach((entry) => put(kind, entry.written.id, entry.place('id')))
  putAll('work', written.works)
  putAll('figure', written.figures)
  putAll('method', written.methods)
  putAll('contested', written.contested)
  putAll('task', written.tasks)
  putAll('isotherm', written.isotherms)
  putAll('code', written.vocabulary.codes)
  putAll('contact', written.vocabulary.contacts)
  putAll('unit', written.vocabulary.units)
  putAll('field', written.vocabulary.fields)
  for (const { written: field, place } of written.vocabulary.fields) {
    field.values?.forEach((value, index) =>
      put('value', `${field.id}/${value.id}`, place('values', index, 'id')),
    )
  }
  const keep = (key: string, place: Place): void => {
    if (!places.has(key)) places.set(key, place)
  }
  evidencePlaces(written.evidence, put, keep)
  for (const { head, rules } of written.decisions) {
    put('decision', head.written.decision, head.place('decision'))
    // Rules repeated within a decision were reported where it was read.
    for (const rule of rules) keep(`rule ${head.written.decision}/${rule.written.id}`, rule.place('id'))
  }
  return places
}
