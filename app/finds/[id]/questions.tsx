import type { LookNext } from '../../../lib/engine/plan.ts'
import { settleWords } from '../../../lib/wording/look.ts'

/** What would settle most, as questions to take to the find. */
export function Questions({ questions }: { readonly questions: readonly LookNext[] }) {
  return (
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
  )
}
