'use client'

import Link from 'next/link'
import { useActionState, useState } from 'react'
import type { IsoDate } from '../../../lib/base/calendar.ts'
import { wettingWords } from '../../../lib/wording/flood.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { keepFlood } from './keep-flood.ts'

interface Props {
  readonly room: string
  readonly today: IsoDate
  readonly boxes: readonly { readonly box: string; readonly shelf: string; readonly finds: number }[]
}

/** Boxes that stayed dry are unticked; all are ticked at first, for a box not opened yet may hold water. */
export function FloodForm({ room, today, boxes }: Props) {
  const [said, action, busy] = useActionState(keepFlood, null)
  const [ticked, setTicked] = useState<ReadonlySet<string>>(() => new Set(boxes.map(({ box }) => box)))
  const [how, setHow] = useState('')
  const finds = boxes.reduce((sum, one) => sum + (ticked.has(one.box) ? one.finds : 0), 0)
  const turn = (box: string) =>
    setTicked((before) => {
      const after = new Set(before)
      if (!after.delete(box)) after.add(box)
      return after
    })
  return (
    <form action={action} className="stack section" aria-labelledby="reached">
      <input type="hidden" name="room" value={room} />
      <h2 id="reached">{`${room}: what did the water reach?`}</h2>
      <fieldset className="choices">
        <legend>Boxes it reached, or that nobody has opened yet</legend>
        {boxes.map(({ box, shelf, finds: held }) => (
          <label key={box} className="tall">
            <input
              type="checkbox"
              name="box"
              value={box}
              checked={ticked.has(box)}
              onChange={() => turn(box)}
            />
            {[box, shelf === '' ? '' : `shelf ${shelf}`, countWords(held, 'find')]
              .filter((text) => text !== '')
              .join(', ')}
          </label>
        ))}
      </fieldset>
      <fieldset className="choices">
        <legend>How did it come?</legend>
        {Object.entries(wettingWords).map(([id, words]) => (
          <label key={id} className="tall">
            <input type="radio" name="how" value={id} checked={how === id} onChange={() => setHow(id)} />
            {words}
          </label>
        ))}
      </fieldset>
      <div className="field">
        <label htmlFor="on">Day</label>
        <input id="on" name="on" type="date" defaultValue={today} max={today} required />
      </div>
      <div className="field">
        <label htmlFor="note">Anything else worth knowing</label>
        <textarea id="note" name="note" rows={3} maxLength={2000} />
      </div>
      <div className="row">
        <button className="button first" disabled={busy}>
          {busy ? 'Recording …' : `Record ${countWords(finds, 'find')} as wet`}
        </button>
      </div>
      <div role="status" className={said?.ok === false ? 'wrong' : undefined}>
        {said?.says.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {said?.ok === true && (
          <p>
            <Link href="/finds?order=urgency">What to do first, find by find</Link>
          </p>
        )}
      </div>
    </form>
  )
}
