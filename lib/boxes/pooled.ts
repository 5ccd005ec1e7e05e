import type { ClosedBox, Range, Surroundings } from './box.ts'
import { quantilesOf } from './forecast-mixture.ts'
import type { LeakPrior } from './leak-prior.ts'
import type { LeakEstimate } from './learn.ts'
import { logDensity, logSpreadOf, logSum, momentsOf, type Spread } from './learn-spread.ts'
import { asFromElsewhere } from './pooled-shared.ts'
import { likelihoodOf, shared, type Likeness } from './pooled-likelihood.ts'

/** A box with what its own sightings say of it, learnt from the trade's range and from nothing that was pooled before. */
export interface LearntBox {
  readonly box: ClosedBox
  readonly surroundings: Surroundings
  readonly estimate: LeakEstimate
}

/** Times the usual spread that boxes of one model may show; each as likely as the next. */
const spreads = [0.35, 0.7, 1.2, 2]
const middles = 17
/** So far out a middle is looked for, in standard deviations. */
const outermost = 3
/** However much boxes of one model differ, models differ too: at least by this part of the trade's range. */
const leastBetweenModels = 0.4

/**
 * What boxes of one model say of each other: for every box the prior that the others make for it, by the box's name. Boxes
 * of the same room count; where none of them was ever read, those of other rooms. A box nobody read stands among them with
 * an estimate from no sightings.
 */
export function poolLeaks(boxes: readonly LearntBox[], trade: LeakPrior): ReadonlyMap<string, LeakPrior> {
  const likenesses = likenessesOf(trade)
  const ofModels = Map.groupBy(boxes, ({ box }) => box.model)
  const priors = [...ofModels].flatMap(([model, ofModel]) => {
    if (model === null) return ofModel.map(({ box }) => [box.name, trade] as const)
    const rooms = [...Map.groupBy(ofModel, ({ box }) => box.room).values()].map((ofRoom) =>
      ofRoom.map((one) => ({
        name: one.box.name,
        box: one.box,
        surroundings: one.surroundings,
        own: { alone: one.estimate.airChangesPerDay, before: one.estimate.before },
        read: isRead(one),
        logs: isRead(one)
          ? likelihoodOf(one.estimate.ways, one.surroundings.meanRhPercent, likenesses)
          : null,
      })),
    )
    return rooms.flatMap((room) =>
      room.map(({ name, box, surroundings, own }) => {
        const others = room.filter((one) => one.read && one.name !== name)
        const elsewhere = rooms.filter((one) => one !== room).map((one) => one.filter(({ read }) => read))
        const groups = others.length > 0 ? [others] : elsewhere.filter((one) => one.length > 0)
        if (groups.length === 0) return [name, trade] as const
        const airChangesPerDay = asFromElsewhere(leakOf(groups, likenesses), box, surroundings, own)
        const from = others.length > 0 ? ('like-boxes' as const) : ('like-boxes-elsewhere' as const)
        return [name, { ...trade, airChangesPerDay, from }] as const
      }),
    )
  })
  return new Map(priors)
}

const isRead = ({ estimate: { sightings } }: LearntBox) => sightings.logger + sightings.rounds > 0

interface Weighted extends Likeness {
  readonly logPrior: number
}

/** What a model may be like before any of its boxes was read: together they are as the trade's range. */
function likenessesOf({ airChangesPerDay, allowance }: LeakPrior): readonly Weighted[] {
  const trade = logSpreadOf(airChangesPerDay)
  const usual = allowance.likeBoxesSpread
  const own = Math.max(
    leastBetweenModels,
    Math.sqrt(Math.max(0, 1 - (usual / momentsOf(trade).deviation) ** 2)),
  )
  const models: Spread = { nominal: trade.nominal, below: trade.below * own, above: trade.above * own }
  return spreads.flatMap((times) =>
    Array.from({ length: middles }, (_, at) => {
      const z = outermost * ((2 * at) / (middles - 1) - 1)
      const middle = models.nominal + z * (z < 0 ? models.below : models.above)
      const width = z < 0 ? models.below : models.above
      return { middle, spread: usual * times, logPrior: logDensity(models, middle) + Math.log(width) }
    }),
  )
}

/** The leak to expect of one more box of the model. */
function leakOf(
  rooms: readonly (readonly { readonly logs: Float64Array | null }[])[],
  likenesses: readonly Weighted[],
): Range {
  const perRoom = shared.reservoirs.length * likenesses.length
  const ofRooms = rooms.map((boxes) => {
    const sums = new Float64Array(shared.rooms.length * perRoom)
    for (const { logs } of boxes) for (let at = 0; at < sums.length; at += 1) sums[at]! += logs![at]!
    // Whatever mean the room had, all of its boxes stood in it.
    return Float64Array.from({ length: perRoom }, (_, at) =>
      logSum(shared.rooms.map(({ weight }, room) => Math.log(weight) + sums[room * perRoom + at]!)),
    )
  })
  const logs = likenesses.map(({ logPrior }, likeness) =>
    logSum(
      shared.reservoirs.map((_, reservoir) =>
        ofRooms.reduce((sum, room) => sum + room[reservoir * likenesses.length + likeness]!, logPrior),
      ),
    ),
  )
  const whole = logSum(logs)
  const { p10, p50, p90 } = quantilesOf({
    weights: Float64Array.from(logs, (log) => Math.exp(log - whole)),
    means: Float64Array.from(likenesses, ({ middle }) => middle),
    deviations: Float64Array.from(likenesses, ({ spread }) => spread),
  })
  return { low: Math.exp(p10), nominal: Math.exp(p50), high: Math.exp(p90) }
}
