import type { ClosedBox, Day, Quantiles, Surroundings } from './box.ts'
import type { Foreseen } from './forecast-course.ts'
import { timeToLimit } from './forecast-limit.ts'
import { pacesOf } from './learn-rate.ts'
import { setUnknown, unknowns, type Law } from './learn-state.ts'
import { momentsOf, spreadOf } from './learn-spread.ts'
import type { Way } from './learn-ways.ts'

/** A box as it will be with fresh gel. */
export interface Fresh {
  readonly box: ClosedBox
  readonly foreseen: Foreseen
}

export interface FreshAsked {
  readonly gelKg: number
  readonly on: Day
}

/** The box on the day its gel is renewed, with so much of it: the leak and the room as they are known, the gel at its start. */
export function withFreshGel(box: ClosedBox, foreseen: Foreseen, { gelKg, on }: FreshAsked): Fresh {
  const fresh = { ...box, gelKg, startedOn: on }
  const ways = foreseen.ways.map((way) => {
    const paces = pacesOf(fresh, foreseen.before, way.character)
    const slower = mean(way.paces.perRate.map((before, at) => before / paces.perRate[at]!))
    return {
      ...way,
      paces,
      states: way.states.map((state) => ({
        ...state,
        ratePerDay: state.ratePerDay * slower,
        law: begunAnew(state.law, fresh),
      })),
    } satisfies Way
  })
  return { box: fresh, foreseen: { ...foreseen, ways, asOf: on } }
}

const mean = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0) / numbers.length

/** What was learnt of the room stays known; the inside begins as fresh gel leaves it, whatever it was before. */
function begunAnew(law: Law, { startRhPercent }: ClosedBox): Law {
  const start = momentsOf(spreadOf(startRhPercent))
  return setUnknown(law, unknowns.inside, start.mean, start.deviation)
}

/** How long fresh gel lasts until the limit [d]: early, likely, late; null beyond what is looked ahead. */
export function spanOfGel(
  box: ClosedBox,
  surroundings: Surroundings,
  foreseen: Foreseen,
  ask: FreshAsked & { readonly days?: number },
): { readonly [Key in keyof Quantiles]: number | null } | null {
  if (box.limitRhPercent === null) return null
  const fresh = withFreshGel(box, foreseen, ask)
  const limit = { limitRhPercent: box.limitRhPercent, from: ask.on }
  const crossing = timeToLimit(
    fresh.box,
    surroundings,
    fresh.foreseen,
    ask.days === undefined ? limit : { ...limit, days: ask.days },
  )
  const after = (day: Day | null) => (day === null ? null : day - ask.on)
  return { p10: after(crossing.p10), p50: after(crossing.p50), p90: after(crossing.p90) }
}
