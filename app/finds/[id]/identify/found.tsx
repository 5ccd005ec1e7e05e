import type { Knowledge } from '../../../../lib/knowledge/knowledge.ts'
import type { Identification } from '../../../../lib/services/identification.ts'
import { capital } from '../../../../lib/wording/capital.ts'
import { beforeWords, foundWords, heldWords, sourceWords } from '../../../../lib/wording/identification.ts'
import { whoWords } from '../../../../lib/wording/marks.ts'
import { Invented } from '../../../_marks/invented.tsx'

interface Props {
  /** Oldest first. */
  readonly identifications: readonly Identification[]
  readonly severalParts: boolean
  readonly invented: boolean
  readonly knowledge: Knowledge
}

/** What of a find was found out so far, the newest first, each with what was thought before it; it prints too. */
export function FoundOut({ identifications, severalParts, invented, knowledge }: Props) {
  if (identifications.length === 0) return null
  const newest = identifications.toReversed()
  return (
    <section className="section" aria-labelledby="found-out">
      <h2 id="found-out">What was found out {invented && <Invented />}</h2>
      <ol className="plain-list stack" reversed>
        {newest.map(({ id, given, thought, by }, at) => {
          const overruled = newest
            .slice(0, at)
            .some((one) => one.given.matter === given.matter && one.given.component === given.component)
          return (
            <li key={id} className="stack measure">
              <h3>
                {knowledge.matters[given.matter]?.asks ?? given.matter}
                {severalParts && <span className="soft">{` (${given.component})`}</span>}
              </h3>
              <p>
                <strong>{`${capital(foundWords(given.interpretation, knowledge))}.`}</strong>{' '}
                {overruled && 'Somebody found otherwise later: that stands above, and counts. '}
                {given.words}
              </p>
              <p>
                {beforeWords(thought.rivals, knowledge)} {heldWords(given.interpretation, thought.rivals)}
              </p>
              <p className="small soft">
                {`${sourceWords(given, knowledge)}. Entered by ${by.name}, ${whoWords[by.role]} (unverified).`}
              </p>
            </li>
          )
        })}
      </ol>
    </section>
  )
}
