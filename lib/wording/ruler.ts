import { holds, narrows, type Ruler, type RulerBar } from '../papers/ruler.ts'
import { bandWords, numberWords } from './band.ts'
import { listWords } from './list.ts'
import { capital } from './capital.ts'

export function barWords(bar: RulerBar): string {
  if (bar.limit === null && bar.preference === null) return 'no limit of its own'
  if (bar.limit === null) return `better at ${bandWords(bar.preference!)}`
  if (bar.preference === null) return bandWords(bar.limit)
  return `${bandWords(bar.limit)}, better at ${bandWords(bar.preference)}`
}

export function gapWords(gap: NonNullable<Ruler['gap']>): string {
  const width = numberWords(gap.to - gap.from)
  return `${listWords(gap.between)} do not meet: a gap of ${width} % between ${numberWords(gap.from)} % and ${numberWords(gap.to)} %`
}

export function nowWords(ruler: Ruler): string | null {
  if (ruler.now === null) return null
  const kept = `kept at ${numberWords(ruler.now)} % now`
  if (ruler.shared === null || !narrows(ruler.shared)) return kept
  if (holds(ruler.shared, ruler.now)) return `${kept}, inside the band`
  return ruler.now > ruler.shared.max ? `${kept}, above the band` : `${kept}, below the band`
}

/** All the ruler says, in sentences: what a reader who does not see the drawing is told. */
export function rulerWords(ruler: Ruler): string {
  const parts = ruler.bars.map((bar) => `${bar.name}: ${barWords(bar)}`)
  const shared =
    ruler.shared === null ? null : ruler.bars.length > 1 ? `together: ${bandWords(ruler.shared)}` : null
  const gap = ruler.gap === null ? null : gapWords(ruler.gap)
  const holding =
    ruler.holding === null ? null : `holding band until a conservator decides: ${bandWords(ruler.holding)}`
  const lines = [...parts, shared, gap, holding, nowWords(ruler)].filter((line) => line !== null)
  return `Relative humidity. ${lines.map(capital).join('. ')}.`
}
