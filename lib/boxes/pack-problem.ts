import type { BinItem, BinKind, BinProblem, BinSort, OpenedBin } from './bin-problem.ts'
import type { GelFor, PackBox, PackFigures, PackFind } from './pack-find.ts'
import { capacityOf, refusal, roomSuits, temperatureMeets } from './pack-place.ts'
import type { Residents } from './pack-residents.ts'
import { mayLieTogether, meet, reachable, sharingKey } from './pack-sharing.ts'
import { baggedOf, type Bagged } from './pack-size.ts'
import type { Band } from '../engine/plan.ts'

/** Finds and boxes as a problem of bins, and the way back from its numbers to them. */
export interface PackProblem {
  readonly bins: BinProblem
  /** The finds by item; items beyond them stand for the humidity an opened box is kept at. */
  readonly finds: readonly PackFind[]
  readonly bagged: readonly Bagged[]
  /** The boxes of each kind: all alike but for name and shelf. */
  readonly kinds: readonly (readonly PackBox[])[]
  /** The box of each opened bin. */
  readonly opened: readonly PackBox[]
}

interface SortMade extends BinSort {
  /** A find of this sort; null for the humidity of a box. */
  readonly like: PackFind | null
}

export function packProblem(
  finds: readonly PackFind[],
  boxes: readonly PackBox[],
  residents: Residents,
  figures: PackFigures,
  gelFor: GelFor,
): PackProblem {
  const bagged = finds.map(({ measured }) => baggedOf(measured, figures))
  const kinds = [...Map.groupBy(boxes, kindKey).values()]
  const kindOf = new Map(kinds.flatMap((alike, kind) => alike.map((box) => [box, kind] as const)))
  const opened = boxes.filter((box) => residents.opened.has(box))
  const sorts = sortsOf(figures)
  const items = finds.map((find, at) => itemOf(find, bagged[at]!, kinds, sorts.of(find), figures))
  const place = new Map(finds.map((find, at) => [find.id, at]))
  const openedBins = opened.map((box): OpenedBin => {
    const own = (residents.opened.get(box) ?? []).map(({ id }) => place.get(id)!)
    if (box.targetRhPercent === null || box.kind === 'tub') return { kind: kindOf.get(box)!, items: own }
    items.push({
      first: 0,
      second: 0,
      sort: sorts.ofTarget(box.targetRhPercent),
      kinds: [kindOf.get(box)!],
      rank: 9,
    })
    return { kind: kindOf.get(box)!, items: [items.length - 1, ...own] }
  })
  const made = sorts.all()
  return {
    finds,
    bagged,
    kinds,
    opened,
    bins: {
      items,
      sorts: made,
      mayShare: sharing(made, figures),
      kinds: kinds.map((alike) => kindBin(alike, opened, figures)),
      opened: openedBins,
      upkeep: gelInGrams(kinds, gelFor),
    },
  }
}

function kindKey(box: PackBox): string {
  const { model, room, kind, volumeL, insideMm, maxKg, airChangesPerDay, roomRhPercent, roomTemperatureC } =
    box
  return JSON.stringify([
    model,
    room,
    kind,
    volumeL,
    insideMm,
    maxKg,
    airChangesPerDay,
    roomRhPercent,
    roomTemperatureC,
    box.name === null,
  ])
}

function kindBin(alike: readonly PackBox[], opened: readonly PackBox[], figures: PackFigures): BinKind {
  const { volumeMl, massG } = capacityOf(alike[0]!, figures)
  const count = alike.reduce((sum, box) => sum + (opened.includes(box) ? 0 : box.count), 0)
  return { first: volumeMl, second: massG, count }
}

/** The kinds of box it goes into; those whose room is right at all times, or, where there are none, at times. */
function itemOf(
  find: PackFind,
  bagged: Bagged,
  kinds: readonly (readonly PackBox[])[],
  sort: number,
  figures: PackFigures,
): BinItem {
  const fitting = kinds.flatMap((alike, kind) =>
    refusal(find, bagged, alike[0]!, figures) === null ? [kind] : [],
  )
  const always = fitting.filter((kind) => temperatureMeets(find, kinds[kind]![0]!) === 'always')
  return {
    first: bagged.volumeMl,
    second: bagged.massG,
    sort,
    kinds: always.length > 0 ? always : fitting,
    rank: find.rank,
  }
}

function sortsOf(figures: PackFigures) {
  const made: SortMade[] = []
  const known = new Map<string, number>()
  const numbered = (key: string, sort: () => SortMade) => {
    const before = known.get(key)
    if (before !== undefined) return before
    known.set(key, made.length)
    return made.push(sort()) - 1
  }
  return {
    of: (find: PackFind) => {
      const { min, max } = reachable(find, figures)
      return numbered(`${sharingKey(find)} ${min} ${max}`, () => ({ low: min, high: max, like: find }))
    },
    ofTarget: (target: Band) => {
      const { min, max } = reachable({ keep: 'dry', rhPercent: target }, figures)
      return numbered(`target ${min} ${max}`, () => ({ low: min, high: max, like: null }))
    },
    all: (): readonly SortMade[] => made,
  }
}

function sharing(sorts: readonly SortMade[], figures: PackFigures): Uint8Array {
  const count = sorts.length
  return Uint8Array.from({ length: count * count }, (_, at) => {
    const a = sorts[Math.floor(at / count)]!
    const b = sorts[at % count]!
    const together = a.like === null || b.like === null || mayLieTogether(a.like, b.like)
    return together && meet({ min: a.low, max: a.high }, { min: b.low, max: b.high }, figures) ? 1 : 0
  })
}

/** Grams, so that sums come out the same in whatever order. Asked for the same few bands over and over. */
function gelInGrams(kinds: readonly (readonly PackBox[])[], gelFor: GelFor): BinProblem['upkeep'] {
  const known = new Map<string, number>()
  return (kind, low, high) => {
    const key = `${kind} ${low} ${high}`
    const before = known.get(key)
    if (before !== undefined) return before
    const box = kinds[kind]![0]!
    const band = { min: low, max: high }
    const grams = box.kind === 'tub' || roomSuits(band, box) ? 0 : Math.round(gelFor(box, band) * 1000)
    known.set(key, grams)
    return grams
  }
}
