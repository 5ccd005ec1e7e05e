import type { Cell, Decision, Knowledge } from '../knowledge/knowledge.ts'
import { standing } from './base.ts'
import { toldBox, where, whereAll, wholeBox, type Box } from './box.ts'
import { dimensionsOf, domainOf, type Dimension } from './dimension.ts'

/** All that a decision may meet, as boxes over its dimensions. */
export interface Worlds {
  readonly dimensions: readonly Dimension[]
  readonly boxes: readonly Box[]
}

/** Worlds where every fact the decision reads is told. */
export function toldWorlds(decision: Decision, knowledge: Knowledge): Worlds {
  return worlds(decision, knowledge, toldBox)
}

/** The same and those where somebody could not tell. */
export function allWorlds(decision: Decision, knowledge: Knowledge): Worlds {
  return worlds(decision, knowledge, wholeBox)
}

function worlds(
  decision: Decision,
  knowledge: Knowledge,
  start: (dimensions: readonly Dimension[]) => Box,
): Worlds {
  const dimensions = dimensionsOf(decision, knowledge)
  let boxes: readonly Box[] = [start(dimensions)]
  for (const { fact, many } of dimensions) {
    const earlier = knowledge.decisions.find(({ id }) => id === fact)
    if (earlier === undefined || many || earlier.policy === 'collect') continue
    boxes = boxes.flatMap((box) => asAnswered(box, earlier, decision, dimensions, knowledge))
  }
  return { dimensions, boxes }
}

/**
 * An earlier decision answers only where one of its rules can hold: wood is never *active*. Taking that from its rules
 * keeps worlds out that cannot be; it keeps none out that can, since it looks only at facts both decisions read alike.
 */
function asAnswered(
  box: Box,
  earlier: Decision,
  reader: Decision,
  dimensions: readonly Dimension[],
  knowledge: Knowledge,
): Box[] {
  const shared = (cell: Cell): boolean => {
    const domain = domainOf(cell.fact, knowledge)
    const alike = domain?.each === 'find' || earlier.each === reader.each
    return alike && domain?.kind === 'values' && dimensions.some(({ fact }) => fact === cell.fact)
  }
  const regions = new Map<string, { cells: readonly Cell[]; answers: Set<string> }>()
  for (const rule of standing(earlier)) {
    if (rule.then.kind !== 'answer') continue
    const cells = rule.when.filter(shared).flatMap((cell) => loosened(cell, dimensions))
    const key = JSON.stringify(cells)
    const region = regions.get(key) ?? { cells, answers: new Set<string>() }
    region.answers.add(rule.then.answer)
    regions.set(key, region)
  }
  return [...regions.values()].flatMap(({ cells, answers }) => {
    const answered = where(box, { fact: earlier.id, any: [...answers] }, dimensions)
    return (answered === null ? null : whereAll(answered, cells, dimensions)) ?? []
  })
}

/** Where the shared fact could not be told, a protective rule may have been taken to hold all the same. */
function loosened(cell: Cell, dimensions: readonly Dimension[]): Cell[] {
  if ('any' in cell) return [{ fact: cell.fact, any: [...new Set([...cell.any, 'unknown'])].toSorted() }]
  const dimension = dimensions.find(({ fact }) => fact === cell.fact)
  if (dimension === undefined || dimension.many || 'interval' in cell) return []
  return [{ fact: cell.fact, any: dimension.atoms.filter((atom) => !cell.none.includes(atom)) }]
}
