import type { IsoDate } from '../../lib/base/calendar.ts'
import { countWords } from '../../lib/wording/list.ts'
import { BoxLine, type BoxSeen } from './box-line.tsx'
import { mostPressingFirst, presses } from './wrong-of.ts'
import style from './store.module.css'

interface Props {
  readonly boxes: readonly BoxSeen[]
  readonly today: IsoDate
  readonly most: number
}

/** What to see to first, wherever it stands. */
export function Pressing({ boxes, today, most }: Props) {
  const pressing = mostPressingFirst(boxes.filter(({ wrong }) => wrong.some(presses)))
  return (
    <section className="section" aria-labelledby="first">
      <h2 id="first">
        {pressing.length === 0
          ? 'Nothing presses'
          : `${countWords(pressing.length, 'box', 'boxes')} to see to`}
      </h2>
      {pressing.length === 0 ? (
        <p className="measure">
          Every box that was read holds what its finds bear, and no gel is past its date.
        </p>
      ) : (
        <>
          <p className="soft small measure">
            Beside each: outlined what its finds bear, dark what it likely holds today, shaded what was last
            read, on a scale from 0 to 100 %.
          </p>
          <ul className={style.boxes}>
            {pressing.slice(0, most).map(({ line, wrong }) => (
              <BoxLine key={line.box.id} line={line} wrong={wrong} today={today} where />
            ))}
          </ul>
        </>
      )}
      {pressing.length > most && (
        <p className="soft">{`and ${pressing.length - most} more, on their shelves below`}</p>
      )}
    </section>
  )
}
