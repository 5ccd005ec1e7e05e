import type { StoreYear } from '../../../lib/services/store-report.ts'
import { kilogramWords } from '../../../lib/wording/box-gel.ts'
import { months as monthNames } from '../../../lib/wording/day.ts'
import { dueSentence, gelSentence } from '../../../lib/wording/store-report.ts'
import { dueRestLine, gelRestLines } from '../../../lib/wording/store-report-rests.ts'
import { Scroll } from '../../_frame/scroll.tsx'
import { BoxNames } from './box-names.tsx'
import { MonthChart } from './month-chart.tsx'
import { Rests } from './rests.tsx'

const nameOf = (month: string) => `${monthNames[Number(month.slice(5)) - 1]} ${month.slice(0, 4)}`

/** Gel in and out, by room and by month; renewals done in time and late, overdue and ahead. */
export function GelUsed({ told: { report, running, stock, drier } }: { readonly told: StoreYear }) {
  const { rooms, months, renewals } = report
  const overdue = renewals.due.filter(({ when }) => when === 'overdue').map(({ box }) => box)
  const moved = months.some(({ inTime, late, unseen, due }) => inTime + late + unseen + due > 0)
  const ofYear = drier.whole.before
  return (
    <section className="section" aria-labelledby="gel">
      <h2 id="gel">Gel and renewals</h2>
      <p className="measure">{gelSentence(report)}</p>
      <p className="measure">{dueSentence(report)}</p>
      {moved && (
        <>
          <MonthChart months={months} until={report.to.slice(0, 7)} />
          <details>
            <summary className="tall">The months as a table</summary>
            <Scroll name="Renewals by month">
              <table>
                <thead>
                  <tr>
                    <th scope="col">Month</th>
                    <th scope="col" className="number">
                      In time
                    </th>
                    <th scope="col" className="number">
                      Late
                    </th>
                    <th scope="col" className="number">
                      Nobody had looked
                    </th>
                    <th scope="col" className="number">
                      Gel put in
                    </th>
                    <th scope="col" className="number">
                      Likely due
                    </th>
                  </tr>
                </thead>
                <tbody>
                  {months.map(({ month, inTime, late, unseen, putInKg, due }) => (
                    <tr key={month}>
                      <th scope="row">{nameOf(month)}</th>
                      <td className="number">{inTime}</td>
                      <td className="number">{late}</td>
                      <td className="number">{unseen}</td>
                      <td className="number">{putInKg === 0 ? '' : kilogramWords(putInKg)}</td>
                      <td className="number">{due}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </Scroll>
          </details>
        </>
      )}
      <Scroll name="Gel by room">
        <table>
          <thead>
            <tr>
              <th scope="col">Room</th>
              <th scope="col" className="number">
                Renewals
              </th>
              <th scope="col" className="number">
                Gel in
              </th>
              <th scope="col" className="number">
                Gel out
              </th>
            </tr>
          </thead>
          <tbody>
            {rooms.map(({ room, changes, putInKg, takenOutKg }) => (
              <tr key={room}>
                <th scope="row">{room === '' ? 'In no named room' : room}</th>
                <td className="number">{changes}</td>
                <td className="number">{putInKg === 0 ? '0 kg' : kilogramWords(putInKg)}</td>
                <td className="number">{takenOutKg === 0 ? '0 kg' : kilogramWords(takenOutKg)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      {overdue.length > 0 && <BoxNames says="Overdue" names={overdue} />}
      {running && (stock.gelDryKg !== null || stock.gelSpentKg !== null) && (
        <p className="measure">{stockWords(stock)}</p>
      )}
      {drier.counted > 0 && (
        <p className="measure">
          {`Kept within what the finds bear, these boxes ask for ${yearWords(ofYear.renewalsPerYear.p10, ofYear.renewalsPerYear.p90)} renewals a year, and ${kilogramsBetween(ofYear.kgPerYear.p10, ofYear.kgPerYear.p90)} of dry gel.`}
        </p>
      )}
      <Rests lines={[...gelRestLines(report), dueRestLine(running)]} />
    </section>
  )
}

function stockWords({ gelDryKg, gelSpentKg }: StoreYear['stock']): string {
  const dry = gelDryKg === null ? '' : `${kilogramWords(gelDryKg)} of dry gel`
  const spent = gelSpentKg === null ? '' : `${kilogramWords(gelSpentKg)} waiting to be dried`
  return `In stock today: ${[dry, spent].filter((text) => text !== '').join(', ')}.`
}

const yearWords = (low: number, high: number) => `likely ${Math.round(low)} to ${Math.round(high)}`
const kilogramsBetween = (low: number, high: number) => `${Math.round(low)} to ${Math.round(high)} kg`
