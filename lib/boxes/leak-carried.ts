import type { LeakPrior } from './leak-prior.ts'
import type { LeakEstimate } from './learn.ts'
import { logSpreadOf, rangeOfSpread } from './learn-spread.ts'

/** What a box told before its gel was renewed, as a prior for the time since: its lid was opened and closed again. */
export function carriedOver({ airChangesPerDay, allowance }: LeakEstimate): LeakPrior {
  const { nominal, below, above } = logSpreadOf(airChangesPerDay)
  const wider = (deviation: number) => Math.hypot(deviation, allowance.seatingSpread)
  const logs = rangeOfSpread({ nominal, below: wider(below), above: wider(above) })
  return {
    airChangesPerDay: { low: Math.exp(logs.low), nominal: Math.exp(logs.nominal), high: Math.exp(logs.high) },
    from: 'earlier-gel',
    allowance,
  }
}
