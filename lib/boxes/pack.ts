import type { BinProblem, Packing } from './bin-problem.ts'
import type { GelFor, PackBox, PackFigures, PackFind } from './pack-find.ts'
import { packProblem, type PackProblem } from './pack-problem.ts'
import type { Nowhere, PackProposal } from './pack-proposal.ts'
import { residentsOf, undecided, type Begin, type Residents } from './pack-residents.ts'

export interface StoreToPack {
  readonly finds: readonly PackFind[]
  readonly boxes: readonly PackBox[]
  readonly begin: Begin
  readonly figures: PackFigures
  readonly gelFor: GelFor
}

/** What is to be packed, as a problem that several ways of packing can take up. */
export interface PackTask {
  readonly store: StoreToPack
  readonly residents: Residents
  readonly problem: PackProblem
  /** Finds that are not packed at all, and why. */
  readonly barred: PackProposal['nowhere']
  /** Finds for which no box was found before: they lie where they lay. */
  readonly leftThere: ReadonlySet<string>
}

export function packTask(store: StoreToPack, leftThere: ReadonlySet<string> = new Set()): PackTask {
  const { finds, boxes, begin, figures, gelFor } = store
  const residents = residentsOf(finds, boxes, begin, figures, leftThere)
  const staying = new Set(residents.stays.map(({ findId }) => findId))
  const going = finds.filter(({ id }) => !staying.has(id))
  const barred = going.flatMap((find) => {
    const why = barredFor(find)
    return why === null ? [] : [{ findId: find.id, still: null, why: [why] }]
  })
  const toPack = going.filter((find) => barredFor(find) === null && !leftThere.has(find.id))
  const usable = boxes.filter((box) => !residents.closed.has(box))
  return {
    store,
    residents,
    problem: packProblem(toPack, usable, residents, figures, gelFor),
    barred,
    leftThere,
  }
}

function barredFor(find: PackFind): Nowhere | null {
  if (find.stopped) return { code: 'stopped' }
  return undecided(find) ? { code: 'no-one-band', holdingRhPercent: find.holdingRhPercent } : null
}

export interface Packed {
  readonly task: PackTask
  readonly packing: Packing
}

/**
 * A store packed: what finds no box goes on lying where it lies, so nothing else can be put there, and the rest is packed
 * again without those boxes, until that holds of all.
 */
export function packStoreBoxes(store: StoreToPack, pack: (problem: BinProblem) => Packing): Packed {
  const listed = new Set(store.boxes.flatMap(({ name }) => name ?? []))
  const leftThere = new Set<string>()
  for (;;) {
    const task = packTask(store, leftThere)
    const { finds, bins } = task.problem
    const packing = pack(bins)
    const left = packing.left.flatMap((item) => finds[item] ?? [])
    const lying = left.filter(({ box }) => box !== null && listed.has(box))
    if (lying.length === 0) return { task, packing }
    for (const { id } of lying) leftThere.add(id)
  }
}
