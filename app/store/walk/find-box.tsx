import { useState } from 'react'
import { stopCalled, type WalkStop } from '../../../lib/papers/walk-list.ts'
import style from './walk.module.css'

interface Props {
  readonly stops: readonly WalkStop[]
  readonly done: ReadonlySet<string>
  readonly at: number
  readonly onGo: (at: number) => void
}

/** Another box than the next: scanned, typed, or tapped in the order they stand. */
export function FindBox({ stops, done, at, onGo }: Props) {
  const [typed, setTyped] = useState('')
  const [wrong, setWrong] = useState(false)
  const go = () => {
    const found = stopCalled(stops, typed)
    setWrong(found === null)
    if (found === null) return
    setTyped('')
    onGo(found)
  }
  return (
    <details className={style.find}>
      <summary>Another box</summary>
      <form
        className="row"
        onSubmit={(event) => {
          event.preventDefault()
          go()
        }}
      >
        <div className="field">
          <label htmlFor="called">Scan or type its number</label>
          <input
            id="called"
            value={typed}
            autoComplete="off"
            autoCapitalize="characters"
            aria-invalid={wrong}
            aria-describedby={wrong ? 'called-wrong' : undefined}
            onChange={(event) => setTyped(event.target.value)}
          />
          {wrong && (
            <p id="called-wrong" role="alert" className="wrong">
              {`No box of this walk is called “${typed}”. It may stand in another room.`}
            </p>
          )}
        </div>
        <button className="button">Go to it</button>
      </form>
      <ol className={style.list}>
        {stops.map((stop, index) => (
          <li key={stop.box}>
            <button
              type="button"
              aria-current={index === at ? 'step' : undefined}
              onClick={() => onGo(index)}
            >
              <span>{stop.box}</span>
              <span className="soft">
                {done.has(stop.box) ? 'read' : stop.shelf === '' ? '' : `shelf ${stop.shelf}`}
              </span>
            </button>
          </li>
        ))}
      </ol>
    </details>
  )
}
