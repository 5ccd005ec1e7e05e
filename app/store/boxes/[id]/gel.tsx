import type { BoxShown } from '../../../../lib/services/show-box.ts'
import { gelWords } from '../../../../lib/wording/box-gel.ts'
import { diaryWords } from '../../../../lib/wording/box-diary.ts'
import { capital } from '../../../../lib/wording/capital.ts'
import { dayWords } from '../../../../lib/wording/day.ts'

/** The gel in it, and every gel before. */
export function Gel({ shown }: { readonly shown: BoxShown }) {
  const { line, gel } = shown
  if (line.tub !== null) return null
  return (
    <section className="section" aria-labelledby="gel">
      <h2 id="gel">Gel</h2>
      <p>{`${capital(gelWords(line.box.given))}.`}</p>
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
