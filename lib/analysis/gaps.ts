import type { Finding } from '../knowledge/flaw.ts'
import type { Decision, Knowledge } from '../knowledge/knowledge.ts'
import { standing, type Base } from './base.ts'
import { remainder } from './box.ts'
import { witness } from './witness.ts'
import { toldWorlds } from './worlds.ts'

const mostBoxes = 20_000
const mostShown = 6

/** With every fact told, a decision that gives one answer or band has a rule that holds, or says it is not covered. */
export function gaps({ knowledge }: Base): Finding[] {
  return knowledge.decisions
    .filter(({ policy }) => policy !== 'collect')
    .flatMap((decision) => gapsOf(decision, knowledge))
}

function gapsOf(decision: Decision, knowledge: Knowledge): Finding[] {
  const { dimensions, boxes } = toldWorlds(decision, knowledge)
  const at = `decision ${decision.id}`
  // Retired rules are kept for old plans; for new ones they cover nothing.
  const regions = [...standing(decision), ...decision.notCovered].map(({ when }) => when)
  const left = remainder(boxes, widestFirst(regions), dimensions, mostBoxes)
  if (left === null) {
    return [
      { code: 'gap-too-wide', severity: 'error', at, about: { decision: decision.id, cells: mostBoxes } },
    ]
  }
  const shown = new Map(
    left.map((box) => [JSON.stringify(witness(box, dimensions)), witness(box, dimensions)]),
  )
  const more = Math.max(0, shown.size - mostShown)
  return [...shown.values()].slice(0, mostShown).map((facts, index) => ({
    code: 'gap',
    severity: 'error',
    at,
    about: { decision: decision.id, facts, more: index === 0 ? more : 0 },
  }))
}

/** Regions with few cells take much away at once and leave fewer boxes to carry on. */
function widestFirst<Region extends { readonly length: number }>(regions: readonly Region[]): Region[] {
  return regions.toSorted((a, b) => a.length - b.length)
}
