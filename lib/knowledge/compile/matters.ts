import * as ids from '../../record/ids.ts'
import { readTest } from '../../record/tests.ts'
import type { Matter, Prior, Question, Rival, Settled } from '../evidence.ts'
import type { Kind, Place } from '../flaw.ts'
import { linkCells, type Domains } from './cells.ts'
import { covers } from './covers.ts'
import type { ContentDocument } from './document.ts'
import { shaped, shapedEach, type Entry, type Report } from './entries.ts'
import * as forms from './evidence-shapes.ts'
import { checkDuplicates, linkGroup, type WrittenGroup } from './groups.ts'
import type { Matters } from './physics.ts'
import { fillSentence } from './sentence.ts'
import { linkTwins } from './twins.ts'
import type { Written } from './shapes.ts'
import { checkId, checkSources, unknownId, type Shelf } from './shelf.ts'

type WrittenRival = Entry<Written<typeof forms.rival>>

/** A matter as written: its head, and those of its rivals and groups that can be read. */
export interface WrittenMatter {
  readonly head: Entry<Written<typeof forms.matter>>
  readonly rivals: readonly WrittenRival[]
  readonly groups: readonly WrittenGroup[]
}

export function readMatter(document: ContentDocument, report: Report): WrittenMatter | null {
  const head = shaped(document, [], document.data, forms.matter, report)
  if (head === null) return null
  const expected = /([^/]+)\.yaml$/.exec(document.file)?.[1] ?? ''
  if (expected !== head.written.matter) {
    report.add('matter-file', head.place('matter'), { matter: head.written.matter, expected })
  }
  return {
    head,
    rivals: shapedEach(document, ['rivals'], head.written.rivals, forms.rival, report),
    groups: shapedEach(document, ['groups'], head.written.groups, forms.group, report),
  }
}

/** What matters are linked against, beside the shelf. */
export interface Linked {
  readonly questions: ReadonlyMap<string, Question>
  readonly matters: Matters
  readonly domains: Domains
}

export function linkMatter({ head, rivals, groups }: WrittenMatter, linked: Linked, shelf: Shelf): Matter {
  const { written, place } = head
  checkDuplicates('rival', writtenOf(rivals), (index) => rivals[index]!.place('id'), shelf)
  checkDuplicates('group', writtenOf(groups), (index) => groups[index]!.place('id'), shelf)
  if (written.contested !== undefined) checkId('contested', written.contested, place('contested'), shelf)
  // A rival that could not be read still is one: its grades elsewhere are no slips.
  const named = written.rivals.flatMap((raw) => {
    const id: unknown = Reflect.get(Object(raw) as object, 'id')
    return typeof id === 'string' ? [id] : []
  })
  const around = { ...linked, matter: written.matter, rivals: named, shelf }
  return {
    id: written.matter,
    asks: fillSentence(written.asks, 'asks', place('asks'), shelf, new Set()),
    about: written.about.flatMap((_, index) => linkAbout(head, index, shelf) ?? []),
    where: linkCells(
      written.where ?? {},
      (...path) => place('where', ...path),
      linked.domains,
      shelf,
      new Set(),
    ),
    rivals: rivals.map((rival) => linkRival(rival, linked.domains, shelf)),
    groups: linkTwins(
      groups,
      groups.map((group) => linkGroup(group, around)),
      shelf,
    ),
    contested: written.contested ?? null,
  }
}

const writtenOf = (entries: readonly Entry<{ readonly id: string }>[]) =>
  entries.map((entry) => entry.written)

const observations = { evidence: ids.evidence, seen: ids.seen } as const

function linkAbout(
  { written, place }: WrittenMatter['head'],
  index: number,
  shelf: Shelf,
): Matter['about'][number] | null {
  const about = written.about[index]!
  const at = place('about', index)
  const given = (['evidence', 'seen'] as const).filter((field) => about[field] !== undefined)
  const [field] = given
  if (field === undefined || given.length > 1) {
    shelf.report.add('one-of', at, { wants: ['evidence', 'seen'], found: given })
    return null
  }
  const value = about[field]!
  checkAmong('observation', value, observations[field], at, shelf)
  return { field, value }
}

function checkAmong(kind: Kind, id: string, among: readonly string[], place: Place, shelf: Shelf): void {
  if (!among.includes(id)) unknownId(kind, id, among, place, shelf.report)
}

function linkRival(rival: WrittenRival, domains: Domains, shelf: Shelf): Rival {
  const { written, place } = rival
  checkId('code', written.id, place('id'), shelf)
  const priors = linkPriors(rival, domains, shelf)
  priors.forEach(({ when }, index) => {
    const earlier = priors.slice(0, index).findIndex((prior) => covers(prior.when, when, domains))
    // One that holds always, before others, is told as such.
    if (earlier === -1 || priors[earlier]!.when.length === 0) return
    shelf.report.add('prior-covered', place('priors', index), { rival: written.id, at: earlier + 1 })
  })
  return {
    id: written.id,
    says: fillSentence(written.says, 'says', place('says'), shelf, new Set()),
    priors,
    settled: written.settled === undefined ? null : linkSettled(written.settled, place, shelf),
  }
}

function linkPriors({ written, place }: WrittenRival, domains: Domains, shelf: Shelf): Prior[] {
  return written.priors.map((prior, index): Prior => {
    const figures = new Set<string>()
    const at = (...path: (string | number)[]): Place => place('priors', index, ...path)
    const last = index === written.priors.length - 1
    const open = Object.keys(prior.when ?? {}).length === 0
    if (open !== last) shelf.report.add('prior-order', at(), { rival: written.id, last })
    checkSources(prior.sources, (source) => at('sources', source), shelf)
    return {
      when: linkCells(prior.when ?? {}, (...path) => at('when', ...path), domains, shelf, figures),
      odds: prior.odds,
      because: fillSentence(prior.because, 'because', at('because'), shelf, figures),
      sources: prior.sources,
      figures: [...figures].toSorted(),
    }
  })
}

function linkSettled(
  written: Written<typeof forms.settled>,
  place: WrittenRival['place'],
  shelf: Shelf,
): Settled {
  const { part, seen = [], tests = [] } = written
  if (part !== undefined) {
    checkAmong('role', part.role, ids.role, place('settled', 'part', 'role'), shelf)
    checkAmong('material', part.material, ids.material, place('settled', 'part', 'material'), shelf)
  }
  seen.forEach((id, index) => checkAmong('observation', id, ids.seen, place('settled', 'seen', index), shelf))
  tests.forEach((text, index) => {
    const read = readTest(text)
    if (read.ok) return
    const near = read.suggestion ?? null
    shelf.report.add('unknown-id', place('settled', 'tests', index), { kind: 'test', id: text, near })
  })
  return { part: part ?? null, seen, tests }
}
