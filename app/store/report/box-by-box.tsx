import Link from 'next/link'
import { boxYears, type BoxYear } from '../../../lib/papers/store-report-line.ts'
import type { StoreYear } from '../../../lib/services/store-report.ts'
import { numberWords } from '../../../lib/wording/band.ts'
import { kilogramWords } from '../../../lib/wording/box-gel.ts'
import { dayWords } from '../../../lib/wording/day.ts'
import { listWords } from '../../../lib/wording/list.ts'
import { boxStateWords, dueWords, renewalHowWords } from '../../../lib/wording/store-report.ts'
import { seenWords } from '../../../lib/wording/store-wrong.ts'
import { Scroll } from '../../_frame/scroll.tsx'
import style from './report.module.css'

/** Every box in a line; folded, and printed where it stands open. */
export function BoxByBox({ told }: { readonly told: StoreYear }) {
  const lines = boxYears(told.lines, told.report)
  const file = `/store/report/file?year=${told.year}&format=csv&table=`
  return (
    <section className={`section ${style.boxes}`} aria-labelledby="boxes">
      <h2 id="boxes">Box by box</h2>
      <details>
        <summary>{`All ${lines.length} boxes; opened, they are printed too`}</summary>
        <Scroll name="Every box in the year">
          <table className="broad">
            <thead>
              <tr>
                <th scope="col">Box</th>
                <th scope="col">Room</th>
                <th scope="col" className="number">
                  Finds
                </th>
                <th scope="col" className="number">
                  Bear
                </th>
                <th scope="col">Stood</th>
                <th scope="col">Last read</th>
                <th scope="col">Renewed</th>
                <th scope="col">Next</th>
              </tr>
            </thead>
            <tbody>
              {lines.map((line) => (
                <tr key={line.box}>
                  <th scope="row">
                    <Link href={`/store/boxes/${told.boxIds[line.box]}`}>{line.box}</Link>
                  </th>
                  <td>{line.room}</td>
                  <td className="number">{line.finds}</td>
                  <td className="number">
                    {line.limitRhPercent === null ? '' : `${numberWords(line.limitRhPercent)} %`}
                  </td>
                  <td>{boxStateWords[line.state].label}</td>
                  <td>{line.lastRead === null ? '' : seenWords(line.lastRead)}</td>
                  <td>{doneWords(line)}</td>
                  <td>{dueOf(line)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroll>
      </details>
      <p className="no-print">
        {'As CSV: '}
        <a href={`${file}boxes`} download>
          boxes
        </a>
        {', '}
        <a href={`${file}renewals`} download>
          renewals
        </a>
        {', '}
        <a href={`${file}events`} download>
          water and lids
        </a>
        {', '}
        <a href={`${file}movements`} download>
          movements
        </a>
      </p>
    </section>
  )
}

const doneWords = ({ done }: BoxYear): string =>
  listWords(
    done.map(({ on, gelKg, how }) => `${dayWords(on)}, ${kilogramWords(gelKg)}, ${renewalHowWords[how]}`),
  )

function dueOf({ due }: BoxYear): string {
  const day = due?.likely ?? due?.early ?? null
  if (due === null || day === null) return ''
  return due.when === 'perhaps'
    ? `perhaps from ${dayWords(day)}`
    : `${dueWords[due.when]}, about ${dayWords(day)}`
}
