import type { PackBox, PackFigures, PackFind } from './pack-find.ts'
import { refusal } from './pack-place.ts'
import type { Stays } from './pack-proposal.ts'
import { mayLieTogether, meet, reachable } from './pack-sharing.ts'
import { baggedOf } from './pack-size.ts'

/** How a new packing begins: whoever is well where it is stays, or all but what nobody may touch is packed anew. */
export type Begin = 'as-it-stands' | 'afresh'

/** What stays where it is. */
export interface Residents {
  readonly stays: readonly Stays[]
  /** Boxes nothing is put into and nothing is taken from, or nothing is put beside. */
  readonly closed: ReadonlySet<PackBox>
  /** Boxes that stay in use, with the finds that are well there. */
  readonly opened: ReadonlyMap<PackBox, readonly PackFind[]>
}

/** `leftThere`: finds for which no box was found, so that they lie where they lay and nothing can be put beside them. */
export function residentsOf(
  finds: readonly PackFind[],
  boxes: readonly PackBox[],
  begin: Begin,
  figures: PackFigures,
  leftThere: ReadonlySet<string>,
): Residents {
  const byName = new Map(boxes.flatMap((box) => (box.name === null ? [] : [[box.name, box] as const])))
  const stays: Stays[] = []
  const closed = new Set<PackBox>()
  const opened = new Map<PackBox, readonly PackFind[]>()
  for (const box of boxes) if (box.stopped) closed.add(box)
  for (const [name, own] of Map.groupBy(finds, ({ box }) => box)) {
    if (name === null) continue
    const box = byName.get(name)
    const stopped = box?.stopped === true || own.some((find) => find.stopped)
    for (const find of own) {
      if (stopped) stays.push({ findId: find.id, box: name, why: find.stopped ? 'stopped' : 'beside-a-stop' })
      else if (undecided(find)) stays.push({ findId: find.id, box: name, why: 'no-one-band' })
    }
    if (box === undefined) continue
    if (stopped || own.some((find) => undecided(find) || leftThere.has(find.id))) closed.add(box)
    // Beside what goes on lying there the others are as well as they were; there is nothing to be gained by moving them.
    const shared = own.some(({ id }) => leftThere.has(id))
    if (stopped || (begin === 'afresh' && !shared)) continue
    const well = agreeing(
      own.filter((find) => !undecided(find) && !leftThere.has(find.id) && suits(find, box, figures)),
      figures,
    )
    if (closed.has(box))
      for (const find of well) stays.push({ findId: find.id, box: name, why: 'well-there' })
    else if (well.length > 0) opened.set(box, well)
  }
  return { stays, closed, opened }
}

/** No one band suits it; it is no more ours to move than to say where it stands. */
export const undecided = ({ keep, rhPercent }: PackFind): boolean => keep !== 'wet' && rhPercent === null

/** It lies there already, so its size fits; what matters is what the box is kept at and where it stands. */
function suits(find: PackFind, box: PackBox, figures: PackFigures): boolean {
  const why = refusal(find, baggedOf(find.measured, figures), box, figures)
  const onlySize = ['too-long', 'too-big', 'too-heavy', 'no-box']
  if (why !== null && !(onlySize.includes(why.code) && (box.kind === 'tub') === (find.keep === 'wet')))
    return false
  if (find.keep === 'wet' || box.targetRhPercent === null) return true
  const { min, max } = find.rhPercent ?? { min: 0, max: 100 }
  return box.targetRhPercent.max <= max && box.targetRhPercent.min >= min
}

/** The most finds that may lie together, found from each of them in turn; the others have to go. */
function agreeing(finds: readonly PackFind[], figures: PackFigures): readonly PackFind[] {
  let best: readonly PackFind[] = []
  for (const start of finds) {
    if (best.includes(start)) continue
    const group = [start]
    for (const other of finds) {
      const joins = (one: PackFind) =>
        mayLieTogether(one, other) && meet(reachable(one, figures), reachable(other, figures), figures)
      if (other !== start && group.every(joins)) group.push(other)
    }
    if (group.length > best.length) best = group
  }
  return finds.filter((find) => best.includes(find))
}
