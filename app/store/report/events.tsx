import type { StoreYear } from '../../../lib/services/store-report.ts'
import { dayWords } from '../../../lib/wording/day.ts'
import { listWords } from '../../../lib/wording/list.ts'
import { eventsSentence, tendedLines, waterLine } from '../../../lib/wording/store-report-events.ts'
import { Scroll } from '../../_frame/scroll.tsx'
import { Rests } from './rests.tsx'

/** Water, lids, and tubs of wet finds. */
export function Events({ told }: { readonly told: StoreYear }) {
  const { water, lids, tubs } = told
  const loose = lids.filter(({ notSeatedOn }) => notSeatedOn.length > 0)
  const opened = lids.reduce((sum, one) => sum + one.opened, 0)
  return (
    <section className="section" aria-labelledby="events">
      <h2 id="events">Water and lids</h2>
      <p className="measure">{eventsSentence(told)}</p>
      {water.length > 0 && (
        <ul className="measure">
          {water.map((event) => (
            <li key={`${event.on} ${event.room} ${event.cause}`}>{waterLine(event)}</li>
          ))}
        </ul>
      )}
      {loose.length > 0 && (
        <Scroll name="Lids found not seated">
          <table>
            <thead>
              <tr>
                <th scope="col">Box</th>
                <th scope="col">Room</th>
                <th scope="col">Lid found not seated on</th>
              </tr>
            </thead>
            <tbody>
              {loose.map(({ box, room, notSeatedOn }) => (
                <tr key={box}>
                  <th scope="row">{box}</th>
                  <td>{room}</td>
                  <td>{listWords(notSeatedOn.map(dayWords))}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroll>
      )}
      {tendedLines(opened, tubs).map((line) => (
        <p key={line} className="measure">
          {line}
        </p>
      ))}
      <Rests
        lines={['Rests on rounds and on the diary of the store; what nobody wrote down is not in it.']}
      />
    </section>
  )
}
