'use client'

import { useRef, useState } from 'react'
import {
  doneOn,
  nextStop,
  nothingSeen,
  saysSomething,
  stopCalled,
  type WalkSeen,
  type WalkStop,
} from '../../../lib/papers/walk-list.ts'
import { progressWords, seenOfBoxWords, waitingWords } from '../../../lib/wording/walk.ts'
import { FindBox } from './find-box.tsx'
import { StopForm } from './stop-form.tsx'
import { todayOnDevice, useEntries } from './use-entries.ts'
import { useScanner } from './use-scanner.ts'
import style from './walk.module.css'

interface Props {
  readonly project: string
  /** Of one room, or of the whole store, in the order they stand. */
  readonly stops: readonly WalkStop[]
}

/** One box at a time, in the order they stand; whatever is written is on the device before the next one is shown. */
export function Walk({ project, stops }: Props) {
  const { entries, opened, notKept, network, refused, add, undo, sendNow } = useEntries(project)
  const [at, setAt] = useState<number | null>(null)
  const [seen, setSeen] = useState<WalkSeen>(nothingSeen)
  const [said, setSaid] = useState('')
  const heading = useRef<HTMLHeadingElement>(null)
  const on = todayOnDevice()
  const done = doneOn(entries, on)
  const first = nextStop(stops, done, -1)
  const here = at ?? first
  const waiting = entries.filter(({ sentMs }) => sentMs === null).length

  const go = (next: number | null, says: string) => {
    setAt(next)
    setSeen(nothingSeen)
    setSaid(says)
    heading.current?.focus()
    scrollTo({ top: 0 })
  }
  const next = (after: number, says: string) => {
    const left = nextStop(stops, after === -1 ? done : new Set([...done, stops[after]?.box ?? '']), after)
    go(left, says)
  }
  useScanner((typed) => {
    const found = stopCalled(stops, typed)
    if (found === null) setSaid(`No box of this walk is called “${typed}”.`)
    else go(found, '')
  })

  if (!opened) return <p role="status">Looking for what this device has kept …</p>
  const stop = here === null ? undefined : stops[here]
  const keep = () => {
    if (stop === undefined || here === null) return
    if (!saysSomething(seen)) return next(here, `${stop.box} passed by.`)
    add({ id: crypto.randomUUID(), project, box: stop.box, on, atMs: Date.now(), seen, sentMs: null })
    next(here, `${stop.box}: ${seenOfBoxWords(seen)}.`)
  }
  const takeBack = () => {
    const last = undo()
    if (last === null)
      return setSaid('The last one is in the store already. Go to its box and write it again.')
    const back = stops.findIndex(({ box }) => box === last.box)
    go(back === -1 ? at : back, `${last.box} taken back.`)
    setSeen(last.seen)
  }
  return (
    <div className={style.walk}>
      <div className={style.progress}>
        <progress
          max={stops.length}
          value={stops.filter(({ box }) => done.has(box)).length}
          aria-label="Boxes read"
        />
        <p>
          {progressWords(stops.filter(({ box }) => done.has(box)).length, stops.length, stop?.shelf ?? '')}
        </p>
      </div>
      <p role="status" className={style.said}>
        {said}
      </p>
      {notKept && (
        <p role="alert" className="wrong">
          This device does not let the page keep anything: what you write is lost when the page closes before
          it is sent.
        </p>
      )}
      {stop === undefined ? (
        <>
          <h2 ref={heading} tabIndex={-1}>
            Every box is read
          </h2>
          <p>You can still go to any of them and write it again; the newer word holds.</p>
        </>
      ) : (
        <>
          <header>
            <h2 ref={heading} tabIndex={-1} className={style.box}>
              {stop.box}
            </h2>
            <p>
              {[stop.room, stop.shelf === '' ? '' : `shelf ${stop.shelf}`, stop.needs]
                .filter((text) => text !== '')
                .join(', ')}
            </p>
            {stop.lastSeen !== null && <p className="soft small">{`Last: ${stop.lastSeen}`}</p>}
            {stop.stops.map((says) => (
              <p key={says} className={style.stop}>
                <strong>Stop. Do not open it.</strong> {says}
              </p>
            ))}
            {stop.wrong !== null && <p className={style.wrong}>{stop.wrong}</p>}
          </header>
          <StopForm key={stop.box} stop={stop} seen={seen} onSeen={setSeen} />
        </>
      )}
      <div className={style.bar}>
        <button className="button" type="button" disabled={entries.length === 0} onClick={takeBack}>
          Take back
        </button>
        <button className="button first" type="button" disabled={stop === undefined} onClick={keep}>
          {saysSomething(seen) ? 'Keep, next box' : 'Pass by'}
        </button>
      </div>
      <FindBox stops={stops} done={done} at={here ?? -1} onGo={(to) => go(to, '')} />
      <div className={style.waiting} role="status">
        <p>{waitingWords(waiting, network)}</p>
        {refused !== null && <p className="wrong">{refused}</p>}
        {waiting > 0 && (
          <button className="button" type="button" onClick={sendNow}>
            Send now
          </button>
        )}
      </div>
    </div>
  )
}
