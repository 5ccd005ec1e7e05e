import { useState } from 'react'
import type { LogQuestion } from '../../../../lib/logger/read/log-answers.ts'
import {
  columnUseWords,
  dateOrderWords,
  eitherDateWords,
  humidityScaleWords,
  logAskWords,
  logBecauseWords,
  temperatureUnitWords,
} from '../../../../lib/wording/store-log.ts'
import type { LogSaid } from './received-log.ts'

type Answers = Partial<NonNullable<LogSaid['answers']>>

interface Props {
  readonly id: string
  readonly question: LogQuestion
  readonly zones: readonly string[]
  readonly onAnswer: (answers: Answers) => void
}

/** One thing the file leaves open, with the lines that show it. */
export function LogQuestionAsked({ id, question, zones, onAnswer }: Props) {
  return (
    <fieldset className="choices stack">
      <legend>{logAskWords[question.about]}</legend>
      <p className="soft small">{logBecauseWords(question)}</p>
      {question.examples.length > 0 && (
        <ul className="small">
          {question.examples.map(({ line, text }) => (
            <li key={`${line} ${text}`}>
              {`line ${line}: `}
              {question.about === 'date-order' ? (eitherDateWords(text) ?? text) : <code>{text}</code>}
            </li>
          ))}
        </ul>
      )}
      <Answer id={id} question={question} zones={zones} onAnswer={onAnswer} />
    </fieldset>
  )
}

function Answer({ id, question, zones, onAnswer }: Props) {
  switch (question.about) {
    case 'date-order':
      return (
        <Choose
          options={question.answers}
          words={dateOrderWords}
          likely={question.proposed}
          onChoose={(dateOrder) => onAnswer({ dateOrder })}
        />
      )
    case 'temperature-unit':
      return (
        <Choose
          options={question.answers}
          words={temperatureUnitWords}
          likely={question.proposed}
          onChoose={(temperatureUnit) => onAnswer({ temperatureUnit })}
        />
      )
    case 'humidity-scale':
      return (
        <Choose
          options={question.answers}
          words={humidityScaleWords}
          likely={question.proposed}
          onChoose={(humidityScale) => onAnswer({ humidityScale })}
        />
      )
    case 'time-zone':
      return (
        <Zone
          id={id}
          zones={zones}
          likely={question.proposed}
          onChoose={(timeZone) => onAnswer({ timeZone })}
        />
      )
    case 'columns':
      return (
        <Columns id={id} question={question} onChoose={(columns) => onAnswer({ columns: [...columns] })} />
      )
  }
}

interface ChooseProps<Value extends string> {
  readonly options: readonly Value[]
  readonly words: Readonly<Record<Value, string>>
  readonly likely: Value | null
  readonly onChoose: (value: Value) => void
}

function Choose<Value extends string>({ options, words, likely, onChoose }: ChooseProps<Value>) {
  return (
    <div className="row">
      {options.map((value) => (
        <button key={value} type="button" className="button" onClick={() => onChoose(value)}>
          {value === likely ? `${words[value]} (likely)` : words[value]}
        </button>
      ))}
    </div>
  )
}

interface ZoneProps {
  readonly id: string
  readonly zones: readonly string[]
  readonly likely: string | null
  readonly onChoose: (zone: string) => void
}

function Zone({ id, zones, likely, onChoose }: ZoneProps) {
  const [zone, setZone] = useState(likely ?? '')
  return (
    <div className="row">
      <div className="field">
        <label htmlFor={`${id}-zone`}>Place of the clock, UTC, or an offset as +01:00</label>
        <input
          id={`${id}-zone`}
          list={`${id}-zones`}
          value={zone}
          onChange={(event) => setZone(event.target.value)}
        />
        <datalist id={`${id}-zones`}>
          {zones.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
      </div>
      <button
        type="button"
        className="button"
        disabled={zone.trim() === ''}
        onClick={() => onChoose(zone.trim())}
      >
        By this clock
      </button>
    </div>
  )
}

interface ColumnsProps {
  readonly id: string
  readonly question: Extract<LogQuestion, { readonly about: 'columns' }>
  readonly onChoose: (columns: NonNullable<Answers['columns']>) => void
}

type Use = keyof typeof columnUseWords
const uses = Object.keys(columnUseWords) as readonly Use[]

function Columns({ id, question, onChoose }: ColumnsProps) {
  const [chosen, setChosen] = useState<readonly Use[]>(question.columns.map(({ use }) => use))
  return (
    <div className="stack">
      {question.columns.map(({ column, heading, examples }, at) => (
        <div key={column} className="field">
          <label htmlFor={`${id}-column-${column}`}>
            {`Column ${column + 1}${heading === '' ? '' : ` “${heading}”`}: ${examples.slice(0, 3).join(', ')}`}
          </label>
          <select
            id={`${id}-column-${column}`}
            value={chosen[at]}
            onChange={(event) =>
              setChosen(chosen.map((use, place) => (place === at ? (event.target.value as Use) : use)))
            }
          >
            {uses.map((use) => (
              <option key={use} value={use}>
                {columnUseWords[use]}
              </option>
            ))}
          </select>
        </div>
      ))}
      <div>
        <button
          type="button"
          className="button"
          onClick={() =>
            onChoose(
              question.columns.map(({ column, channel }, at) => ({
                column,
                use: chosen[at] ?? 'not-read',
                ...(channel === undefined ? {} : { channel }),
              })),
            )
          }
        >
          Read it so
        </button>
      </div>
    </div>
  )
}
