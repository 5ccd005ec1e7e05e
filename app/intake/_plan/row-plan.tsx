import { memo } from 'react'
import type { Planned } from '../../../lib/field/bag.ts'
import { rulerOfStorage } from '../../../lib/papers/ruler.ts'
import { keepWords } from '../../../lib/wording/keep.ts'
import { UrgencyMark } from '../../_marks/urgency-mark.tsx'
import { RulerInline } from '../../_ruler/small-rulers.tsx'
import style from './plan.module.css'

interface Props {
  readonly planned: Planned | null
  /** A further part of a find whose plan stands on the row above. */
  readonly withAbove: boolean
}

/** The plan in one line beside its row: how soon, how dry, what first. */
export const RowPlan = memo(function RowPlan({ planned, withAbove }: Props) {
  if (planned === null) return <span className="soft small">Number and material first</span>
  if (withAbove) return <span className="soft small">with the row above</span>
  const { plan, record } = planned
  const stop = plan.cautions.find(({ level }) => level === 'stop')
  const now = typeof record.stored_rh_percent === 'number' ? record.stored_rh_percent : null
  return (
    <div className={style.rowPlan}>
      <div className={style.first}>
        <UrgencyMark urgency={plan.urgency} />
        {plan.storage.rhPercent !== null && plan.storage.keep !== 'wet' && (
          <RulerInline ruler={rulerOfStorage(plan.storage, now)} />
        )}
        <span className={style.keep}>{keepWords(plan.storage)}</span>
      </div>
      <div className={style.next}>
        {stop === undefined ? plan.steps[0]?.text : <strong>{stop.text}</strong>}
      </div>
    </div>
  )
})
