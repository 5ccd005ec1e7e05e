import Link from 'next/link'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import type { AirShown } from '../../../lib/services/show-air.ts'
import { noMeaning } from '../../../lib/wording/air-how.ts'
import { capital } from '../../../lib/wording/capital.ts'
import { figureWords } from '../../../lib/wording/figure.ts'
import { KnownMark } from '../../_marks/known-mark.tsx'
import style from './air.module.css'

interface Props {
  readonly meaning: AirShown['meaning']
  readonly knowledge: Knowledge
}

/** Where to read on: what is published of each metal and the air, and nothing made up beyond it. */
export function Meaning({ meaning, knowledge }: Props) {
  return (
    <section className="section" aria-labelledby="meaning">
      <h2 id="meaning">What it means for the finds</h2>
      <p className="measure">{noMeaning}</p>
      <div className={style.meaning}>
        {meaning.map(({ metal, contested, figures }) => (
          <div key={metal}>
            <h3>{capital(metal)}</h3>
            <ul>
              {contested.map((id) => (
                <li key={id}>
                  {'Contested: '}
                  <Link href={`/sources/contested/${id}`}>{knowledge.contested[id]?.question}</Link>
                </li>
              ))}
              {figures.flatMap((id) => {
                const figure = knowledge.figures[id]
                return figure === undefined
                  ? []
                  : [
                      <li key={id}>
                        <Link href={`/sources/figures/${id}`}>{figure.says}</Link>
                        {`: ${figureWords(figure, knowledge)} `}
                        <KnownMark known={figure.known} />
                      </li>,
                    ]
              })}
            </ul>
          </div>
        ))}
      </div>
    </section>
  )
}
