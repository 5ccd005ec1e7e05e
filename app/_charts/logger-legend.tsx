import type { ChartGround, ChartView } from '../../lib/papers/store-chart.ts'
import { numberWords } from '../../lib/wording/band.ts'
import { Legend, type LegendEntry } from './legend.tsx'

/** Only what this view shows. */
export function LoggerLegend({ ground, view }: { readonly ground: ChartGround; readonly view: ChartView }) {
  const { band, limitRhPercent, floorRhPercent } = ground
  const entries: LegendEntry[] = [
    { mark: 'extent', words: 'from the lowest to the highest reading of each stretch' },
  ]
  if (band !== null) entries.push({ mark: 'needed', words: 'the band needed here' })
  if (limitRhPercent !== null)
    entries.push({ mark: 'limit', words: `the limit, ${numberWords(limitRhPercent)} %` })
  if (view.above.length > 0) entries.push({ mark: 'above', words: 'along the top: time above the limit' })
  if (view.gaps.length > 0) entries.push({ mark: 'gap', words: 'no readings' })
  if (floorRhPercent !== null)
    entries.push({
      mark: 'blind',
      words: `below ${numberWords(floorRhPercent)} %, which this logger cannot read`,
    })
  return <Legend entries={entries} />
}
