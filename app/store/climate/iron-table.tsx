import Link from 'next/link'
import {
  ironHeadline,
  ironHereWords,
  ironRoomWords,
  overCeiling,
  type IronCeiling,
} from '../../../lib/wording/climate-iron.ts'
import { KnownMark } from '../../_marks/known-mark.tsx'
import { Scroll } from '../../_frame/scroll.tsx'
import { figureOf, type PageFigures } from './figures.ts'
import style from './climate.module.css'

interface Props {
  readonly ceilings: readonly IronCeiling[]
  readonly figures: PageFigures
}

/** The air at a surface against what is published for iron with chloride, not only against dew. */
export function IronTable({ ceilings, figures }: Props) {
  return (
    <div className={style.iron}>
      <p className={ceilings.some(overCeiling) ? style.over : undefined}>
        <strong>{ironHeadline(ceilings)}</strong>{' '}
        <Link href="/sources/contested/iron-humidity">How dry is dry enough is contested</Link>
      </p>
      <Scroll name="Published humidities for iron">
        <table className="small">
          <thead>
            <tr>
              <th scope="col">Published for iron</th>
              <th scope="col">At this surface</th>
              <th scope="col">The room may be</th>
            </tr>
          </thead>
          <tbody>
            {ceilings.map((ceiling) => {
              const figure = figureOf(figures, ceiling.figure)
              return (
                <tr key={ceiling.figure}>
                  <th scope="row">
                    {figure.printed}{' '}
                    <span className={style.what}>
                      <Link href={`/sources/figures/${figure.id}`}>{figure.says}</Link>{' '}
                      <KnownMark known={figure.known} />
                    </span>
                  </th>
                  <td className={overCeiling(ceiling) ? style.strong : undefined}>
                    {ironHereWords(ceiling)}
                  </td>
                  <td>{ironRoomWords(ceiling)}</td>
                </tr>
              )
            })}
          </tbody>
        </table>
      </Scroll>
    </div>
  )
}
