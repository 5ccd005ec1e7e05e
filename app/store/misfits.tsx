import Link from 'next/link'
import { rulerOfLine } from '../../lib/papers/ruler.ts'
import { bandWords } from '../../lib/wording/band.ts'
import { keepWords } from '../../lib/wording/keep.ts'
import { countWords } from '../../lib/wording/list.ts'
import { misfitWords } from '../../lib/wording/misfit.ts'
import { Invented } from '../_marks/invented.tsx'
import { RulerRow } from '../_ruler/small-rulers.tsx'
import type { BoxSeen } from './box-line.tsx'
import { misfitsOf } from './misfits-of.ts'
import style from './store.module.css'

const shownOfEach = 6

interface Props {
  readonly boxes: readonly BoxSeen[]
  readonly invented: boolean
}

/** Finds whose box does not suit them, the reason as heading, the find's own bars beside the box's humidity. */
export function Misfits({ boxes, invented }: Props) {
  const misfits = misfitsOf(boxes)
  if (misfits.length === 0) return null
  return (
    <section className="section" aria-labelledby="misfits">
      <h2 id="misfits">{`${countWords(misfits.length, 'find')} that do not fit their box`}</h2>
      {[...Map.groupBy(misfits, ({ misfit }) => misfit)].map(([misfit, group]) => (
        <div key={misfit} className="stack">
          <h3>{`${misfitWords(misfit)} (${group.length})`}</h3>
          <ul className={style.list}>
            {group.slice(0, shownOfEach).map(({ find, line }) => (
              <li key={find.findId} className={style.line}>
                <Link className="tall" href={`/finds/${find.findId}`}>
                  {`${find.line.findNumber} ${find.line.object}`} {invented && <Invented quiet />}
                </Link>
                <span>
                  {find.line.rhPercent === null ? keepWords(find.line) : `needs ${keepWords(find.line)}`}
                </span>
                <span>
                  <Link href={`/store/boxes/${line.box.id}`}>{`box ${line.box.given.box}`}</Link>
                  {[line.room, line.held === null ? '' : `holds ${bandWords(line.held)}`]
                    .filter((text) => text !== '')
                    .map((text) => `, ${text}`)}
                </span>
                {find.line.keep !== 'wet' && <RulerRow ruler={rulerOfLine(find.line)} />}
              </li>
            ))}
          </ul>
          {group.length > shownOfEach && <p className="soft">{`and ${group.length - shownOfEach} more`}</p>}
        </div>
      ))}
    </section>
  )
}
