'use client'

import { useActionState, useEffect, useRef } from 'react'
import { FigureLinks } from '../../_marks/figure-links.tsx'
import { AskField, type Question } from '../_forms/ask-field.tsx'
import { askOutdoors } from './act.ts'
import style from './air.module.css'

const questions: readonly Question[] = [
  {
    name: 'place',
    label: 'Where is this air?',
    kind: 'choice',
    options: [
      { value: 'outdoors', label: 'out of doors, in rain, sun and wind' },
      { value: 'indoors', label: 'in a building, a case or a box' },
    ],
  },
  { name: 'temperatureC', label: 'Mean temperature of the year', unit: '°C', kind: 'number', needed: true },
  { name: 'rhPercent', label: 'Mean relative humidity of the year', unit: '%', kind: 'number', needed: true },
  {
    name: 'so2MgPerM2Day',
    label: 'Sulphur dioxide settling',
    unit: 'mg/m² a day',
    kind: 'number',
    needed: true,
  },
  {
    name: 'chlorideMgPerM2Day',
    label: 'Chloride settling',
    unit: 'mg/m² a day',
    kind: 'number',
    hint: 'Sea salt, as a wet candle catches it.',
    needed: true,
  },
]

/** A year of outdoor air, and what it does to four bare metals. */
export function OutdoorsForm() {
  const [said, send, busy] = useActionState(askOutdoors, null)
  const answer = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (said !== null) answer.current?.focus()
  }, [said])
  const wrong = said?.wrong ?? {}
  return (
    <>
      <form action={send} className="stack" noValidate>
        <div className={style.fields}>
          {questions.map((question) => (
            <AskField
              key={`${question.name} ${said?.given[question.name] ?? ''}`}
              form="outdoors"
              question={question}
              value={said?.given[question.name] ?? question.value ?? ''}
              wrong={wrong[question.name]}
            />
          ))}
        </div>
        <div className="row">
          <button className="button" disabled={busy}>
            {busy ? 'Reckoning …' : 'Estimate'}
          </button>
        </div>
      </form>
      <div ref={answer} role="status" tabIndex={-1} className={style.outdoorAnswer}>
        {Object.keys(wrong).length > 0 && (
          <ul>
            {Object.entries(wrong).map(([name, says]) => (
              <li key={name}>
                <a href={`#outdoors-${name}`}>
                  {questions.find((question) => question.name === name)?.label ?? name}
                </a>
                {`: ${says}`}
              </li>
            ))}
          </ul>
        )}
        {said?.refusals.map((line) => (
          <p key={line} className="wrong measure">
            {line}
          </p>
        ))}
        {said?.verdicts.map(({ headline, lines }) => (
          <article key={headline}>
            <h3>{headline}</h3>
            {lines.map((line) => (
              <p key={line} className="measure">
                {line}
              </p>
            ))}
          </article>
        ))}
        {said !== null && said.figures.length > 0 && (
          <FigureLinks says="What it rests on, and how that is known" figures={said.figures} />
        )}
      </div>
    </>
  )
}
