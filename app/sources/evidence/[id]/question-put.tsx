import { Fold } from '../../../_evidence/fold.tsx'
import type { Question } from '../../../../lib/knowledge/evidence.ts'

/** A question as it is put to whoever holds the find, with its answers. */
export function QuestionPut({ question }: { readonly question: Question }) {
  return (
    <div className="stack measure">
      <p>
        <strong>{question.asks}</strong> {[question.tell, question.why].filter(Boolean).join(' ')}
      </p>
      <Fold says="The answers, and how to tell them">
        <dl className="stack">
          {question.answers.map(({ id, label, tell }) => (
            <div key={id}>
              <dt>
                <strong>{label}</strong>
              </dt>
              <dd>{tell}</dd>
            </div>
          ))}
        </dl>
        <p className="soft small">None of these, and cannot tell, are always answers.</p>
      </Fold>
    </div>
  )
}
