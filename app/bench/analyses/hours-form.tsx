import type { HoursFlaw } from '../../../lib/evidence/assemblage-hours.ts'
import type { Knowledge, Method } from '../../../lib/knowledge/knowledge.ts'
import { hoursFlawWords } from '../../../lib/wording/analyses-text.ts'
import { timeWords } from '../../../lib/wording/request.ts'
import { AskField } from '../../store/_forms/ask-field.tsx'
import style from './analyses.module.css'

interface Props {
  readonly knowledge: Knowledge
  /** What was typed, by method. */
  readonly typed: Readonly<Record<string, string>>
  readonly sampling: boolean
  readonly flaws: readonly HoursFlaw[]
}

/** Methods that can be asked for, looking and imaging before analysis; dating answers no question about a surface. */
export const methodsAsked = ({ methods }: Knowledge): readonly Method[] =>
  Object.values(methods)
    .filter(({ kind }) => kind !== 'dating')
    .toSorted((a, b) => a.order - b.order)

const flawOf = (flaws: readonly HoursFlaw[], method: string) =>
  flaws.find((flaw) => 'method' in flaw && flaw.method === method)

/** Hours for each method. A plain form whose answer is its own address: it can be kept, sent on and printed. */
export function HoursForm({ knowledge, typed, sampling, flaws }: Props) {
  const methods = methodsAsked(knowledge)
  const fields = (of: readonly Method[]) => (
    <div className={style.methods}>
      {of.map((method) => {
        const flaw = flawOf(flaws, method.id)
        return (
          <AskField
            key={method.id}
            form="hours"
            question={{
              name: method.id,
              label: method.label,
              kind: 'number',
              unit: 'hours',
              hint: `${timeWords(method)}.`,
            }}
            value={typed[method.id] ?? ''}
            wrong={flaw === undefined ? undefined : hoursFlawWords(flaw, knowledge)}
          />
        )
      })}
    </div>
  )
  const samples = methods.filter((method) => method.sampling)
  return (
    <form className={`${style.form} no-print`} action="/bench/analyses" aria-label="Hours there are">
      {flaws.length > 0 && (
        <div role="alert" className={style.flaws}>
          <p className="wrong">Some hours were not understood, so nothing is chosen yet.</p>
          <ul>
            {flaws.map((flaw) => {
              const says = hoursFlawWords(flaw, knowledge)
              return (
                <li key={says}>{'method' in flaw ? <a href={`#hours-${flaw.method}`}>{says}</a> : says}</li>
              )
            })}
          </ul>
        </div>
      )}
      <p className="soft measure">
        Hours at the instrument, setting up included. Leave a method empty where there are none; write “4
        places” where a laboratory takes a number of objects.
      </p>
      {fields(methods.filter((method) => !method.sampling))}
      <details open={sampling || samples.some(({ id }) => (typed[id] ?? '') !== '')}>
        <summary>Methods that take samples</summary>
        <div className="stack">
          <div className="choices">
            <label className="tall">
              <input type="checkbox" name="samples" value="agreed" defaultChecked={sampling} />A conservator
              agrees to samples
            </label>
          </div>
          {fields(samples)}
        </div>
      </details>
      <div className="row">
        <button className="button first">Choose the finds</button>
      </div>
    </form>
  )
}
