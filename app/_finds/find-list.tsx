import Link from 'next/link'
import type { Standing } from '../../lib/services/standing.ts'
import { rulerOfLine } from '../../lib/papers/ruler.ts'
import { keepWords } from '../../lib/wording/keep.ts'
import { Invented } from '../_marks/invented.tsx'
import { UrgencyMark } from '../_marks/urgency-mark.tsx'
import { RulerInline } from '../_ruler/small-rulers.tsx'
import style from './find-list.module.css'

interface Props {
  readonly finds: readonly Standing[]
  readonly invented: boolean
  /** What stands in the last column: the first step, or why so pressing. */
  readonly tells: 'step' | 'reasons'
  /** Left out where a heading above says it for all. */
  readonly urgency?: boolean
}

/** Finds a line each: which, how soon, how kept, and what next or why. */
export function FindList({ finds, invented, tells, urgency = true }: Props) {
  return (
    <ul className={style.list}>
      {finds.map(({ findId, line }) => (
        <li key={findId} className={urgency ? style.line : `${style.line} ${style.without}`}>
          <Link className={style.find} href={`/finds/${findId}`}>
            <strong>{line.findNumber}</strong>
            <span>
              {[line.object, line.quantity > 1 ? `× ${line.quantity}` : ''].filter(Boolean).join(' ')}
            </span>
            {invented && <Invented quiet />}
          </Link>
          {urgency && <UrgencyMark urgency={line.urgency} />}
          <span className={style.keep}>
            {line.keep !== 'wet' && <RulerInline ruler={rulerOfLine(line)} />}
            {keepWords(line)}
          </span>
          <span className={style.tells}>
            {line.stops.length > 0 && <strong>{`${line.stops[0]?.text} `}</strong>}
            {tells === 'step' ? line.stops.length === 0 && line.firstStep : line.reasons.join(' ')}
          </span>
        </li>
      ))}
    </ul>
  )
}
