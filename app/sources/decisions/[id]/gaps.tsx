import type { Knowledge, NotCovered } from '../../../../lib/knowledge/knowledge.ts'
import { fieldLabel } from '../../../../lib/wording/fact.ts'
import { cellWords } from '../../../../lib/wording/rule.ts'

/** What a decision leaves out, with the reason; nothing where there is nothing. */
export function Gaps({
  id,
  name,
  gaps,
  knowledge,
}: {
  readonly id: string
  readonly name: string
  readonly gaps: readonly NotCovered[]
  readonly knowledge: Knowledge
}) {
  if (gaps.length === 0) return null
  const words = ({ when }: NotCovered) =>
    when.map((cell) => `${fieldLabel(cell.fact, knowledge)}: ${cellWords(cell, knowledge)}`).join('; ')
  return (
    <section className="section" aria-labelledby={id}>
      <h2 id={id}>{name}</h2>
      <ul className="plain-list stack">
        {gaps.map((gap) => (
          <li key={gap.what} className="measure">
            <strong>{gap.what}</strong>
            {gap.when.length > 0 && ` (${words(gap)})`}. {gap.because}
          </li>
        ))}
      </ul>
    </section>
  )
}
