import { couponSteps } from '../../../lib/wording/air-how.ts'
import { KnownMark } from '../../_marks/known-mark.tsx'

/** How a coupon is hung and weighed. */
export function How() {
  return (
    <div className="stack">
      <p>
        <KnownMark known="common-practice" />
      </p>
      <ol className="stack measure">
        {couponSteps.map(({ what, why }) => (
          <li key={what}>
            {what} <span className="soft">{why}</span>
          </li>
        ))}
      </ol>
    </div>
  )
}
