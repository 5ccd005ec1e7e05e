import Link from 'next/link'
import type { StoreYear } from '../../../lib/services/store-report.ts'
import { numberWords } from '../../../lib/wording/band.ts'
import { drierSentence } from '../../../lib/wording/store-report.ts'
import { drierRestLine } from '../../../lib/wording/store-report-rests.ts'
import { doubtfulLine } from '../../../lib/wording/what-if-rests.ts'
import { spreadMark } from '../../../lib/wording/what-if-figures.ts'
import { Scroll } from '../../_frame/scroll.tsx'
import { Rests } from './rests.tsx'

/** What drier rooms would save, room by room. */
export function Drier({ told: { drier } }: { readonly told: StoreYear }) {
  const { byPercent, counted, leftOut, rooms } = drier
  return (
    <section className="section" aria-labelledby="drier">
      <h2 id="drier">What a drier room would save</h2>
      <p className="measure">{drierSentence(drier)}</p>
      {counted > 0 && (
        <>
          <Scroll name="Savings by room">
            <table className="broad">
              <thead>
                <tr>
                  <th scope="col">Room</th>
                  <th scope="col" className="number">
                    Boxes reckoned
                  </th>
                  <th scope="col">Air over the year</th>
                  <th scope="col">Renewals a year now</th>
                  <th scope="col">Renewals saved</th>
                  <th scope="col">Dry gel saved</th>
                </tr>
              </thead>
              <tbody>
                {rooms.map(({ room, boxes, nowRhPercent, bought }) => (
                  <tr key={room}>
                    <th scope="row">{room === '' ? 'In no named room' : room}</th>
                    <td className="number">{boxes}</td>
                    <td>{`${numberWords(nowRhPercent)} %, then ${numberWords(Math.max(0, nowRhPercent - byPercent))} %`}</td>
                    <td>{spreadMark(bought.before.renewalsPerYear, 'renewals')}</td>
                    <td>{spreadMark(bought.saved.renewalsPerYear, 'renewals')}</td>
                    <td>{spreadMark(bought.saved.kgPerYear, 'gel')}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Scroll>
          <p className="no-print">
            <Link href={`/store/what-if?drier=${byPercent}`}>Try something else</Link>
          </p>
          <Rests
            lines={[
              drierRestLine(counted, leftOut),
              ...(drier.doubtful.length === 0 ? [] : [doubtfulLine(drier)]),
            ]}
          />
        </>
      )}
    </section>
  )
}
