import Link from 'next/link'
import { countWords } from '../../lib/wording/list.ts'
import { Invented } from '../_marks/invented.tsx'
import type { BoxSeen } from './box-line.tsx'
import { stopsIn } from './wrong-of.ts'
import style from './store.module.css'

interface Props {
  readonly boxes: readonly BoxSeen[]
  readonly invented: boolean
}

/** Boxes nobody goes to before a stop is cleared: above everything else, never folded. */
export function Stopped({ boxes, invented }: Props) {
  const stopped = boxes.filter(({ wrong }) => stopsIn(wrong).length > 0)
  if (stopped.length === 0) return null
  return (
    <section className={style.stopped} aria-labelledby="stopped">
      <h2 id="stopped">
        {`Stop: do not open ${countWords(stopped.length, 'box', 'boxes')}`} {invented && <Invented />}
      </h2>
      <ul>
        {stopped.map(({ line: { box, room }, wrong }) => (
          <li key={box.id}>
            <p>
              <Link className="tall" href={`/store/boxes/${box.id}`}>
                <strong>{box.given.box}</strong>
              </Link>
              {[room, box.given.shelf === undefined ? '' : `shelf ${box.given.shelf}`]
                .filter((text) => text !== '')
                .map((text) => `, ${text}`)}
            </p>
            {stopsIn(wrong).map((says) => (
              <p key={says}>{says}</p>
            ))}
          </li>
        ))}
      </ul>
    </section>
  )
}
