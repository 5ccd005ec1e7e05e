import type { IsoDate } from '../../lib/base/calendar.ts'
import { standsWords, surroundingsWords } from '../../lib/wording/store-place.ts'
import { BoxLine } from './box-line.tsx'
import type { RoomSeen } from './places-of.ts'
import style from './store.module.css'

interface Props {
  readonly rooms: readonly RoomSeen[]
  readonly today: IsoDate
  /** Few enough to be read at once: rooms stand open. */
  readonly open: boolean
}

/** Rooms, in each its shelves, on each its boxes in the order they stand. */
export function Rooms({ rooms, today, open }: Props) {
  return rooms.map(({ room, shelves, counts }) => (
    <section key={room.name} className="section" aria-label={nameOf(room.name)}>
      <details open={open} className={style.room}>
        <summary>
          <h2>{nameOf(room.name)}</h2>
          <span className="soft">{roomWords(counts)}</span>
        </summary>
        <p className="soft">
          {surroundingsWords(room.surroundings)}
          {room.room === null && room.name !== '' && ' Boxes name this room; nobody has listed it yet.'}
        </p>
        {shelves.map(({ shelf, boxes }) => (
          <div key={shelf} className={style.shelf}>
            <h3>{shelf === '' ? 'On no named shelf' : `Shelf ${shelf}`}</h3>
            <ul className={style.boxes}>
              {boxes.map(({ line, wrong }) => (
                <BoxLine key={line.box.id} line={line} wrong={wrong} today={today} />
              ))}
            </ul>
          </div>
        ))}
      </details>
    </section>
  ))
}

function roomWords(counts: RoomSeen['counts']): string {
  return counts.pressing === 0 ? standsWords(counts) : `${standsWords(counts)}; ${counts.pressing} to see to`
}

const nameOf = (name: string) => (name === '' ? 'In no named room' : name)
