import Link from 'next/link'
import type { Knowledge } from '../../../../lib/knowledge/knowledge.ts'
import type { Thought } from '../../../../lib/field/thought.ts'
import type { Identification } from '../../../../lib/services/identification.ts'
import { capital } from '../../../../lib/wording/capital.ts'
import { foundWords, heldWords } from '../../../../lib/wording/identification.ts'
import { explanationName, likelyWords } from '../../../../lib/wording/interpretation.ts'
import { standingWords, type Stood } from '../../../../lib/wording/standing.ts'
import { Scroll } from '../../../_frame/scroll.tsx'

interface Props {
  readonly id: string
  /** Kept now, or found there word for word. */
  readonly kept: 'now' | 'before'
  readonly before: Thought['rivals']
  readonly now: Stood | undefined
  /** What it was found to be, where somebody said so with this result. */
  readonly found: Identification | undefined
  readonly knowledge: Knowledge
}

/** What became of a result: what was thought before it, and what is thought now. */
export function Told({ id, kept, before, now, found, knowledge }: Props) {
  const rivals = now?.rivals ?? []
  return (
    <section className="section" aria-labelledby="kept">
      <h2 id="kept">{kept === 'now' ? 'Kept' : 'This was kept before'}</h2>
      <p className="measure" role="status">
        {found
          ? `It was found to be ${foundWords(found.given.interpretation, knowledge)}. ${heldWords(found.given.interpretation, before)}`
          : now === undefined
            ? 'It stands in the record of its day.'
            : `Nobody has said yet what it is. ${standingWords(now, knowledge)}.`}
      </p>
      {rivals.length > 0 && before.length > 0 && (
        <Scroll name="What was thought before and now, table">
          <table className="measure">
            <thead>
              <tr>
                <th scope="col">Explanation</th>
                <th scope="col">Thought before</th>
                <th scope="col">Now</th>
              </tr>
            </thead>
            <tbody>
              {rivals.map(({ interpretation, probability, range }) => {
                const was = before.find((one) => one.interpretation === interpretation)
                return (
                  <tr key={interpretation}>
                    <th scope="row">{capital(explanationName(interpretation, knowledge))}</th>
                    <td>{was ? likelyWords(was.probability, was.range) : 'not weighed'}</td>
                    <td>{found ? settledWords(interpretation, found) : likelyWords(probability, range)}</td>
                  </tr>
                )
              })}
            </tbody>
          </table>
        </Scroll>
      )}
      <div className="row no-print">
        <Link className="button first" href={`/finds/${id}`}>
          Back to the find and its plan
        </Link>
        <Link className="button" href="/sources/score">
          How good the guesses are
        </Link>
      </div>
    </section>
  )
}

const settledWords = (interpretation: string, { given }: Identification): string =>
  interpretation === given.interpretation ? 'it is this' : 'it is not'
