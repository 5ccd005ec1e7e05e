import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { capital } from '../../lib/wording/capital.ts'
import { codeLabel } from '../../lib/wording/fact.ts'
import { chanceWords } from '../../lib/wording/interpretation.ts'
import { planChangesWords } from '../../lib/wording/plan-change.ts'
import type { AnswerTable } from '../../lib/wording/request.ts'
import style from './requests.module.css'

interface Props {
  readonly table: AnswerTable
  readonly knowledge: Knowledge
  readonly parts: number
  readonly tellsChanges: boolean
}

/** The answers of which one will come: how likely each is, what would lead then, and what the plan would say. */
export function Answers({ table, knowledge, parts, tellsChanges }: Props) {
  const whose = parts > 1 ? ` (${table.component})` : ''
  const changing = tellsChanges && table.answers.some(({ changes }) => changes.length > 0)
  return (
    <div className="stack">
      <table className={style.answers}>
        <caption>
          {table.asks}
          {whose}
          {table.label !== '' && <span className={style.label}>{` ${table.label}`}</span>}
        </caption>
        <thead>
          <tr>
            <th scope="col">If</th>
            <th scope="col">Chance of that</th>
            <th scope="col">Likeliest then</th>
            {changing && <th scope="col">The plan would then also say</th>}
          </tr>
        </thead>
        <tbody>
          {table.answers.map(({ outcome, chance, interpretation, probability, changes }) => (
            <tr key={outcome}>
              <th scope="row">{capital(outcome)}</th>
              <td data-name="Chance of that">{chanceWords(chance)}</td>
              <td data-name="Likeliest then">
                {`${codeLabel(interpretation, knowledge)}, ${chanceWords(probability)}`}
              </td>
              {changing && (
                <td data-name="The plan would then also say">
                  <Changes says={planChangesWords(changes)} />
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
      {tellsChanges && !changing && (
        <p className="small soft">
          Whichever answer comes, the plan would say nothing that it does not say now.
        </p>
      )}
    </div>
  )
}

function Changes({ says }: { readonly says: readonly string[] }) {
  if (says.length === 0) return <>nothing more</>
  return (
    <ul className="plain-list">
      {says.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  )
}
