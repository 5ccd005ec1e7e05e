import type { ReactNode } from 'react'
import type { Plan } from '../../../lib/engine/plan.ts'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import type { ConditionRecord } from '../../../lib/record/record.ts'
import { dayWords } from '../../../lib/wording/day.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { Surface } from '../../_evidence/surface.tsx'
import { Keeping } from '../../_plan/keeping.tsx'
import { Cautions, Lines, NotCovered, Objections, Steps } from '../../_plan/lines.tsx'
import { Requests } from '../../_plan/requests.tsx'
import { Questions } from './questions.tsx'
import style from './find.module.css'

interface Props {
  readonly plan: Plan
  readonly record: ConditionRecord
  readonly knowledge: Knowledge
  /** Whether it was worked out what each answer to a request would change: in an issued plan it was not. */
  readonly tellsChanges: boolean
  /** The page of the find, under which questions are answered and results entered; null in a plan that was issued once. */
  readonly at: string | null
}

/** A plan after its stops: take care, what to do, how to keep, and what it rests on. */
export function PlanBody({ plan, record, knowledge, tellsChanges, at }: Props) {
  const warnings = plan.cautions.filter(({ level }) => level === 'warn')
  const notes = plan.cautions.filter(({ level }) => level === 'note')
  const kept = record.stored_rh_percent
  const parts = record.components.length
  const reasons = plan.urgencyBasis.filter(({ text, because }) => text !== '' || because !== '')
  return (
    <>
      <div className={style.columns}>
        <div className={style.column}>
          <Part name="Take care" id="take-care" show={warnings.length > 0}>
            <Cautions cautions={warnings} knowledge={knowledge} parts={parts} />
          </Part>
          <Part name="Before you do that" id="objections" show={plan.objections.length > 0}>
            <Objections objections={plan.objections} knowledge={knowledge} parts={parts} />
          </Part>
          <Part name="What to do, in order" id="steps" show={plan.steps.length > 0}>
            <Steps steps={plan.steps} knowledge={knowledge} parts={parts} />
          </Part>
          <Part name="Handling" id="handling" show={plan.handling.length > 0}>
            <Lines statements={plan.handling} knowledge={knowledge} parts={parts} />
          </Part>
          <Part name="Packing" id="packing" show={plan.packing.length > 0}>
            <Lines statements={plan.packing} knowledge={knowledge} parts={parts} />
          </Part>
        </div>
        <div className={style.column}>
          <Part name="Keeping" id="keeping" show>
            <Keeping
              storage={plan.storage}
              keptAtPercent={typeof kept === 'number' ? kept : null}
              knowledge={knowledge}
            />
          </Part>
          <Part name="Why this soon" id="why-soon" show={reasons.length > 0}>
            <Lines statements={reasons} knowledge={knowledge} parts={parts} />
          </Part>
          <Part name="Worth a look" id="look-next" show={plan.lookNext.length > 0}>
            <Questions questions={plan.lookNext} answerAt={at && `${at}/look`} />
          </Part>
        </div>
      </div>
      <Part name="What was this surface?" id="surface" show={plan.interpretations.length > 0}>
        <Surface plan={plan} record={record} knowledge={knowledge} resultAt={at && `${at}/identify`} />
      </Part>
      <Part name="To ask a laboratory" id="requests" show={plan.requests.length > 0}>
        <Requests
          requests={plan.requests.map((request) => ({ ...untold, ...request }))}
          interpretations={plan.interpretations}
          knowledge={knowledge}
          parts={parts}
          tellsChanges={tellsChanges}
        />
      </Part>
      <div className={style.columns}>
        <div className={style.column}>
          <Part name="Next look" id="next-look" show>
            <p className="measure">
              {`On ${dayWords(plan.inspection.nextOn)}, then every ${countWords(plan.inspection.everyDays, 'day')}: ${plan.inspection.look}`}
            </p>
            <Lines
              statements={plan.inspection.basis.filter(({ text, because }) => text !== '' || because !== '')}
              knowledge={knowledge}
              parts={parts}
            />
          </Part>
          <Part name="For a conservator to decide" id="referrals" show={plan.referrals.length > 0}>
            <Lines statements={plan.referrals} knowledge={knowledge} parts={parts} />
          </Part>
        </div>
        <div className={style.column}>
          <Part name="Before anything is let go" id="selection" show={plan.selection.length > 0}>
            <Lines statements={plan.selection} knowledge={knowledge} parts={parts} />
          </Part>
          <Part name="Notes" id="notes" show={notes.length > 0}>
            <Cautions cautions={notes} knowledge={knowledge} parts={parts} />
          </Part>
          <Part name="We have no advice on" id="not-covered" show={plan.notCovered.length > 0}>
            <NotCovered gaps={plan.notCovered} />
          </Part>
        </div>
      </div>
    </>
  )
}

/** Plans issued before there was an evidence base say none of this. */
const untold = { means: [], misleads: [], ifConservatorAgrees: false } as const

interface PartProps {
  readonly name: string
  readonly id: string
  readonly show: boolean
  readonly children: ReactNode
}

function Part({ name, id, show, children }: PartProps) {
  if (!show) return null
  return (
    <section className="section" aria-labelledby={id}>
      <h2 id={id}>{name}</h2>
      {children}
    </section>
  )
}
