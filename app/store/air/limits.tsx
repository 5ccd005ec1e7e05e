import Link from 'next/link'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import type { AirShown } from '../../../lib/services/show-air.ts'
import { leadUnknown } from '../../../lib/wording/air-how.ts'
import { limitWords } from '../../../lib/wording/air-ladder.ts'
import { Scroll } from '../../_frame/scroll.tsx'
import { KnownMark } from '../../_marks/known-mark.tsx'
import style from './air.module.css'

interface Props {
  readonly limits: AirShown['limits']
  readonly knowledge: Pick<Knowledge, 'figures'>
}

/** The upper limits of the indoor classes, metal by metal, each with how it is known; lead has none here. */
export function Limits({ limits, knowledge }: Props) {
  const names = limits.find(({ limits: own }) => own.length > 0)?.limits.map(({ name }) => name) ?? []
  return (
    <section className="section" aria-labelledby="limits">
      <h2 id="limits">The limits of the classes</h2>
      <p className="measure">
        <strong>{leadUnknown}</strong>
      </p>
      <Scroll name="Limits of the classes">
        <table className="broad">
          <caption>Upper limits of the classes of indoor air, mg/m² a year</caption>
          <thead>
            <tr>
              <th scope="col">Coupon</th>
              {names.map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
              <th scope="col">Known</th>
            </tr>
          </thead>
          <tbody>
            {limits.map(({ metal, weighed, limits: own }) => (
              <tr key={`${metal} ${weighed}`}>
                <th scope="row">{`${metal}, ${weighed}`}</th>
                {own.length === 0 ? (
                  <td colSpan={names.length + 1}>not known to us</td>
                ) : (
                  <>
                    {own.map(({ name, to, figure }) => (
                      <td key={name}>
                        <Link className={style.number} href={`/sources/figures/${figure}`}>
                          {limitWords(to)}
                        </Link>
                      </td>
                    ))}
                    <td>
                      {[...new Set(own.flatMap(({ figure }) => knowledge.figures[figure]?.known ?? []))].map(
                        (known) => (
                          <KnownMark key={known} known={known} />
                        ),
                      )}
                    </td>
                  </>
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  )
}
