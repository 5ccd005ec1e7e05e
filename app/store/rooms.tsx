import Link from 'next/link'
import { bandWords } from '../../lib/wording/band.ts'
import { countWords } from '../../lib/wording/list.ts'
import { RulerRow } from '../_ruler/small-rulers.tsx'
import { boxRuler } from './box-ruler.ts'
import type { RoomShown } from './store-of.ts'
import style from './store.module.css'

/** Rooms, and in each its boxes: what a box is meant to hold, against the narrowest its finds ask for. */
export function Rooms({ rooms }: { readonly rooms: readonly RoomShown[] }) {
  return rooms.map((room) => (
    <section key={room.name} className="section" aria-labelledby={`room-${room.name}`}>
      <h2 id={`room-${room.name}`}>{room.name === '' ? 'Boxes in no listed room' : room.name}</h2>
      {room.held !== null && <p className="soft">{`Run at ${bandWords(room.held)} relative humidity.`}</p>}
      <ul className={style.list}>
        {room.boxes.map((box) => (
          <li key={box.name} className={style.line}>
            <Link className="tall" href={`/sheets/bag?box=${encodeURIComponent(box.name)}`}>
              <strong>{box.name}</strong>
            </Link>
            <span>
              {[box.kind, box.shelf === '' ? '' : `shelf ${box.shelf}`, countWords(box.total, 'find')]
                .filter((text) => text !== '')
                .join(', ')}
            </span>
            <span>
              {box.held === null ? 'humidity not written' : `holds ${bandWords(box.held)}`}
              {box.misfits > 0 && <strong>{`; ${countWords(box.misfits, 'find')} not at home`}</strong>}
            </span>
            {box.total > 0 && <RulerRow ruler={boxRuler(box)} />}
          </li>
        ))}
      </ul>
    </section>
  ))
}
