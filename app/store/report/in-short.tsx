import type { StoreYear } from '../../../lib/services/store-report.ts'
import {
  drierSentence,
  dueSentence,
  gelSentence,
  riskSentence,
  statesSentence,
} from '../../../lib/wording/store-report.ts'
import { eventsSentence, movementsSentence } from '../../../lib/wording/store-report-events.ts'

/** The year in a few sentences: whoever reads no further has read this. */
export function InShort({ told }: { readonly told: StoreYear }) {
  const { report } = told
  const lines = [
    statesSentence(report),
    riskSentence(report),
    gelSentence(report),
    dueSentence(report),
    eventsSentence(told),
    movementsSentence(told.movements),
    ...(told.running ? [drierSentence(told.drier)] : []),
  ]
  return (
    <section className="section" aria-labelledby="short">
      <h2 id="short">In short</h2>
      <ul className="measure stack">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  )
}
