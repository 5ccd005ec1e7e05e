import { choiceFields, numberFields, type ChoiceName, type NumberName, type Typed } from './fields.ts'
import type { ReadTyped } from './read-typed.ts'
import style from './climate.module.css'

/** What stands in the blanks, and how it is changed. */
export interface Asking {
  readonly typed: Typed
  readonly wrong: ReadTyped['wrong']
  readonly onType: (name: NumberName | ChoiceName, text: string) => void
}

interface NumberProps {
  readonly name: NumberName
  readonly asking: Asking
}

/** A number to be written into a sentence. */
export function Blank({ name, asking: { typed, wrong, onType } }: NumberProps) {
  const { label, unit, from } = numberFields[name]
  const fault = wrong[name]
  return (
    <span className={style.blank}>
      <input
        id={name}
        aria-label={`${label}, in ${unit}`}
        aria-invalid={fault === undefined ? undefined : true}
        aria-describedby={fault === undefined ? undefined : `${name}-wrong`}
        // Keypads of numbers have no minus.
        inputMode={from < 0 ? 'text' : 'decimal'}
        autoComplete="off"
        maxLength={20}
        value={typed[name]}
        onChange={(event) => onType(name, event.target.value)}
      />{' '}
      {unit}
    </span>
  )
}

interface ChoiceProps {
  readonly name: ChoiceName
  readonly label: string
  readonly words: Readonly<Record<string, string>>
  readonly asking: Asking
}

/** One of few words to be chosen in a sentence. */
export function Pick({ name, label, words, asking: { typed, onType } }: ChoiceProps) {
  return (
    <select
      id={name}
      className={style.pick}
      aria-label={label}
      value={typed[name]}
      onChange={(event) => onType(name, event.target.value)}
    >
      {choiceFields[name].map((option) => (
        <option key={option} value={option}>
          {words[option] ?? option}
        </option>
      ))}
    </select>
  )
}

/** What is wrong with the blanks of a question, each with a link to its blank. */
export function Faults({
  names,
  asking: { wrong },
}: {
  readonly names: readonly NumberName[]
  readonly asking: Asking
}) {
  const faults = names.flatMap((name) => {
    const says = wrong[name]
    return says === undefined ? [] : [{ name, says }]
  })
  return (
    <ul className={style.faults}>
      {faults.map(({ name, says }) => (
        <li key={name} id={`${name}-wrong`} className="wrong">
          {says} <a href={`#${name}`}>Go to it</a>
        </li>
      ))}
    </ul>
  )
}
