import type { CouponShown } from '../../../lib/services/show-air.ts'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { couponRefusalWords, couponWords } from '../../../lib/wording/air.ts'
import { couponEntryWords, takenWords } from '../../../lib/wording/air-entry.ts'
import { aboveAll } from '../../../lib/wording/air-ladder.ts'
import { Ladder } from './ladder.tsx'
import style from './air.module.css'

interface Props {
  readonly shown: CouponShown
  readonly knowledge: Knowledge
}

/** One coupon: what it says of the air, with everything that belongs to the result, and what was written down. */
export function Coupon({ shown: { entry, read, judged, limits }, knowledge }: Props) {
  const taken = takenWords(read, read.coupon.weighingErrorMg)
  const written = couponEntryWords(entry.given, entry.on, entry.by.name)
  if (!judged.ok)
    return (
      <article className={style.coupon}>
        <h4>No result</h4>
        <ul className={style.says}>
          {[...judged.problems.map(couponRefusalWords), ...taken].map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        <p className="soft small measure">{written}</p>
        {entry.given.note !== undefined && <p className="small measure">{entry.given.note}</p>}
      </article>
    )
  const { headline, lines } = couponWords(judged.value, knowledge)
  const touched = judged.value.classes?.all.map((name) => (name === 'beyond' ? aboveAll : name)) ?? []
  return (
    <article className={style.coupon}>
      <h4>{headline}</h4>
      <div className={style.beside}>
        <Ladder
          rate={judged.value.rate}
          limits={touched.length === 0 ? [] : limits}
          touched={touched}
          knowledge={knowledge}
        />
        <div className={style.told}>
          <ul className={style.says}>
            {[...lines, ...taken].map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <p className="soft small measure">{written}</p>
          {entry.given.note !== undefined && <p className="small measure">{entry.given.note}</p>}
        </div>
      </div>
    </article>
  )
}
