import type { Ref } from 'react'
import { monthly, type FanPicture } from '../../lib/papers/box-fan.ts'
import { numberWords } from '../../lib/wording/band.ts'
import { between, seenWords } from '../../lib/wording/chart-fan.ts'
import { instantDayWords } from '../../lib/wording/chart-time.ts'
import { Scroll } from '../_frame/scroll.tsx'
import style from './chart.module.css'

interface Props {
  readonly ref: Ref<HTMLDetailsElement>
  readonly name: string
  readonly picture: FanPicture
}

/** The table behind the forecast: a line a month, and what was seen. */
export function FanTable({ ref, name, picture }: Props) {
  return (
    <details ref={ref} className={style.behind}>
      <summary>The same as a table</summary>
      <Scroll name={`Forecast of ${name}, table`}>
        <table>
          <thead>
            <tr>
              <th scope="col">On</th>
              <th scope="col">Middle</th>
              <th scope="col">As likely as not</th>
              <th scope="col">Eight times in ten</th>
            </tr>
          </thead>
          <tbody>
            {monthly(picture.ahead).map(({ at, middle, half, eight }) => (
              <tr key={at}>
                <th scope="row">{instantDayWords(at, 'UTC')}</th>
                <td>{`${numberWords(middle)} %`}</td>
                <td>{between(half)}</td>
                <td>{between(eight)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      {picture.seen.length > 0 && (
        <>
          <p>Seen:</p>
          <ul>
            {picture.seen.map((point) => (
              <li key={`${point.at} ${point.by}`}>{seenWords(point)}</li>
            ))}
          </ul>
        </>
      )}
    </details>
  )
}
