import Link from 'next/link'
import type { Range } from '../../../lib/base/range.ts'
import type { IndoorLimit } from '../../../lib/boxes/air-coupon.ts'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { aboveAll, decadeWords, ladderWords, limitWords } from '../../../lib/wording/air-ladder.ts'
import { KnownMark } from '../../_marks/known-mark.tsx'
import { classLadder } from './class-ladder.ts'
import style from './air.module.css'

interface Props {
  readonly rate: Range
  readonly limits: readonly IndoorLimit[]
  /** Names of the classes it may lie in. */
  readonly touched: readonly string[]
  readonly knowledge: Pick<Knowledge, 'figures'>
}

/** Where the rate of one coupon lies among the classes, with its range; the limits behind it as a table. */
export function Ladder({ rate, limits, touched, knowledge }: Props) {
  const { decades, classes, bar } = classLadder(rate, limits, aboveAll)
  const known = [...new Set(limits.flatMap(({ figure }) => knowledge.figures[figure]?.known ?? []))]
  return (
    <figure className={style.ladder}>
      <div
        role="img"
        aria-label={ladderWords(
          rate,
          touched,
          limits.map(({ name }) => name),
        )}
      >
        <div className={style.classes} aria-hidden="true">
          {classes.map(({ name, from, to }) => (
            <span
              key={name}
              data-touched={touched.includes(name)}
              style={{ left: `${from}%`, width: `${to - from}%` }}
            >
              {name}
            </span>
          ))}
        </div>
        <svg width="100%" height="34" aria-hidden="true" focusable="false">
          <line x1="0" x2="100%" y1="17" y2="17" className={style.rail} />
          {classes.slice(1).map(({ name, from }) => (
            <line key={name} x1={`${from}%`} x2={`${from}%`} y1="0" y2="34" className={style.limit} />
          ))}
          <rect
            x={`${bar.from}%`}
            y="10"
            width={`${Math.max(bar.to - bar.from, 0.6)}%`}
            height="14"
            className={style.bar}
          />
          {bar.opensLeft ? (
            <svg x={`${bar.from}%`} overflow="visible">
              <path d="M0 6 L-9 17 L0 28 Z" className={style.bar} />
            </svg>
          ) : null}
          {rate.nominal > 0 && (
            <svg x={`${bar.nominal}%`} overflow="visible">
              <path d="M0 3 V31" className={style.nominal} />
            </svg>
          )}
        </svg>
        <div className={style.decades} aria-hidden="true">
          {decades.map(({ value, at }, index) => (
            <span
              key={value}
              data-every={(decades.length - 1 - index) % 2 === 0 ? 'second' : undefined}
              data-end={index === 0 ? 'first' : index === decades.length - 1 ? 'last' : undefined}
              style={index === decades.length - 1 ? { right: 0 } : { left: `${at}%` }}
            >
              {decadeWords(value)}
            </span>
          ))}
        </div>
      </div>
      <figcaption>
        {'mg/m² a year; bar: the range it may lie in, upright line: the most likely rate. '}
        {limits.length > 0 && (
          <>
            {'Limits of the classes: '}
            {known.map((one) => (
              <KnownMark key={one} known={one} />
            ))}
          </>
        )}
      </figcaption>
      {limits.length > 0 && (
        <details>
          <summary>The same as a table</summary>
          <table className="small">
            <thead>
              <tr>
                <th scope="col">Class</th>
                <th scope="col">Up to, mg/m² a year</th>
                <th scope="col">Known</th>
              </tr>
            </thead>
            <tbody>
              {limits.map(({ name, to, figure }) => (
                <tr key={name}>
                  <th scope="row">{touched.includes(name) ? `${name}: it may lie here` : name}</th>
                  <td>
                    <Link className={style.number} href={`/sources/figures/${figure}`}>
                      {limitWords(to)}
                    </Link>
                  </td>
                  <td>
                    <KnownMark known={knowledge.figures[figure]?.known ?? 'memory'} />
                  </td>
                </tr>
              ))}
              {touched.includes(aboveAll) && (
                <tr>
                  <th scope="row">{`${aboveAll}: it may lie here`}</th>
                  <td>no limit</td>
                  <td />
                </tr>
              )}
            </tbody>
          </table>
        </details>
      )}
    </figure>
  )
}
