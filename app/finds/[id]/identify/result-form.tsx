'use client'

import { useActionState, useEffect, useRef } from 'react'
import { AskField, type Question } from '../../../store/_forms/ask-field.tsx'
import type { FormAction } from '../../../store/_forms/said.ts'
import type { ReportQuestion, Ticks } from './result-questions.ts'
import style from './identify.module.css'

interface Props {
  readonly action: FormAction
  readonly hidden: Readonly<Record<string, string>>
  readonly report: readonly ReportQuestion[]
  readonly found: readonly Question[]
  readonly source: readonly Question[]
}

const form = 'result'

/** What the report says, what it then is, and whose it is; works without scripts. What was given stays until it is kept. */
export function ResultForm({ action, hidden, report, found, source }: Props) {
  const [said, send, busy] = useActionState(action, null)
  const answer = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (said?.ok === false) answer.current?.focus()
  }, [said])
  const wrong = said?.wrong ?? {}
  const given = said?.given ?? {}
  const all = [...report, ...found, ...source]
  const listed = Object.keys(wrong).toSorted(
    (a, b) => all.findIndex(({ name }) => name === a) - all.findIndex(({ name }) => name === b),
  )
  const field = (question: Question) => (
    <AskField
      key={`${question.name} ${given[question.name] ?? ''}`}
      form={form}
      question={question}
      value={given[question.name] ?? question.value ?? ''}
      wrong={wrong[question.name]}
    />
  )
  return (
    <form action={send} className="stack" noValidate>
      {Object.entries(hidden).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {report.length > 0 && (
        <fieldset className={style.set}>
          <legend>What the report says</legend>
          {report.map((one) =>
            one.kind === 'ticks' ? (
              <TickList key={one.name} ticks={one} given={given} wrong={wrong[one.name]} />
            ) : (
              field(one)
            ),
          )}
        </fieldset>
      )}
      {found.length > 0 && (
        <fieldset className={style.set}>
          <legend>What it then is</legend>
          {found.map(field)}
        </fieldset>
      )}
      <fieldset className={style.set}>
        <legend>Where it comes from</legend>
        {source.map(field)}
      </fieldset>
      <div className="row">
        <button className="button first" disabled={busy}>
          {busy ? 'Keeping …' : 'Keep this result'}
        </button>
      </div>
      <div ref={answer} role="status" tabIndex={-1} className={style.said}>
        {said !== null && <p className={said.ok ? undefined : 'wrong'}>{said.says}</p>}
        {listed.length > 0 && (
          <ul>
            {listed.map((name) => {
              const label = all.find((one) => one.name === name)?.label
              return (
                <li key={name}>
                  {label === undefined ? name : <a href={`#${form}-${name}`}>{label}</a>}
                  {`: ${wrong[name]}`}
                </li>
              )
            })}
          </ul>
        )}
      </div>
    </form>
  )
}

interface TickProps {
  readonly ticks: Ticks
  readonly given: Readonly<Record<string, string>>
  readonly wrong: string | undefined
}

function TickList({ ticks: { name, label, hint, options }, given, wrong }: TickProps) {
  const id = `${form}-${name}`
  const described = [hint === '' ? '' : `${id}-hint`, wrong === undefined ? '' : `${id}-wrong`].filter(
    Boolean,
  )
  return (
    <fieldset
      id={id}
      tabIndex={-1}
      className={`choices ${style.ticks}`}
      aria-describedby={described.length === 0 ? undefined : described.join(' ')}
    >
      <legend>{label}</legend>
      {hint !== '' && (
        <p id={`${id}-hint`} className="small soft measure">
          {hint}
        </p>
      )}
      {options.map((option) => {
        const field = `${name}.${option.value}`
        return (
          <label key={`${field} ${given[field] ?? ''}`} className="tall">
            <input type="checkbox" name={field} value="on" defaultChecked={given[field] === 'on'} />
            {option.label}
          </label>
        )
      })}
      {wrong !== undefined && (
        <p id={`${id}-wrong`} className="wrong">
          {wrong}
        </p>
      )}
    </fieldset>
  )
}
