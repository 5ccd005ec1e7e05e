'use client'

import { useActionState, useEffect, useRef } from 'react'
import { AskField, type Question } from './ask-field.tsx'
import type { FormAction } from './said.ts'
import style from './forms.module.css'

interface Props {
  /** Of this form alone on its page: fields are named after it. */
  readonly id: string
  readonly action: FormAction
  readonly questions: readonly Question[]
  readonly hidden: Readonly<Record<string, string>>
  readonly submit: string
}

/** Questions, one button, and a plain answer. What was given stays until it is kept; what is wrong is listed with a link to it. */
export function AskForm({ id, action, questions, hidden, submit }: Props) {
  const [said, send, busy] = useActionState(action, null)
  const answer = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (said?.ok === false) answer.current?.focus()
  }, [said])
  const wrong = said?.wrong ?? {}
  return (
    <form action={send} className="stack" noValidate>
      {Object.entries(hidden).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <div className={style.questions}>
        {questions.map((question) => (
          <AskField
            key={`${question.name} ${said?.given[question.name] ?? ''}`}
            form={id}
            question={question}
            value={said?.given[question.name] ?? question.value ?? ''}
            wrong={wrong[question.name]}
          />
        ))}
      </div>
      <div className="row">
        <button className="button first" disabled={busy}>
          {busy ? 'Keeping …' : submit}
        </button>
      </div>
      <div ref={answer} role="status" tabIndex={-1} className={style.said}>
        {said !== null && <p className={said.ok ? undefined : 'wrong'}>{said.says}</p>}
        {Object.keys(wrong).length > 0 && (
          <ul>
            {inOrder(questions, wrong).map(([name, label]) => (
              <li key={name}>
                {label === undefined ? name : <a href={`#${id}-${name}`}>{label}</a>}
                {`: ${wrong[name]}`}
              </li>
            ))}
          </ul>
        )}
      </div>
    </form>
  )
}

/** What is wrong in the order of the questions; what no question asks for comes last. */
function inOrder(questions: readonly Question[], wrong: Readonly<Record<string, string>>) {
  const asked = questions.flatMap(({ name, label }) =>
    wrong[name] === undefined ? [] : [[name, label] as const],
  )
  const others = Object.keys(wrong).filter((name) => !questions.some((question) => question.name === name))
  return [...asked, ...others.map((name) => [name, undefined] as const)]
}
