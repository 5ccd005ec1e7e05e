import { Scroll } from '../_frame/scroll.tsx'
import { narrows, type Ruler } from '../../lib/papers/ruler.ts'
import { bandWords, numberWords } from '../../lib/wording/band.ts'
import { gapWords } from '../../lib/wording/ruler.ts'
import style from './ruler.module.css'

/** The table behind the drawing: the same, number by number. */
export function RulerTable({ ruler }: { readonly ruler: Ruler }) {
  return (
    <details className={style.behind}>
      <summary>The same as a table</summary>
      <Scroll name="Humidity, table">
        <table>
          <thead>
            <tr>
              <th scope="col">Part</th>
              <th scope="col">Limit</th>
              <th scope="col">Better at</th>
            </tr>
          </thead>
          <tbody>
            {ruler.bars.map((bar) => (
              <tr key={bar.name}>
                <th scope="row">{bar.name}</th>
                <td>{bar.limit === null ? 'none' : bandWords(bar.limit)}</td>
                <td>{bar.preference === null ? 'no preference' : bandWords(bar.preference)}</td>
              </tr>
            ))}
            <tr>
              <th scope="row">Together</th>
              <td colSpan={2}>{togetherWords(ruler)}</td>
            </tr>
            {ruler.holding !== null && (
              <tr>
                <th scope="row">Holding band</th>
                <td colSpan={2}>{bandWords(ruler.holding)}</td>
              </tr>
            )}
            {ruler.now !== null && (
              <tr>
                <th scope="row">Kept at now</th>
                <td colSpan={2}>{`${numberWords(ruler.now)} %`}</td>
              </tr>
            )}
          </tbody>
        </table>
      </Scroll>
    </details>
  )
}

function togetherWords(ruler: Ruler): string {
  if (ruler.gap !== null) return gapWords(ruler.gap)
  if (ruler.shared === null) return 'no band'
  return narrows(ruler.shared) ? bandWords(ruler.shared) : 'no limit'
}
