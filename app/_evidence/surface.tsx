import Link from 'next/link'
import type { Plan } from '../../lib/engine/plan.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { capital } from '../../lib/wording/capital.ts'
import { listWords } from '../../lib/wording/list.ts'
import {
  raisedWords,
  standingWords,
  stoodOf,
  tellsOf,
  type Stood,
  type Tells,
} from '../../lib/wording/standing.ts'
import { Rivals } from './rivals.tsx'
import style from './evidence.module.css'

interface Props {
  readonly plan: Plan
  readonly record: ConditionRecord
  readonly knowledge: Knowledge
  /** Where a result is entered; null in a plan that was issued once. */
  readonly resultAt: string | null
}

/** Everything on a find that needs explaining: how each stands, what it may be, and what would tell. */
export function Surface({ plan, record, knowledge, resultAt }: Props) {
  return (
    <>
      <p className="measure soft">
        What was seen is recorded; what it is remains to be shown. A bar is how likely an explanation is after
        all that is recorded; the bracket under it says between which it may lie, since its grounds are words.
      </p>
      <ol className="plain-list">
        {stoodOf(plan.interpretations).map((stood) => (
          <li key={`${stood.component} ${stood.matter}`} className={style.matter}>
            <MatterHead stood={stood} plan={plan} record={record} knowledge={knowledge} resultAt={resultAt} />
            <Rivals
              name={`${asksOf(stood, knowledge)} ${capital(stood.component)}`}
              rivals={stood.rivals}
              knowledge={knowledge}
            />
          </li>
        ))}
      </ol>
    </>
  )
}

/** A plan of other days may speak of a matter that is no longer kept. */
const asksOf = ({ matter }: Stood, knowledge: Knowledge) => knowledge.matters[matter]?.asks ?? 'What is it?'

function MatterHead({ stood, plan, record, knowledge, resultAt }: Props & { readonly stood: Stood }) {
  const matter = knowledge.matters[stood.matter]
  const contested = matter?.contested ? knowledge.contested[matter.contested] : undefined
  return (
    <div className={style.matterHead}>
      <h3>{asksOf(stood, knowledge)}</h3>
      <p className="small">{`Seen: ${raisedWords(stood, knowledge, record.components.length)}`}</p>
      <p className={style.standing} data-standing={stood.standing}>
        {standingWords(stood, knowledge)}
      </p>
      <WhatTells tells={tellsOf(stood, plan, record, knowledge)} />
      {contested !== undefined && (
        <p className="small">
          {'Contested: '}
          <Link href={`/sources/contested/${contested.id}`}>{contested.question}</Link>
        </p>
      )}
      {matter !== undefined && (
        <p className="small row no-print">
          <Link className="tall" href={`/sources/evidence/${matter.id}`}>
            How this is weighed
          </Link>
          {resultAt !== null && (
            <Link
              className="tall"
              href={`${resultAt}?component=${encodeURIComponent(stood.component)}&matter=${matter.id}`}
            >
              Enter a result
            </Link>
          )}
        </p>
      )}
    </div>
  )
}

function WhatTells({ tells: { looks, methods } }: { readonly tells: Tells }) {
  if (looks.length + methods.length === 0) return null
  return (
    <div className="small">
      <h4>What would tell</h4>
      <ul>
        {looks.map((asks) => (
          <li key={asks}>{asks}</li>
        ))}
        {methods.length > 0 && <li>{`${listWords(methods, 'or')}: see the requests`}</li>}
      </ul>
    </div>
  )
}
