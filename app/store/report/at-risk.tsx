import Link from 'next/link'
import type { StoreYear } from '../../../lib/services/store-report.ts'
import { numberWords } from '../../../lib/wording/band.ts'
import { hoursWords } from '../../../lib/wording/box-excursion.ts'
import { dayWords } from '../../../lib/wording/day.ts'
import { riskSentence } from '../../../lib/wording/store-report.ts'
import { riskRestLine } from '../../../lib/wording/store-report-rests.ts'
import { Scroll } from '../../_frame/scroll.tsx'
import { Rests } from './rests.tsx'
import style from './report.module.css'

/** So many boxes are read at once; the others are folded on a screen. */
const first = 20

/** Boxes that were over what lay in them bore, with hours, the worst, and which finds. */
export function AtRisk({ told: { report, findNumbers, boxIds } }: { readonly told: StoreYear }) {
  const { atRisk } = report
  const most = Math.max(1, ...atRisk.map(({ hoursAbove }) => hoursAbove))
  return (
    <section className={`section ${style.sheet}`} aria-labelledby="risk">
      <h2 id="risk">Finds at risk</h2>
      <p className="measure">{riskSentence(report)}</p>
      {atRisk.length > 0 && <RiskTable boxes={atRisk.slice(0, first)} most={most} boxIds={boxIds} />}
      {atRisk.length > first && (
        <details>
          <summary>{`${atRisk.length - first} more boxes`}</summary>
          <RiskTable boxes={atRisk.slice(first)} most={most} boxIds={boxIds} further />
        </details>
      )}
      {atRisk.length > 0 && (
        <details>
          <summary>The finds by number</summary>
          <dl className={style.finds}>
            {atRisk.map(({ box, findIds }) => (
              <div key={box}>
                <dt>{box}</dt>
                <dd>
                  {findIds.length === 0 && 'nothing lay in it'}
                  {findIds.map((id, at) => (
                    <span key={id}>
                      {at > 0 && ', '}
                      <Link href={`/finds/${id}`}>{findNumbers[id] ?? id}</Link>
                    </span>
                  ))}
                </dd>
              </div>
            ))}
          </dl>
        </details>
      )}
      <Rests lines={[riskRestLine]} />
    </section>
  )
}

interface RiskTableProps {
  readonly boxes: StoreYear['report']['atRisk']
  readonly most: number
  readonly boxIds: StoreYear['boxIds']
  readonly further?: boolean
}

function RiskTable({ boxes, most, boxIds, further = false }: RiskTableProps) {
  return (
    <Scroll name={further ? 'Further boxes that were over' : 'Boxes that were over, the fullest first'}>
      <table className="broad">
        <thead>
          <tr>
            <th scope="col">Box</th>
            <th scope="col">Room</th>
            <th scope="col" className="number">
              Finds
            </th>
            <th scope="col" className="number">
              Bear
            </th>
            <th scope="col" className="number">
              Worst
            </th>
            <th scope="col">Over, by loggers</th>
            <th scope="col" className="number">
              Strips over
            </th>
            <th scope="col">Last on</th>
          </tr>
        </thead>
        <tbody>
          {boxes.map(
            ({ box, room, findIds, limitRhPercent, worstRhPercent, hoursAbove, stripsOver, lastOverOn }) => (
              <tr key={box}>
                <th scope="row">
                  <Link href={`/store/boxes/${boxIds[box]}`}>{box}</Link>
                </th>
                <td>{room}</td>
                <td className="number">{findIds.length}</td>
                <td className="number">
                  {limitRhPercent === null ? '' : `${numberWords(limitRhPercent)} %`}
                </td>
                <td className="number">
                  {worstRhPercent === null ? '' : `${numberWords(worstRhPercent)} %`}
                </td>
                <td>{hoursAbove === 0 ? '' : <Hours hours={hoursAbove} most={most} />}</td>
                <td className="number">{stripsOver === 0 ? '' : stripsOver}</td>
                <td>{dayWords(lastOverOn)}</td>
              </tr>
            ),
          )}
        </tbody>
      </table>
    </Scroll>
  )
}

function Hours({ hours, most }: { readonly hours: number; readonly most: number }) {
  return (
    <span className={style.hours}>
      <svg width="84" height="12" aria-hidden="true" focusable="false">
        <rect x="0" y="1" width={Math.max(2, (hours / most) * 84)} height="10" className={style.solid} />
      </svg>
      {hoursWords(hours)}
    </span>
  )
}
