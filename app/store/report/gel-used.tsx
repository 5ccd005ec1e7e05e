import type { StoreYear } from '../../../lib/services/store-report.ts'
import { kilogramWords } from '../../../lib/wording/box-gel.ts'
import { months as monthNames } from '../../../lib/wording/day.ts'
import {
  askedForSentence,
  dueSentence,
  gelSentence,
  stockSentence,
} from '../../../lib/wording/store-report.ts'
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
  return (
    <section className="section" aria-labelledby="gel">
      <h2 id="gel">Gel and renewals</h2>
      <p className="measure">{gelSentence(report)}</p>
      <p className="measure">{dueSentence(report)}</p>
      {moved && (
        <>
          <MonthChart months={months} until={report.to.slice(0, 7)} />
          <details>
            <summary>The months as a table</summary>
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
      {[running ? stockSentence(stock.gelDryKg, stock.gelSpentKg) : '', askedForSentence(drier)]
        .filter((line) => line !== '')
        .map((line) => (
          <p key={line} className="measure">
            {line}
          </p>
        ))}
      <Rests lines={[...gelRestLines(report), dueRestLine(running)]} />
    </section>
  )
}
