import Link from 'next/link'
import type { Decision, Knowledge, Rule } from '../../../../lib/knowledge/knowledge.ts'
import { certaintyWords, strengthWords } from '../../../../lib/wording/marks.ts'
import { cellWords, effectWords } from '../../../../lib/wording/rule.ts'
import { figureWords } from '../../../../lib/wording/figure.ts'
import { SourceList } from '../../source-list.tsx'
import style from './rule-rows.module.css'

interface Props {
  readonly rule: Rule
  readonly decision: Decision
  readonly knowledge: Knowledge
}

/** One rule: its cells as a row of the table, and beneath it the words, figures and works it stands on. */
export function RuleRows({ rule, decision, knowledge }: Props) {
  const columns = decision.facts.length + 3
  return (
    <tbody id={rule.id} className={style.rule}>
      <tr>
        <th scope="row">
          {rule.title}
          {rule.retired !== null && <span className="soft">{` (retired: ${rule.retired})`}</span>}
        </th>
        {decision.facts.map((fact) => (
          <td key={fact}>
            {rule.when
              .filter((cell) => cell.fact === fact)
              .map((cell) => cellWords(cell, knowledge))
              .join('; ')}
          </td>
        ))}
        <td>{effectWords(rule.then, decision, knowledge)}</td>
        <td>{`${strengthWords[rule.strength]}; ${certaintyWords[rule.certainty]}`}</td>
      </tr>
      <tr>
        <td colSpan={columns}>
          <div className={style.words}>
            {rule.text !== '' && <p>{rule.text}</p>}
            <p className="soft">{rule.because}</p>
            {rule.caution !== null && <p>{rule.caution}</p>}
            {rule.overrides.length > 0 && (
              <p className="small">{`Silences: ${rule.overrides.map((id) => titleOf(id, decision)).join('; ')}`}</p>
            )}
            {rule.figures.length > 0 && (
              <p className="small">
                {'Figures: '}
                {rule.figures.map((id, at) => (
                  <span key={id}>
                    {at > 0 && ', '}
                    <Link href={`/sources/figures/${id}`}>{figureOf(id, knowledge)}</Link>
                  </span>
                ))}
              </p>
            )}
            {rule.contested !== null && (
              <p className="small">
                <Link href={`/sources/contested/${rule.contested}`}>
                  {`Contested: ${knowledge.contested[rule.contested]?.question ?? rule.contested}`}
                </Link>
              </p>
            )}
            <SourceList sources={rule.sources} knowledge={knowledge} />
          </div>
        </td>
      </tr>
    </tbody>
  )
}

function titleOf(id: string, decision: Decision): string {
  return decision.rules.find((rule) => rule.id === id)?.title ?? id
}

function figureOf(id: string, knowledge: Knowledge): string {
  const figure = knowledge.figures[id]
  return figure === undefined ? id : `${figureWords(figure, knowledge)} (${figure.says})`
}
