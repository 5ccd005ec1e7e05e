import Link from 'next/link'
import type { LookNext } from '../../../lib/engine/plan.ts'
import { settleWords } from '../../../lib/wording/look.ts'

interface Props {
  readonly questions: readonly LookNext[]
  /** Where they can be answered; null in a plan that was issued once and is not of today. */
  readonly answerAt: string | null
}

/** What would settle most, as questions to take to the find. */
export function Questions({ questions, answerAt }: Props) {
  return (
    <div className="stack">
      <ol className="stack measure">
        {questions.slice(0, 5).map((question) => (
          <li key={question.fact}>
            <p>
              <strong>{question.asks}</strong> {question.tell}
            </p>
            <p className="small soft">
              {question.why} {settleWords(question)}
            </p>
          </li>
        ))}
      </ol>
      {answerAt !== null && (
        <p className="no-print">
          <Link className="button" href={answerAt}>
            Look and answer, one at a time
          </Link>
        </p>
      )}
    </div>
  )
}
