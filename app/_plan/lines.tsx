import type { Caution, Objection, Plan, Statement, Step } from '../../lib/engine/plan.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { dayWords } from '../../lib/wording/day.ts'
import { valueLabel } from '../../lib/wording/fact.ts'
import { whoWords } from '../../lib/wording/marks.ts'
import { StatementLine } from '../_statement/statement-line.tsx'
import { capital } from '../../lib/wording/capital.ts'
import style from './lines.module.css'

interface Known {
  readonly knowledge: Knowledge
  /** How many parts the find has: a line for some of them says for which. */
  readonly parts: number
}

export function Lines({
  statements,
  knowledge,
  parts,
}: Known & { readonly statements: readonly Statement[] }) {
  return (
    <ul className={style.lines}>
      {statements.map((statement) => (
        <li key={statement.rule}>
          <StatementLine statement={statement} knowledge={knowledge} parts={parts} />
        </li>
      ))}
    </ul>
  )
}

/** What a person does, in order, with who and by when. */
export function Steps({ steps, knowledge, parts }: Known & { readonly steps: readonly Step[] }) {
  return (
    <ol className={style.steps}>
      {steps.map((step) => (
        <li key={step.rule}>
          <StatementLine statement={step} knowledge={knowledge} parts={parts} aside={asideOf(step)} />
        </li>
      ))}
    </ol>
  )
}

function asideOf({ who, by, due, until }: Step): string {
  const day = due === null ? '' : ` (${dayWords(due)})`
  const end = until === null ? '' : `, until ${until}`
  return `${capital(whoWords[who])}, ${by}${day}${end}`
}

/** Warnings and notes; stops stand by themselves, above everything. */
export function Cautions({ cautions, knowledge, parts }: Known & { readonly cautions: readonly Caution[] }) {
  return (
    <ul className={style.lines}>
      {cautions.map((caution) => (
        <li key={caution.rule} data-level={caution.level}>
          <StatementLine
            statement={caution}
            knowledge={knowledge}
            parts={parts}
            aside={caution.who === '' ? undefined : <strong>{`Call ${caution.who}`}</strong>}
          />
        </li>
      ))}
    </ul>
  )
}

export function Objections({
  objections,
  knowledge,
  parts,
}: Known & { readonly objections: readonly Objection[] }) {
  return (
    <ul className={style.lines}>
      {objections.map((objection) => (
        <li key={`${objection.rule} ${objection.to}`}>
          <StatementLine
            statement={objection}
            knowledge={knowledge}
            parts={parts}
            aside={`${objection.level === 'block' ? 'Speaks against' : 'Before you do that'}: ${valueLabel('proposed', objection.to, knowledge)}`}
          />
        </li>
      ))}
    </ul>
  )
}

export function NotCovered({ gaps }: { readonly gaps: Plan['notCovered'] }) {
  return (
    <ul className="plain-list stack">
      {gaps.map(({ what, because }) => (
        <li key={what} className="measure">
          We have no advice on <strong>{what.charAt(0).toLowerCase() + what.slice(1)}</strong>. {because}
        </li>
      ))}
    </ul>
  )
}
