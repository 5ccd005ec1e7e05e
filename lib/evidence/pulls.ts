import type { SourceRef } from '../knowledge/knowledge.ts'
import { likelihoodBeside } from './beside.ts'
import { observed, type GroupSeen } from './group-seen.ts'
import { scratchOf, type Joint } from './joint.ts'

/** A thing seen that speaks for an explanation, or against it. */
export interface Pull {
  readonly group: string
  readonly label: string
  readonly by: string
  /** The state that showed, or those of which one must have; `rest` for none of the states. */
  readonly states: readonly string[]
  readonly says: readonly string[]
  readonly strength: Strength
  /** How many times as likely it is as where one of the others is true; below one where it speaks against. */
  readonly times: number
  /** Ways in which the method may have gone wrong here. */
  readonly failures: readonly string[]
  readonly sources: readonly SourceRef[]
  readonly figures: readonly string[]
}

export type Strength = 'slight' | 'clear' | 'strong'

/** Times as likely from which a thing counts at all, clearly, strongly. A house rule after the usual readings of such ratios. */
const from = { slight: 1.25, clear: 3, strong: 10 } as const

function strengthOf(times: number): Strength | null {
  const away = Math.max(times, 1 / times)
  if (away < from.slight) return null
  return away >= from.strong ? 'strong' : away >= from.clear ? 'clear' : 'slight'
}

/**
 * How many times as likely what is seen of a group is under each rival as under the others, each of them counting by how
 * likely all the rest of the evidence makes it. So a group speaks for a rival exactly where leaving it out would lower it.
 */
function timesOf({ groups, weights, tables }: Joint, group: number, scratch: Float64Array): Float64Array {
  const wide = tables.rivals.length
  const likely = likelihoodBeside(groups, group, groups[group]!.possible, wide, scratch)
  const withIt = new Float64Array(wide)
  const without = new Float64Array(wide)
  for (let at = 0; at < weights.length;) {
    for (let rival = 0; rival < wide; rival++, at++) {
      withIt[rival]! += weights[at]!
      without[rival]! += weights[at]! / likely[at]!
    }
  }
  return withIt.map(
    (own, rival) => own / othersOf(withIt, rival) / (without[rival]! / othersOf(without, rival)),
  )
}

/** Summed and not taken from one, which would leave nothing of what is hardly likely. */
const othersOf = (shares: Float64Array, but: number) =>
  shares.reduce((sum, share, rival) => (rival === but ? sum : sum + share), 0)

function told({ table: { group }, possible, mistaken }: GroupSeen): Omit<Pull, 'strength' | 'times'> {
  const shown = possible.map((state) => group.states[state] ?? null)
  return {
    group: group.id,
    label: group.label,
    by: group.by,
    states: shown.map((state) => state?.id ?? 'rest'),
    says: shown.map((state) => state?.says ?? group.rest.says),
    failures:
      mistaken()
        ?.failures.filter(({ as }) => shown.some((state) => (state?.id ?? 'rest') === as))
        .map(({ id }) => id) ?? [],
    sources: shown.flatMap((state) => state?.sources ?? []),
    figures: [...new Set(shown.flatMap((state) => state?.figures ?? []))],
  }
}

/** What speaks for each rival and against it, the strongest first. */
export function pullsOf(joint: Joint): readonly { for: readonly Pull[]; against: readonly Pull[] }[] {
  const { tables, groups, weights } = joint
  const found = tables.rivals.map(() => ({ for: [] as Pull[], against: [] as Pull[] }))
  const scratch = scratchOf(weights.length)
  for (const [group, seen] of groups.entries()) {
    if (!observed(seen)) continue
    const said = told(seen)
    timesOf(joint, group, scratch).forEach((times, rival) => {
      const strength = strengthOf(times)
      if (strength !== null) found[rival]![times > 1 ? 'for' : 'against'].push({ ...said, strength, times })
    })
  }
  for (const rival of found) {
    rival.for.sort((a, b) => b.times - a.times)
    rival.against.sort((a, b) => a.times - b.times)
  }
  return found
}
