import { departureOf } from '../../lib/boxes/departure.ts'
import { forecast } from '../../lib/boxes/forecast.ts'
import { learnLeak } from '../../lib/boxes/learn.ts'
import { logNext } from '../../lib/boxes/log-next.ts'
import { poolLeaks } from '../../lib/boxes/pooled.ts'
import { renewalOf } from '../../lib/boxes/renewal.ts'
import { drawnBox, logged, walkedBy } from '../simulated/drawn-box.ts'
import { prior, stated } from '../simulated/stated.ts'

export interface BoxFigures {
  /** A box with a year of a logger: its leak, and a year foretold [ms, median]. */
  readonly learnMilliseconds: number
  readonly forecastMilliseconds: number
  readonly departureMilliseconds: number
  /** A store, one box in ten under a logger, the others walked by four times a year: everything of every box, once [s]. */
  readonly boxes: number
  readonly storeSeconds: number
  readonly poolSeconds: number
  readonly logNextSeconds: number
}

const seconds = (since: number) => (performance.now() - since) / 1000
const median = (numbers: readonly number[]) => numbers.toSorted((a, b) => a - b)[numbers.length >> 1]!

function timed<Value>(into: number[], work: () => Value): Value {
  const since = performance.now()
  const value = work()
  into.push(performance.now() - since)
  return value
}

export function boxFigures(boxes = 500): BoxFigures {
  const [learn, ahead, depart]: [number[], number[], number[]] = [[], [], []]
  const store = Array.from({ length: boxes }, (_, at) => {
    const drawn = drawnBox(60_000 + at, stated, { gel: 'straight', days: 380 })
    const sightings = (at % 10 === 0 ? logged : walkedBy)(drawn, stated, 365)
    const box = { ...drawn.box, model: `model ${at % 12}`, room: `room ${at % 4}` }
    return { box, surroundings: drawn.surroundings, sightings, logged: at % 10 === 0 }
  })
  for (const { box, surroundings, sightings } of store.filter((one) => one.logged)) {
    const estimate = timed(learn, () => learnLeak(box, surroundings, sightings, prior))
    timed(ahead, () => forecast(box, surroundings, estimate, { from: estimate.asOf, days: 365 }))
    timed(depart, () => departureOf(box, surroundings, sightings, prior))
  }
  const begun = performance.now()
  const learnt = store.map((one) => ({
    ...one,
    estimate: learnLeak(one.box, one.surroundings, one.sightings, prior),
  }))
  const pooling = performance.now()
  const priors = poolLeaks(learnt, prior)
  const poolSeconds = seconds(pooling)
  for (const { box, surroundings, sightings } of learnt) {
    const own = priors.get(box.name)!
    const estimate = learnLeak(box, surroundings, sightings, own)
    renewalOf(box, surroundings, estimate, { from: estimate.asOf })
    departureOf(box, surroundings, sightings, own)
  }
  const storeSeconds = seconds(begun)
  const choosing = performance.now()
  const today = Math.max(...learnt.map(({ estimate }) => estimate.asOf))
  logNext(
    learnt.map((one) => ({ ...one, findsAtRisk: 3 })),
    { today, most: 6, errorRhPercent: 3 },
  )
  return {
    learnMilliseconds: median(learn),
    forecastMilliseconds: median(ahead),
    departureMilliseconds: median(depart),
    boxes,
    storeSeconds,
    poolSeconds,
    logNextSeconds: seconds(choosing),
  }
}
