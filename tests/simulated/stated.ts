import { figureValue } from '../../lib/boxes/figure-value.ts'
import { tradePrior } from '../../lib/boxes/leak-figures.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import type { Stated } from './drawn-box.ts'

/** What the figures state, for the simulators as for the code under test: ranges, of which each draws or learns the truth. */
export const prior = tradePrior(knowledge)

export const stated: Stated = {
  allowance: prior.allowance,
  airChangesPerDay: prior.airChangesPerDay,
  reservoirGPerKgPercent: {
    low: figureValue(knowledge, 'gel-reservoir-low'),
    nominal: figureValue(knowledge, 'gel-reservoir'),
    high: figureValue(knowledge, 'gel-reservoir-high'),
  },
}
