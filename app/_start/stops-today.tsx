import Link from 'next/link'
import type { Standing } from '../../lib/services/standing.ts'
import { countWords } from '../../lib/wording/list.ts'
import { Invented } from '../_marks/invented.tsx'
import style from './start.module.css'

interface Props {
  readonly stops: readonly Standing[]
  readonly total: number
  readonly invented: boolean
}

/** Stops of the whole project, before anything else: each sentence once, with whom to call and which finds. */
export function StopsToday({ stops, total, invented }: Props) {
  if (stops.length === 0) return null
  const lines = stops.flatMap(({ findId, line }) =>
    line.stops.map((stop) => ({ findId, findNumber: line.findNumber, object: line.object, stop })),
  )
  const groups = [...Map.groupBy(lines, ({ stop }) => `${stop.text} ${stop.who}`)]
  return (
    <section className={style.stops} aria-labelledby="stops">
      <h2 id="stops">
        {`Stop: ${countWords(total, 'find')}`} {invented && <Invented />}
      </h2>
      <ul className={style.stopList}>
        {groups.map(([key, group]) => (
          <li key={key}>
            <p className={style.stop}>{group[0]?.stop.text}</p>
            {group[0]?.stop.who !== '' && <p className={style.who}>{`Call ${group[0]?.stop.who}`}</p>}
            <p>
              {group.map(({ findId, findNumber, object }, at) => (
                <span key={findId}>
                  {at > 0 && ', '}
                  <Link href={`/finds/${findId}`}>
                    {object === '' ? findNumber : `${findNumber} (${object})`}
                  </Link>
                </span>
              ))}
            </p>
          </li>
        ))}
      </ul>
    </section>
  )
}
