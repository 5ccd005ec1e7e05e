import Link from 'next/link'
import type { IsoDate } from '../../lib/base/calendar.ts'
import type { BoxLine as Line } from '../../lib/services/show-store.ts'
import { bandMark, numberWords } from '../../lib/wording/band.ts'
import { gelWords } from '../../lib/wording/box-gel.ts'
import { renewalWords } from '../../lib/wording/box-renewal.ts'
import { capital } from '../../lib/wording/capital.ts'
import { countWords } from '../../lib/wording/list.ts'
import { seenWords, wrongWords, type Wrong } from '../../lib/wording/store-wrong.ts'
import { BoxMark } from '../_ruler/box-mark.tsx'
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
  const place = where
    ? [room, box.given.shelf].filter((text) => text !== undefined && text !== '').join(', ')
    : ''
  return (
    <li className={style.box}>
      <span className={style.name}>
        <Link className="tall" href={`/store/boxes/${box.id}`}>
          <strong>{box.given.box}</strong>
        </Link>
        <span className="soft">
          {[kind, countWords(finds, 'find'), place].filter((text) => text !== '').join(', ')}
        </span>
      </span>
      {tub === null ? (
        <>
          <span className={style.humidity}>
            <BoxMark
              needs={needs}
              thought={outlook?.nowRhPercent ?? null}
              seen={newest === null ? null : { low: newest.lowRhPercent, high: newest.highRhPercent }}
            />
            <span>{humidityWords(line)}</span>
          </span>
          <span className="small">
            {gelWords(box.given)}
            {outlook?.renewOn != null && `; renewal ${renewalWords(outlook.renewOn, today)}`}
          </span>
        </>
      ) : (
        <span className={style.tub}>{tubWords(tub)}</span>
      )}
      {wrong.length > 0 && (
        <ul className={style.wrong}>
          {wrong.map((one, at) => (
            <li key={one.code}>
              {at === 0 ? <strong>{capital(wrongWords(one))}</strong> : capital(wrongWords(one))}
            </li>
          ))}
        </ul>
      )}
    </li>
  )
}

function humidityWords({ needs, disagree, outlook, newest }: Line): string {
  const needed = disagree
    ? 'parts of it disagree'
    : needs === null
      ? 'no humidity asked for'
      : `needs ${bandMark(needs)}`
  if (outlook !== null) {
    const { p10, p90 } = outlook.nowRhPercent
    return `${needed}, likely ${numberWords(p10)} to ${numberWords(p90)} %`
  }
  return newest === null ? needed : `${needed}; ${seenWords(newest)}`
}

function tubWords({ daysHeld, daysAllowed }: NonNullable<Line['tub']>): string {
  if (daysHeld === null) return 'in water; nobody has written since when'
  return `${countWords(daysHeld, 'day')} in water, of ${daysAllowed} at most`
}
