import type { ReactNode } from 'react'
import type { Point, Score } from '../../lib/evidence/score.ts'
import { reliabilityMarks, reliabilityTicks, type ReliabilityMark } from '../../lib/papers/reliability.ts'
import { cameTrueOf, fitOf, fitWords, pointWords, shareWords, type Fit } from '../../lib/wording/score.ts'
import { Scroll } from '../_frame/scroll.tsx'
import style from './reliability.module.css'

/** What was said against what came out: words first, then a drawing that is inert, then the table. */
export function ReliabilityChart({ reliability }: Pick<Score, 'reliability'>) {
  const marks = reliabilityMarks(reliability)
  return (
    <figure className={style.figure}>
      <figcaption>
        <ul className={style.words}>
          {reliability.map((point) => (
            <li key={point.stated}>{pointWords(point)}</li>
          ))}
        </ul>
      </figcaption>
      <div className={style.frame} inert aria-hidden="true">
        <p className={style.up}>It was so, times in 10</p>
        <div className={style.side}>
          {reliabilityTicks.map(({ at, words }) => (
            <span key={at} style={{ top: `${100 - at}%` }}>
              {words}
            </span>
          ))}
        </div>
        <svg className={style.plot} width="100%" height="100%" focusable="false">
          {reliabilityTicks.map(({ at }) => (
            <g key={at} className={style.grid}>
              <line x1={`${at}%`} x2={`${at}%`} y1="0" y2="100%" />
              <line y1={`${at}%`} y2={`${at}%`} x1="0" x2="100%" />
            </g>
          ))}
          <line x1="0" y1="100%" x2="100%" y2="0" className={style.asSaid} />
          {marks.map((mark) => (
            <Mark key={mark.left} mark={mark} />
          ))}
        </svg>
        <div className={style.foot}>
          {reliabilityTicks.map(({ at, words }) => (
            <span key={at} style={{ left: `${at}%` }}>
              {words}
            </span>
          ))}
        </div>
        <p className={style.along}>The tool said, times in 10</p>
      </div>
      <Legend fits={[...new Set(reliability.map(fitOf))]} />
      <Table points={reliability} />
    </figure>
  )
}

function Mark({ mark: { fit, left, top, from, to } }: { readonly mark: ReliabilityMark }) {
  return (
    <>
      <line x1={`${left}%`} x2={`${left}%`} y1={`${from}%`} y2={`${to}%`} className={style.range} />
      {[from, to].map((end) => (
        <svg key={end} x={`${left}%`} y={`${end}%`} overflow="visible">
          <path d="M-5 0H5" className={style.range} />
        </svg>
      ))}
      <svg x={`${left}%`} y={`${top}%`} overflow="visible">
        {signs[fit]}
      </svg>
    </>
  )
}

/** Told apart by shape: a dot where it fits, an arrow head the way it came out otherwise. */
const signs: Readonly<Record<Fit, ReactNode>> = {
  fits: <circle r="5" className={style.dot} />,
  more: <path d="M0 -9L8 6H-8Z" className={style.off} />,
  less: <path d="M0 9L8 -6H-8Z" className={style.off} />,
}

function Legend({ fits }: { readonly fits: readonly Fit[] }) {
  return (
    <ul className={style.legend}>
      <li>
        <svg width="26" height="16" aria-hidden="true" focusable="false">
          <line x1="0" x2="26" y1="14" y2="2" className={style.asSaid} />
        </svg>
        where every point would lie if it came out as said
      </li>
      {fits.map((fit) => (
        <li key={fit}>
          <svg width="26" height="22" viewBox="-13 -11 26 22" aria-hidden="true" focusable="false">
            {signs[fit]}
          </svg>
          {fitWords[fit]}
        </li>
      ))}
      <li>
        <svg width="26" height="16" aria-hidden="true" focusable="false">
          <path d="M13 1V15M8 1H18M8 15H18" className={style.range} />
        </svg>
        what chance leaves open, nineteen times in twenty
      </li>
    </ul>
  )
}

function Table({ points }: { readonly points: readonly Point[] }) {
  return (
    <details className={style.behind}>
      <summary>The same as a table</summary>
      <Scroll name="What was said and what came out, table">
        <table>
          <thead>
            <tr>
              <th scope="col">The tool said</th>
              <th scope="col" className="number">
                Times said
              </th>
              <th scope="col" className="number">
                Times it was so
              </th>
              <th scope="col">It was so</th>
              <th scope="col">Chance leaves open</th>
            </tr>
          </thead>
          <tbody>
            {points.map((point) => (
              <tr key={point.stated}>
                <th scope="row">{shareWords(point.stated)}</th>
                <td className="number">{point.forecasts}</td>
                <td className="number">{cameTrueOf(point)}</td>
                <td>{fitWords[fitOf(point)]}</td>
                <td>{`${shareWords(point.range[0])} to ${shareWords(point.range[1])}`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </details>
  )
}
