import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import type { AnalysesShown } from '../../../lib/services/plan-analyses.ts'
import { consideredWords, leftOutLines, nearnessWords } from '../../../lib/wording/analyses-text.ts'
import { PrintButton } from '../../_papers/print-button.tsx'
import { Batch } from './batch.tsx'

interface Props {
  readonly shown: AnalysesShown
  readonly knowledge: Knowledge
}

/** The finds chosen, method by method, what was left out and why; or why nothing is chosen. */
export function Chosen({ shown, knowledge }: Props) {
  const { assemblage, finds, open, names, flaws } = shown
  const nameOf = (find: string) => names.get(find) ?? find
  if (open === 0)
    return (
      <p className="measure">
        {finds === 0
          ? 'No find is recorded in this project yet.'
          : 'Nothing that is recorded of these finds has more than one explanation, so no analysis is worth asking for on that account. Record what is seen on them, and it stands here.'}
      </p>
    )
  if (assemblage === null)
    return flaws.length > 0 ? null : (
      <p className="measure">
        {`On ${open.toLocaleString('en-GB')} of ${finds.toLocaleString('en-GB')} finds something stands open. Give the hours for at least one method, and the finds that they settle most for stand here.`}
      </p>
    )
  const { methods, leftOut, candidates, weightedBits, boundWeightedBits, proved } = assemblage
  const sent = methods.some(({ asks }) => asks.length > 0)
  return (
    <>
      <p className="measure">{consideredWords(finds, open, candidates)}</p>
      {sent && (
        <>
          <p className="soft measure">
            Finds are weighed by their significance, and by how much of their plan hangs on the answer. What
            two methods would tell alike counts once. {nearnessWords(weightedBits, boundWeightedBits, proved)}
          </p>
          <p className="no-print">
            <PrintButton says="Print the lists" />
          </p>
        </>
      )}
      {methods.map((batch) => (
        <Batch key={batch.method} batch={batch} method={knowledge.methods[batch.method]!} nameOf={nameOf} />
      ))}
      {leftOut.length > 0 && (
        <section className="section" aria-labelledby="left-out">
          <h2 id="left-out">Left out</h2>
          <ul className="stack">
            {leftOutLines(leftOut, knowledge, nameOf).map(({ who, why }) => (
              <li key={`${who} ${why}`} className="measure">
                <strong>{who}</strong>
                {`: ${why}`}
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  )
}
