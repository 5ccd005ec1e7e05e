import Link from 'next/link'
import type { PlannedRenewal, WeekOfWork } from '../../../lib/boxes/level-work.ts'
import type { RenewalsShown } from '../../../lib/services/renewals.ts'
import { kilogramWords } from '../../../lib/wording/box-gel.ts'
import { dayWords } from '../../../lib/wording/day.ts'
import { stockWords, weekWords } from '../../../lib/wording/renewal-weeks.ts'
import { Scroll } from '../../_frame/scroll.tsx'
import paper from '../../_papers/paper.module.css'

interface Props {
  readonly week: WeekOfWork
  readonly boxes: RenewalsShown['boxes']
}

/** A week's renewals in the order one walks the shelves, to be ticked off on paper. */
export function Week({ week, boxes }: Props) {
  const name = `Week of ${dayWords(week.on)}`
  const id = `week-${week.on}`
  const stock = stockWords(week)
  return (
    <section className="section" aria-labelledby={id}>
      <h2 id={id}>{name}</h2>
      <p>
        {weekWords(week)}
        {stock !== '' && <span className="soft">{`. ${stock}.`}</span>}
      </p>
      <Scroll name={`Renewals in the ${name.toLowerCase()}`}>
        <table className="broad">
          <thead>
            <tr>
              <th scope="col">Done</th>
              <th scope="col">Room, shelf</th>
              <th scope="col">Box</th>
              <th scope="col" className="number">
                Dry gel
              </th>
              <th scope="col">Safe until</th>
              <th scope="col">As likely as not spent by</th>
              <th scope="col">Weighed in</th>
            </tr>
          </thead>
          <tbody>
            {week.renewals.map((renewal) => (
              <Line key={`${renewal.due.box} ${renewal.turn}`} renewal={renewal} boxes={boxes} />
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  )
}

function Line({ renewal, boxes }: { readonly renewal: PlannedRenewal; readonly boxes: Props['boxes'] }) {
  const { due, turn, safeOn, late } = renewal
  const id = boxes.get(due.box)?.box.id
  return (
    <tr>
      <td>
        <span className={paper.tick} aria-hidden="true" />
      </td>
      <td>{[due.room, due.shelf].filter((text) => text !== '').join(', ')}</td>
      <th scope="row">{id === undefined ? due.box : <Link href={`/store/boxes/${id}`}>{due.box}</Link>}</th>
      <td className="number">{kilogramWords(due.gelKg)}</td>
      <td>
        {dayWords(safeOn)}
        {late && <strong> (late)</strong>}
      </td>
      <td>
        {turn > 1
          ? 'follows from the renewal before'
          : due.likelyOn === null
            ? 'beyond three years'
            : dayWords(due.likelyOn)}
      </td>
      <td className={paper.write} />
    </tr>
  )
}
