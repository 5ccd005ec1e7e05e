import Link from 'next/link'
import type { BoxShown } from '../../../../lib/services/show-box.ts'
import { numberWords } from '../../../../lib/wording/band.ts'
import { gelWords } from '../../../../lib/wording/box-gel.ts'
import { diaryWords } from '../../../../lib/wording/box-diary.ts'
import { capital } from '../../../../lib/wording/capital.ts'
import { dayWords } from '../../../../lib/wording/day.ts'

/** The gel in it, and every gel before. */
export function Gel({ shown }: { readonly shown: BoxShown }) {
  const { line, gel } = shown
  if (line.tub !== null) return null
  const limit =
    line.outlook?.limitRhPercent ?? (line.needs === null || line.needs.max >= 100 ? null : line.needs.max)
  const name = encodeURIComponent(line.box.given.box)
  return (
    <section className="section" aria-labelledby="gel">
      <h2 id="gel">Gel</h2>
      <p>{`${capital(gelWords(line.box.given))}.`}</p>
      {limit !== null && (
        <p>
          <Link href={`/store/what-if?box=${name}&keep=${name}&limit=${limit}&months=12#keep`}>
            {`Keep ${line.box.given.box} under ${numberWords(limit)} % for a year: how much gel?`}
          </Link>
        </p>
      )}
      {gel.length > 0 && (
        <details>
          <summary>Its gel over the years</summary>
          <ul>
            {gel.map((entry) => (
              <li key={entry.id}>{`${dayWords(entry.on)}: ${diaryWords(entry, null)}`}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  )
}
