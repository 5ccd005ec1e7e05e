import Link from 'next/link'
import type { RenewalsShown } from '../../../lib/services/renewals.ts'
import { noOutlookWords } from '../../../lib/wording/box-gel.ts'
import { dayWords } from '../../../lib/wording/day.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { missingWords } from '../../../lib/wording/renewals.ts'

/** What cannot be done in time, with what there would have to be more of; before the weeks, because the weeks hide it. */
export function NotInTimeList({ plan, boxes }: Pick<RenewalsShown, 'plan' | 'boxes'>) {
  if (plan.notInTime.length === 0) return null
  return (
    <section className="section" aria-labelledby="late">
      <h2 id="late">{`${countWords(plan.notInTime.length, 'renewal')} cannot come in time`}</h2>
      <ul className="stack">
        {plan.notInTime.map((one) => {
          const id = boxes.get(one.due.box)?.box.id
          return (
            <li key={`${one.due.box} ${one.turn}`}>
              <strong>
                {id === undefined ? one.due.box : <Link href={`/store/boxes/${id}`}>{one.due.box}</Link>}
              </strong>
              {`, safe until ${dayWords(one.safeOn)}. ${missingWords(one)} `}
              {one.week === null
                ? 'No week of this plan can take it.'
                : `It is planned for the week of ${dayWords(plan.weeks[one.week]!.on)}.`}
            </li>
          )
        })}
      </ul>
    </section>
  )
}

/** Boxes that hold gel and of which nobody can tell how long: they stand in no week, and are said aloud. */
export function CannotTell({ cannotTell }: Pick<RenewalsShown, 'cannotTell'>) {
  if (cannotTell.length === 0) return null
  return (
    <section className="section" aria-labelledby="cannot-tell">
      <h2 id="cannot-tell">{`${countWords(cannotTell.length, 'box', 'boxes')} of which nobody can tell`}</h2>
      {[...Map.groupBy(cannotTell, ({ noOutlook }) => noOutlook)].map(([why, group]) => (
        <div key={why} className="stack">
          {why !== null && <p className="measure">{noOutlookWords[why]}</p>}
          <ul className="plain-list row">
            {group.map(({ box }) => (
              <li key={box.id}>
                <Link className="tall" href={`/store/boxes/${box.id}`}>
                  {box.given.box}
                </Link>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  )
}
