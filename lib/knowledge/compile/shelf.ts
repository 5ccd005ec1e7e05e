import type { Figure, Known, SourceRef, Work } from '../knowledge.ts'
import type { Kind, Place } from '../flaw.ts'
import type { Report } from './entries.ts'
import { nearest } from './nearest.ts'
import type * as shapes from './shapes.ts'

export type Unit = shapes.Written<typeof shapes.unit>

/** What sentences and rules may refer to while they are linked, and a tally of what they did refer to. */
export interface Shelf {
  readonly report: Report
  readonly works: ReadonlyMap<string, Work>
  readonly figures: ReadonlyMap<string, Figure>
  readonly ids: Readonly<Record<'unit' | 'contact' | 'contested' | 'method' | 'code', ReadonlySet<string>>>
  readonly units: ReadonlyMap<string, Unit>
  readonly used: { readonly works: Set<string>; readonly figures: Set<string> }
}

/** The figure of that id, counted as used; a flaw and null where there is none. */
export function figureOf(id: string, place: Place, shelf: Shelf): Figure | null {
  const figure = shelf.figures.get(id)
  if (figure === undefined) {
    unknownId('figure', id, shelf.figures.keys(), place, shelf.report)
    return null
  }
  shelf.used.figures.add(id)
  return figure
}

export function unknownId(
  kind: Kind,
  id: string,
  among: Iterable<string>,
  place: Place,
  report: Report,
): void {
  report.add('unknown-id', place, { kind, id, near: nearest(id, among) })
}

/** A reference to one of the plain lists; says whether it is there. */
export function checkId(kind: keyof Shelf['ids'], id: string, place: Place, shelf: Shelf): boolean {
  if (shelf.ids[kind].has(id)) return true
  unknownId(kind, id, shelf.ids[kind], place, shelf.report)
  return false
}

const rank: Readonly<Record<Known, number>> = { read: 0, 'common-practice': 0, 'second-hand': 1, memory: 2 }

/** A place in a work cannot be better known than the work itself. */
function checkKnown(source: Omit<SourceRef, 'says'>, place: Place, shelf: Shelf): void {
  const work = shelf.works.get(source.work)
  if (work === undefined) {
    unknownId('work', source.work, shelf.works.keys(), place, shelf.report)
    return
  }
  shelf.used.works.add(work.id)
  const standing = work.id === 'common-practice' || work.id === 'house-rule'
  const differs = standing !== (source.known === 'common-practice')
  if (differs || rank[source.known] < rank[work.known]) {
    shelf.report.add('known-better', place, { work: work.id, known: work.known, claimed: source.known })
  }
  if (standing && source.place !== null) shelf.report.add('standing-place', place, { work: work.id })
}

export function checkFigureSource(figure: Figure, place: Place, shelf: Shelf): void {
  checkKnown({ ...figure.source, known: figure.known }, place, shelf)
}

export function checkSources(
  sources: readonly SourceRef[],
  place: (index: number) => Place,
  shelf: Shelf,
): void {
  sources.forEach((source, index) => checkKnown(source, place(index), shelf))
}

/** The rule's own sources and those of its figures, each once, at its weaker mark, in order. */
export function mergedSources(
  own: readonly SourceRef[],
  figures: readonly string[],
  shelf: Shelf,
): SourceRef[] {
  const merged = new Map<string, SourceRef>()
  const fromFigures = figures.flatMap((id): SourceRef[] => {
    const figure = shelf.figures.get(id)
    return figure === undefined ? [] : [{ ...figure.source, known: figure.known, says: 'supports' }]
  })
  for (const source of [...own, ...fromFigures]) {
    const key = JSON.stringify([source.work, source.place, source.says])
    const before = merged.get(key)
    if (before === undefined || rank[source.known] > rank[before.known]) merged.set(key, source)
  }
  return [...merged].toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([, source]) => source)
}
