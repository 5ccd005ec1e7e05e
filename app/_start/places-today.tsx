import Link from 'next/link'
import type { StartPage } from '../../lib/services/start-page.ts'
import { bandWords } from '../../lib/wording/band.ts'
import { countWords } from '../../lib/wording/list.ts'
import { UrgencyMark } from '../_marks/urgency-mark.tsx'
import style from './start.module.css'

interface Props {
  readonly start: StartPage
}

const shown = 6

export function IntakeToday({ start }: Props) {
  const rows = start.toMend.reduce((sum, { rowsRejected }) => sum + rowsRejected, 0)
  return (
    <section aria-labelledby="intake">
      <h2 id="intake">
        <Link href="/intake">Intake</Link>
      </h2>
      <p>Type or paste the next bag; its plan stands beside it as you type.</p>
      {rows > 0 && (
        <>
          <p>
            <strong>{`${countWords(rows, 'row')} of imported files could not be read.`}</strong> They wait to
            be mended:
          </p>
          <ul className="plain-list">
            {start.toMend.slice(0, shown).map((batch) => (
              <li key={batch.id}>
                <Link className="tall" href={`/import/${batch.id}`}>
                  {`${batch.fileName}: ${countWords(batch.rowsRejected, 'row')}`}
                </Link>
              </li>
            ))}
          </ul>
        </>
      )}
      <p>
        <Link className="tall" href="/import">
          Import a file
        </Link>
      </p>
    </section>
  )
}

export function BenchToday({ start }: Props) {
  return (
    <section aria-labelledby="bench">
      <h2 id="bench">
        <Link href="/bench">Bench</Link>
      </h2>
      <ul className={style.counts}>
        {start.byUrgency.map(({ urgency, finds }) => (
          <li key={urgency}>
            <UrgencyMark urgency={urgency} />
            <Link
              className={style.count}
              href={`/finds?urgency=${urgency}`}
              aria-label={`${countWords(finds, 'find')}: ${urgency}`}
            >
              {finds}
            </Link>
          </li>
        ))}
      </ul>
      {start.pressing.length > 0 && <h3>First</h3>}
      <ol className="plain-list">
        {start.pressing.slice(0, shown).map(({ findId, line }) => (
          <li key={findId} className={style.pressing}>
            <Link className="tall" href={`/finds/${findId}`}>{`${line.findNumber} ${line.object}`}</Link>
            <UrgencyMark urgency={line.urgency} />
            <p className="small soft">{line.reasons[0]}</p>
          </li>
        ))}
      </ol>
    </section>
  )
}

export function StoreToday({ start }: Props) {
  const wet = start.byBand.filter(({ band }) => band === 'wet').reduce((sum, { finds }) => sum + finds, 0)
  const driest = start.byBand.flatMap(({ rhPercent, finds }) =>
    rhPercent === null ? [] : [{ rhPercent, finds }],
  )
  return (
    <section aria-labelledby="store">
      <h2 id="store">
        <Link href="/store">Store</Link>
      </h2>
      <ul className="plain-list stack">
        {start.conflicts > 0 && (
          <li>
            <strong>{`${countWords(start.conflicts, 'find')} that no one humidity suits`}</strong>: a
            conservator decides.
          </li>
        )}
        {wet > 0 && <li>{`${countWords(wet, 'find')} to be kept wet.`}</li>}
        {driest
          .toSorted((a, b) => a.rhPercent.max - b.rhPercent.max)
          .slice(0, shown)
          .map(({ rhPercent, finds }) => (
            <li key={bandWords(rhPercent)}>{`${countWords(finds, 'find')}: ${bandWords(rhPercent)}`}</li>
          ))}
      </ul>
      <p>
        <Link className="tall" href="/store">
          Boxes, rooms and what does not fit
        </Link>
      </p>
    </section>
  )
}
