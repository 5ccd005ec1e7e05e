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
            {Object.entries(wrong).map(([name, says]) => (
              <li key={name}>
                <a href={`#${id}-${name}`}>
                  {questions.find((question) => question.name === name)?.label ?? name}
                </a>
                {`: ${says}`}
              </li>
            ))}
          </ul>
        )}
      </div>
    </form>
  )
}
