import Link from 'next/link'
import type { StoreShown } from '../../lib/services/show-store.ts'
import { countWords, listWords } from '../../lib/wording/list.ts'

/** What stands nowhere that is listed: nothing is dropped because its box is unknown. */
export function Elsewhere({ elsewhere, unlisted }: Pick<StoreShown, 'elsewhere' | 'unlisted'>) {
  if (elsewhere === 0 && unlisted.length === 0) return null
  return (
    <section className="section" aria-labelledby="elsewhere">
      <h2 id="elsewhere">In no listed box</h2>
      {elsewhere > 0 && (
        <p>
          {`${countWords(elsewhere, 'find')} stand in no box that is listed here. `}
          <Link href="/finds?order=number">All finds</Link>
        </p>
      )}
      {unlisted.length > 0 && (
        <>
          <p>Finds or rounds name these boxes; nobody has written down what they are:</p>
          <ul>
            {unlisted.map(({ box, finds, rounds }) => (
              <li key={box}>
                <Link href={`/store/boxes/new?box=${encodeURIComponent(box)}`}>{box}</Link>
                {`: ${listWords([
                  ...(finds > 0 ? [countWords(finds, 'find')] : []),
                  ...(rounds > 0 ? [countWords(rounds, 'reading')] : []),
                ])}`}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}
