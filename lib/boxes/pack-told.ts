import { sortKey } from '../base/sort-key.ts'
import type { Packing, PackedBin } from './bin-problem.ts'
import { fewestBins } from './bins-bound.ts'
import type { PackBox, PackFind } from './pack-find.ts'
import { bestMatch } from './pack-match.ts'
import { temperatureMeets } from './pack-place.ts'
import type { PackProblem } from './pack-problem.ts'
import type { Heed, Nowhere, PackProposal, ProposedBox, ProposedMove } from './pack-proposal.ts'
import { baggedOf } from './pack-size.ts'
import { whyNowhere } from './pack-why.ts'
import type { PackTask } from './pack.ts'

/** A packing of the task in the words of the store: boxes with their finds, moves, and why some find no box. */
export function proposalOf(task: PackTask, packing: Packing): PackProposal {
  const { residents, problem, store, leftThere } = task
  const place = walkAlong(store.boxes)
  const named = boxesOf(problem, packing)
  const boxes = named.map(({ bin, box, number }) => proposedBox(problem, bin, box, number))
  const placed = packing.bins.flatMap(({ items }) => items)
  const lying = store.finds.filter(({ id }) => leftThere.has(id))
  const untouched = new Set([...residents.stays, ...lying].map(({ box }) => box)).size
  const homeless = packing.left.flatMap((item) => problem.finds[item] ?? [])
  return {
    boxes,
    moves: movesOf(problem, named, store.boxes),
    nowhere: [
      ...task.barred,
      ...lying.map((find) => ({ findId: find.id, still: find.box, why: whyOf(find, task) })),
      ...homeless.map((find) => ({ findId: find.id, still: null, why: whyOf(find, task) })),
    ],
    stays: residents.stays.toSorted((a, b) => place(a.box) - place(b.box)),
    used: boxes.length + untouched,
    atLeast: fewestBins(problem.bins, placed) + untouched,
    gelKg: boxes.reduce((sum, { gelKg }) => sum + gelKg, 0),
  }
}

/** Boxes that stay closed count as full: they would do, and cannot be had. */
function whyOf(find: PackFind, { store: { boxes, figures } }: PackTask): readonly Nowhere[] {
  return whyNowhere(find, baggedOf(find.measured, figures), boxes, figures)
}

interface NamedBin {
  readonly bin: PackedBin
  readonly box: PackBox
  readonly number: number | null
}

/** Alike boxes are given out so that as many finds as can be stay where they are; what is still to be had comes last. */
function boxesOf(problem: PackProblem, { bins }: Packing): readonly NamedBin[] {
  const opened = bins.flatMap((bin): readonly NamedBin[] =>
    bin.opened === null ? [] : [{ bin, box: problem.opened[bin.opened]!, number: null }],
  )
  const fresh = problem.kinds.flatMap((alike, kind): readonly NamedBin[] => {
    const own = bins.filter((bin) => bin.kind === kind && bin.opened === null)
    const there = alike.filter((box) => box.name !== null && !problem.opened.includes(box))
    if (there.length === 0) return own.map((bin, at) => ({ bin, box: alike[0]!, number: at + 1 }))
    const stay = own.map(({ items }) => {
      const homes = Map.groupBy(items, (item) => problem.finds[item]?.box ?? null)
      return there.map(({ name }) => homes.get(name)?.length ?? 0)
    })
    const match = bestMatch(stay)
    return own.map((bin, at) => ({ bin, box: there[match[at]!]!, number: null }))
  })
  return [...opened, ...fresh].toSorted((a, b) => byShelf(a.box, b.box) || (a.number ?? 0) - (b.number ?? 0))
}

const shelfKey = ({ room, shelf, name, model }: PackBox): string =>
  [room, shelf, name ?? model].map((word) => sortKey(word)).join(' ')

/** Boxes in the store first, as one walks along them; then what is to be had. */
export function byShelf(a: PackBox, b: PackBox): number {
  if ((a.name === null) !== (b.name === null)) return a.name === null ? 1 : -1
  const [one, other] = [shelfKey(a), shelfKey(b)]
  return one < other ? -1 : Number(one > other)
}

function proposedBox(problem: PackProblem, bin: PackedBin, box: PackBox, number: number | null): ProposedBox {
  const items = bin.items.filter((item) => item < problem.finds.length)
  const finds = items.map((item) => problem.finds[item]!)
  const high = lowest(finds, ({ rhPercent }) => rhPercent?.max ?? 100)
  const low = lowest(finds, ({ rhPercent }) => -(rhPercent?.min ?? 0))
  const size = problem.bins.kinds[bin.kind]!
  const sum = (of: (item: number) => number) => items.reduce((all, item) => all + of(item), 0)
  const sorts = bin.items.map((item) => problem.bins.sorts[problem.bins.items[item]!.sort]!)
  const kept = {
    low: Math.max(...sorts.map((sort) => sort.low)),
    high: Math.min(...sorts.map((sort) => sort.high)),
  }
  const limits = { min: low?.rhPercent?.min ?? 0, max: high?.rhPercent?.max ?? 100 }
  return {
    box,
    number,
    findIds: finds.toSorted((a, b) => (sortKey(a.name) < sortKey(b.name) ? -1 : 1)).map(({ id }) => id),
    band: box.kind === 'tub' ? null : limits,
    decidedBy: { high: limits.max < 100 ? high!.id : null, low: limits.min > 0 ? low!.id : null },
    dark: finds.some(({ dark }) => dark),
    filled: Math.max(
      sum((item) => problem.bagged[item]!.volumeMl) / Math.max(1, size.first),
      sum((item) => problem.bagged[item]!.massG) / Math.max(1, size.second),
    ),
    massKg: sum((item) => problem.bagged[item]!.massG) / 1000,
    gelKg: problem.bins.upkeep(bin.kind, kept.low, kept.high) / 1000,
  }
}

function lowest(finds: readonly PackFind[], of: (find: PackFind) => number): PackFind | undefined {
  return finds.toSorted((a, b) => of(a) - of(b) || (sortKey(a.name) < sortKey(b.name) ? -1 : 1))[0]
}

/** Where one comes to a box by its name, walking along the shelves; to what stands in no list, and to no box, last. */
function walkAlong(boxes: readonly PackBox[]): (name: string | null) => number {
  const walk = new Map(boxes.toSorted(byShelf).map((box, at) => [box.name, at]))
  return (name) => (name === null ? boxes.length + 1 : (walk.get(name) ?? boxes.length))
}

/** Who goes where, in the order one walks along the boxes things come out of; what has no box comes last. */
function movesOf(
  problem: PackProblem,
  named: readonly NamedBin[],
  boxes: readonly PackBox[],
): readonly ProposedMove[] {
  const tubs = new Set(boxes.flatMap(({ name, kind }) => (kind === 'tub' && name !== null ? [name] : [])))
  const place = walkAlong(boxes)
  const moves = named.flatMap(({ bin, box }, to) =>
    bin.items.flatMap((item) => {
      const find = problem.finds[item]
      if (find === undefined || (box.name !== null && find.box === box.name)) return []
      return [{ find, move: { findId: find.id, from: find.box, to, heed: heedOf(problem, item, box, tubs) } }]
    }),
  )
  return moves
    .toSorted(
      (a, b) =>
        place(a.move.from) - place(b.move.from) ||
        a.move.to - b.move.to ||
        (sortKey(a.find.name) < sortKey(b.find.name) ? -1 : 1),
    )
    .map(({ move }) => move)
}

function heedOf(
  problem: PackProblem,
  item: number,
  box: PackBox,
  tubs: ReadonlySet<string | null>,
): readonly Heed[] {
  const find = problem.finds[item]!
  const damp = box.kind !== 'tub' && (find.dryFirst || tubs.has(find.box))
  return [
    ...(damp ? (['dry-first'] as const) : []),
    ...(find.askBeforeMoving ? (['ask-first'] as const) : []),
    ...(problem.bagged[item]!.supposed ? (['size-supposed'] as const) : []),
    ...(box.insideMm === null ? (['try-size'] as const) : []),
    ...(temperatureMeets(find, box) === 'always' ? [] : (['room-temperature'] as const)),
  ]
}
