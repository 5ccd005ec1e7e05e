import Link from 'next/link'
import type { IsoDate } from '../../lib/base/calendar.ts'
import type { BoxLine as Line } from '../../lib/services/show-store.ts'
import { bandMark, numberWords } from '../../lib/wording/band.ts'
import { gelWords } from '../../lib/wording/box-gel.ts'
import { renewalWords } from '../../lib/wording/box-renewal.ts'
import { capital } from '../../lib/wording/capital.ts'
import { countWords } from '../../lib/wording/list.ts'
import { seenWords, wrongBrief, type Wrong } from '../../lib/wording/store-wrong.ts'
import { BoxMark } from '../_ruler/box-mark.tsx'
import { stopsIn } from './wrong-of.ts'
import style from './store.module.css'

export interface BoxSeen {
  readonly line: Line
  readonly wrong: readonly Wrong[]
}

interface Props extends BoxSeen {
  readonly today: IsoDate
  /** Said where no heading above names room and shelf. */
  readonly where?: boolean
}

/** One box: which, what it must hold and likely holds, its gel, and what is wrong, most pressing first. */
export function BoxLine({ line, wrong, today, where = false }: Props) {
  const { box, kind, finds, room, outlook, tub, needs, newest } = line
  const place = where ? [room, box.given.shelf === undefined ? '' : `shelf ${box.given.shelf}`] : []
  const others = wrong.filter(({ code }) => code !== 'stop')
  return (
    <li className={style.box}>
      <div className={style.name}>
        <Link className="tall" href={`/store/boxes/${box.id}`}>
          <strong>{box.given.box}</strong>
        </Link>
        <span className="soft small">
          {[kind, countWords(finds, 'find'), ...place].filter((text) => text !== '').join(', ')}
        </span>
      </div>
      <div className={style.mark}>
        {tub === null && (
          <BoxMark
            needs={needs}
            thought={outlook?.nowRhPercent ?? null}
            seen={newest === null ? null : { low: newest.lowRhPercent, high: newest.highRhPercent }}
          />
        )}
      </div>
      <div className={style.says}>
        {stopsIn(wrong).length > 0 && (
          <p>
            <strong className={style.stop}>Stop: do not open it. See the top of this page.</strong>
          </p>
        )}
        {tub === null ? (
          <p>
            {`${humidityWords(line)}. `}
            <span className="soft">
              {`${capital(gelWords(box.given))}${outlook?.renewOn == null ? '' : `; renewal ${renewalWords(outlook.renewOn, today)}`}.`}
            </span>
          </p>
        ) : (
          <p>{tubWords(tub)}</p>
        )}
        {others.length > 0 && (
          <ul className={style.wrong}>
            {others.map((one, at) => (
              <li key={wrongBrief(one)}>
                {at === 0 ? <strong>{capital(wrongBrief(one))}</strong> : capital(wrongBrief(one))}
              </li>
            ))}
          </ul>
        )}
      </div>
    </li>
  )
}

function humidityWords({ needs, disagree, outlook, newest }: Line): string {
  const needed = disagree
    ? 'No one humidity suits all of it'
    : needs === null
      ? 'Asks for no humidity'
      : `Needs ${bandMark(needs)}`
  const seen = newest === null ? '' : `; ${seenWords(newest)}`
  if (outlook === null) return `${needed}${seen}`
  const { p10, p90 } = outlook.nowRhPercent
  return `${needed}, likely ${numberWords(p10)} to ${numberWords(p90)} % today${seen}`
}

function tubWords({ daysHeld, daysAllowed }: NonNullable<Line['tub']>): string {
  if (daysHeld === null) return 'In water; nobody has written since when.'
  return `${countWords(daysHeld, 'day')} in water, of ${daysAllowed} at most.`
}
