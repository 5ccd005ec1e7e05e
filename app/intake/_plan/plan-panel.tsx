import { memo, useMemo, useRef, type ReactNode } from 'react'
import type { BagPlanner, Planned } from '../../../lib/field/bag.ts'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import type { FieldName } from '../../../lib/record/fields.ts'
import { UrgencyMark } from '../../_marks/urgency-mark.tsx'
import { Keeping } from '../../_plan/keeping.tsx'
import { Cautions, Lines, NotCovered, Objections, Steps } from '../../_plan/lines.tsx'
import { Question } from './question.tsx'
import style from './plan.module.css'

interface Props {
  readonly planned: Planned
  readonly planner: BagPlanner
  readonly knowledge: Knowledge
  readonly onAnswer: (part: string | null, field: FieldName, text: string) => void
}

/** The whole plan of the find in hand. */
export const PlanPanel = memo(function PlanPanel({ planned, planner, knowledge, onAnswer }: Props) {
  const { record, plan } = planned
  const questions = useMemo(() => planner.questionsFor(record), [planner, record])
  const title = useRef<HTMLHeadingElement>(null)
  const warnings = plan.cautions.filter(({ level }) => level !== 'stop')
  const kept = record.stored_rh_percent
  const parts = record.components.length
  return (
    <section className={`${style.panel} section`} aria-labelledby="find-plan">
      <header className={`${style.whole} row`}>
        <h2 id="find-plan" ref={title} tabIndex={-1}>
          {`${plan.find}${record.object === undefined ? '' : `, ${record.object}`}`}
        </h2>
        <UrgencyMark urgency={plan.urgency} large />
      </header>
      <Question
        key={plan.find}
        questions={questions}
        knowledge={knowledge}
        onAnswer={onAnswer}
        after={title}
      />
      <div className="stack">
        {warnings.length > 0 && (
          <Part name="Take care">
            <Cautions cautions={warnings} knowledge={knowledge} parts={parts} />
          </Part>
        )}
        {plan.objections.length > 0 && (
          <Part name="Before you do that">
            <Objections objections={plan.objections} knowledge={knowledge} parts={parts} />
          </Part>
        )}
        <Part name="What to do, in order">
          <Steps steps={plan.steps} knowledge={knowledge} parts={parts} />
        </Part>
      </div>
      <div className="stack">
        <Part name="Keeping">
          <Keeping
            storage={plan.storage}
            keptAtPercent={typeof kept === 'number' ? kept : null}
            knowledge={knowledge}
          />
        </Part>
        <Part name="Handling">
          <Lines statements={plan.handling} knowledge={knowledge} parts={parts} />
        </Part>
        <Part name="Packing">
          <Lines statements={plan.packing} knowledge={knowledge} parts={parts} />
        </Part>
        {plan.referrals.length > 0 && (
          <Part name="For a conservator to decide">
            <Lines statements={plan.referrals} knowledge={knowledge} parts={parts} />
          </Part>
        )}
        {plan.notCovered.length > 0 && (
          <Part name="We have no advice on">
            <NotCovered gaps={plan.notCovered} />
          </Part>
        )}
      </div>
    </section>
  )
})

function Part({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <section>
      <h3>{name}</h3>
      {children}
    </section>
  )
}
