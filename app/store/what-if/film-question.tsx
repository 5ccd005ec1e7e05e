import Link from 'next/link'
import { KnownMark } from '../../_marks/known-mark.tsx'
import type { Typed } from './asked-change.ts'
import type { FilmWords } from './questions.tsx'
import style from './what-if.module.css'

interface Props {
  readonly films: readonly FilmWords[]
  readonly typed: Typed
  readonly onType: (name: 'film' | 'film_then', text: string) => void
}

/** Packs of film only: what they are of, and what they would be of. */
export function FilmQuestion({ films, typed, onType }: Props) {
  const choice = (name: 'film' | 'film_then', none: string, label: string) => (
    <select
      name={name}
      className={style.pick}
      aria-label={label}
      value={typed[name]}
      onChange={(event) => onType(name, event.target.value)}
    >
      <option value="">{none}</option>
      {films.map(({ id, says }) => (
        <option key={id} value={id}>
          {says}
        </option>
      ))}
    </select>
  )
  return (
    <div className={style.dial}>
      <h2>What if packs were of a better film?</h2>
      <p className={style.sentence}>
        They are of {choice('film', 'nobody has said', 'Film now')} and would be of{' '}
        {choice('film_then', 'the same', 'Film instead')}
      </p>
      <details>
        <summary>What is known of films</summary>
        <ul className="small">
          {films.map(({ id, says, known }) => (
            <li key={id}>
              <Link href={`/sources/figures/${id}`}>{says}</Link> <KnownMark known={known} />
            </li>
          ))}
        </ul>
        <p className="small soft">
          Taken for 25 micrometres, for all sides of the pack by its measures, or of a cube where nobody
          measured it.
        </p>
      </details>
    </div>
  )
}
