import Link from 'next/link'
import type { LogNext as Tells } from '../../lib/boxes/log-next.ts'
import { capital } from '../../lib/wording/capital.ts'
import { logNextWords } from '../../lib/wording/store-log-next.ts'
import type { BoxSeen } from './box-line.tsx'
import style from './store.module.css'

interface Props {
  readonly tells: readonly Tells[]
  readonly boxes: readonly BoxSeen[]
  readonly most: number
}

/** Boxes in which the next free logger would tell most, and why there. */
export function LogNext({ tells, boxes, most }: Props) {
  if (tells.length === 0) return null
  const ids = new Map(boxes.map(({ line: { box } }) => [box.given.box, box.id]))
  return (
    <section className="section" aria-labelledby="log-next">
      <h2 id="log-next">Where to put the next logger</h2>
      <ol className={style.next}>
        {tells.slice(0, most).map((next) => (
          <li key={next.box}>
            <Link className="tall" href={`/store/boxes/${ids.get(next.box) ?? ''}`}>
              <strong>{next.box}</strong>
            </Link>
            <p>{`${capital(logNextWords(next))}.`}</p>
          </li>
        ))}
      </ol>
    </section>
  )
}
