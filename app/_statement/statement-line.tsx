import type { ReactNode } from 'react'
import type { Statement } from '../../lib/engine/plan.ts'
import type { Known, Knowledge } from '../../lib/knowledge/knowledge.ts'
import { certaintyWords, strengthWords } from '../../lib/wording/marks.ts'
import { sourceWords } from '../../lib/wording/citation.ts'
import { lookWords } from '../../lib/wording/fact.ts'
import { capital } from '../../lib/wording/capital.ts'
import { listWords } from '../../lib/wording/list.ts'
import { KnownMark } from '../_marks/known-mark.tsx'
import { Reasons } from './reasons.tsx'
import style from './statement.module.css'

interface Props {
  readonly statement: Statement
  readonly knowledge: Knowledge
  /** How many parts the find has: a line for some of them says for which. */
  readonly parts: number
  /** What stands beside the sentence: a due day, a method, who is called. */
  readonly aside?: ReactNode
}

/** One line of advice: its verb, its sentence, and the reason one tap away. */
export function StatementLine({ statement, knowledge, parts, aside }: Props) {
  const some = statement.components.length > 0 && statement.components.length < parts
  return (
    <div className={style.line} data-strength={statement.strength} data-code={statement.code}>
      <span className={style.verb}>{strengthWords[statement.strength]}</span>
      <div className={style.body}>
        <p className={style.text}>
          {some && <span className={style.whose}>{`${capital(listWords(statement.components))}: `}</span>}
          {statement.text}
        </p>
        {aside !== undefined && <div className={style.aside}>{aside}</div>}
        {statement.caution !== undefined && <p className={style.caution}>{statement.caution}</p>}
        {statement.precautionary && <UntilYouLook statement={statement} knowledge={knowledge} />}
        <p className="print-only small">{sourceWords(statement.sources, knowledge)}</p>
        <details className={style.why}>
          <summary>
            <span className={style.whyWord}>Why</span>
            <span>{certaintyWords[statement.certainty]}</span>
            {knownOf(statement).map((known) => (
              <KnownMark key={known} known={known} />
            ))}
          </summary>
          <Reasons statement={statement} knowledge={knowledge} />
        </details>
        {statement.also.length > 0 && (
          <details className={style.also}>
            <summary>{`And with it (${statement.also.length})`}</summary>
            <ul className="plain-list">
              {statement.also.map((other) => (
                <li key={other.rule}>
                  <StatementLine statement={other} knowledge={knowledge} parts={parts} />
                </li>
              ))}
            </ul>
          </details>
        )}
      </div>
    </div>
  )
}

/** Precautionary advice says so, and names what would settle it. */
function UntilYouLook({ statement, knowledge }: Pick<Props, 'statement' | 'knowledge'>) {
  const questions = [...new Set(statement.facts.flatMap((fact) => lookWords(fact, knowledge) ?? []))]
  return (
    <p className={style.until}>
      <strong>To be safe, until you look.</strong>
      {questions.length > 0 && ` ${questions.join(' ')}`}
    </p>
  )
}

const order: readonly Known[] = ['read', 'second-hand', 'common-practice', 'memory']

function knownOf(statement: Statement): readonly Known[] {
  return order.filter((known) => statement.sources.some((source) => source.known === known))
}
