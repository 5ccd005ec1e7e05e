import type { StoreYear } from '../../../lib/services/store-report.ts'
import { boxStateWords, statesTold } from '../../../lib/wording/store-report.ts'
import { statesRestLines } from '../../../lib/wording/store-report-rests.ts'
import { Scroll } from '../../_frame/scroll.tsx'
import { BoxNames } from './box-names.tsx'
import { Rests } from './rests.tsx'
import { StateBar } from './state-bar.tsx'

const named = ['over', 'cannot-tell', 'renewed-unread', 'not-read'] as const

/** How the boxes stood at the end, all together and by room; those to see to by name. */
export function States({ told: { report } }: { readonly told: StoreYear }) {
  const { states, rooms } = report
  const shown = statesTold.filter((state) => states[state].length > 0)
  const counts = Object.fromEntries(statesTold.map((state) => [state, states[state].length])) as Record<
    (typeof statesTold)[number],
    number
  >
  return (
    <section className="section" aria-labelledby="states">
      <h2 id="states">How the boxes stood</h2>
      <StateBar counts={counts} />
      <Scroll name="Boxes by room">
        <table className="broad">
          <thead>
            <tr>
              <th scope="col">Room</th>
              <th scope="col" className="number">
                Boxes
              </th>
              {shown.map((state) => (
                <th key={state} scope="col" className="number">
                  {boxStateWords[state].label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rooms.map((room) => (
              <tr key={room.room}>
                <th scope="row">{room.room === '' ? 'In no named room' : room.room}</th>
                <td className="number">{room.boxes}</td>
                {shown.map((state) => (
                  <td key={state} className="number">
                    {room.states[state]}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      {named
        .filter((state) => states[state].length > 0)
        .map((state) => (
          <BoxNames key={state} says={boxStateWords[state].label} names={states[state]} />
        ))}
      <Rests lines={statesRestLines(report)} />
    </section>
  )
}
