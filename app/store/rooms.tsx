import type { IsoDate } from '../../lib/base/calendar.ts'
import { countWords } from '../../lib/wording/list.ts'
import { standsWords, surroundingsWords } from '../../lib/wording/store-place.ts'
import { BoxLine } from './box-line.tsx'
import type { RoomSeen, ShelfSeen } from './places-of.ts'
import style from './store.module.css'

interface Props {
  readonly rooms: readonly RoomSeen[]
  readonly today: IsoDate
  /** Few enough to be read at once: shelves stand open. */
  readonly open: boolean
}

/** Rooms, in each its shelves, on each its boxes in the order they stand. */
export function Rooms({ rooms, today, open }: Props) {
  return rooms.map(({ room, shelves, counts }) => (
    <section key={room.name} className="section" aria-label={nameOf(room.name)}>
      <h2>{nameOf(room.name)}</h2>
      <p className="soft">
        {`${standsWords(counts)}. ${surroundingsWords(room.surroundings)}`}
        {room.room === null && room.name !== '' && ' Boxes name this room; nobody has listed it yet.'}
      </p>
      {shelves.map((shelf) => (
        <details key={shelf.shelf} open={open} className={style.shelf}>
          <summary>
            <h3>{shelf.shelf === '' ? 'On no named shelf' : `Shelf ${shelf.shelf}`}</h3>
            <span className="soft">{shelfWords(shelf)}</span>
          </summary>
          <ul className={style.boxes}>
            {shelf.boxes.map(({ line, wrong }) => (
              <BoxLine key={line.box.id} line={line} wrong={wrong} today={today} />
            ))}
          </ul>
        </details>
      ))}
    </section>
  ))
}

function shelfWords({ boxes, pressing }: ShelfSeen): string {
  const count = countWords(boxes.length, 'box', 'boxes')
  return pressing === 0 ? count : `${count}, ${pressing} to see to`
}

const nameOf = (name: string) => (name === '' ? 'In no named room' : name)
