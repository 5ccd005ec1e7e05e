import Link from 'next/link'
import type { StoreYear } from '../../../lib/services/store-report.ts'
import { dayWords } from '../../../lib/wording/day.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { movementsSentence } from '../../../lib/wording/store-report-events.ts'
import { movementsRestLine } from '../../../lib/wording/store-report-rests.ts'
import { Scroll } from '../../_frame/scroll.tsx'
import { Rests } from './rests.tsx'

const first = 20

/** Finds that were out, how long, and where. */
export function Movements({ told: { movements, running } }: { readonly told: StoreYear }) {
  return (
    <section className="section" aria-labelledby="moved">
      <h2 id="moved">Out of their boxes</h2>
      <p className="measure">{movementsSentence(movements)}</p>
      {movements.length > 0 && <MovedTable movements={movements.slice(0, first)} running={running} />}
      {movements.length > first && (
        <details>
          <summary>{`${movements.length - first} more times`}</summary>
          <MovedTable movements={movements.slice(first)} running={running} further />
        </details>
      )}
      {movements.length > 0 && <Rests lines={[movementsRestLine]} />}
    </section>
  )
}

interface MovedProps extends Pick<StoreYear, 'movements' | 'running'> {
  readonly further?: boolean
}

function MovedTable({ movements, running, further = false }: MovedProps) {
  return (
    <Scroll name={further ? 'Further finds that were out' : 'Finds that were out, the longest first'}>
      <table className="broad">
        <thead>
          <tr>
            <th scope="col">Find</th>
            <th scope="col">Out of</th>
            <th scope="col">Whereto, and why</th>
            <th scope="col">From</th>
            <th scope="col">Back</th>
            <th scope="col">Outside</th>
          </tr>
        </thead>
        <tbody>
          {movements.map(({ findId, findNumber, object, box, where, why, from, to, days, needsHumidity }) => (
            <tr key={`${findId} ${from}`}>
              <th scope="row">
                <Link href={`/finds/${findId}`}>{findNumber}</Link> {object}
              </th>
              <td>{box}</td>
              <td>{[where, why].filter((text) => text !== '').join(', ')}</td>
              <td>{dayWords(from)}</td>
              <td>{to === null ? (running ? 'out still' : 'not in this year') : dayWords(to)}</td>
              <td>{needsHumidity ? countWords(days, 'day') : 'asks for no humidity'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  )
}
