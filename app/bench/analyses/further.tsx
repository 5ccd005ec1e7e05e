import type { MethodBatch } from '../../../lib/evidence/assemblage-batches.ts'
import type { Method } from '../../../lib/knowledge/knowledge.ts'
import { furtherWords } from '../../../lib/wording/analyses-text.ts'
import style from './analyses.module.css'

interface Props {
  readonly batch: MethodBatch
  readonly method: Method
  readonly nameOf: (find: string) => string
}

/**
 * Further hours, one after the other: the words, and a bar for how much each would settle of what matters, beside an hour
 * of those given. After the first that buys nothing the others are left out.
 */
export function FurtherHours({ batch, method, nameOf }: Props) {
  const { further, weightedBits, hours, places } = batch
  if (further.length === 0) return null
  const unit = hours === null ? 'place' : 'hour'
  const idle = further.findIndex(({ adds }) => adds.length === 0)
  const shown = idle === -1 ? further : further.slice(0, idle + 1)
  const given = hours ?? places
  const now = given > 0 ? weightedBits / Math.max(1, given) : 0
  const most = Math.max(now, ...shown.map((one) => one.weightedBits))
  const bar = (bits: number) => (
    <span className={style.track} aria-hidden="true">
      <span className={style.bar} style={{ inlineSize: `${most > 0 ? (100 * bits) / most : 0}%` }} />
    </span>
  )
  return (
    <div className={style.further}>
      <h3>{`What further ${unit}s would buy`}</h3>
      <p className="soft small">The longer the bar, the more of what matters is settled.</p>
      <ol className="plain-list">
        {now > 0 && (
          <li>
            {bar(now)}
            <span>{`On average, ${unit === 'hour' ? 'an hour' : 'a place'} of those given.`}</span>
          </li>
        )}
        {shown.map((one, at) => (
          <li key={one.hours ?? one.places}>
            {bar(one.weightedBits)}
            <span>{furtherWords(method, batch, one, nameOf, at)}</span>
          </li>
        ))}
      </ol>
    </div>
  )
}
