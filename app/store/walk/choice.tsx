import { useId, useState } from 'react'
import style from './walk.module.css'

interface Props<Value> {
  readonly legend: string
  readonly options: readonly { readonly value: Value; readonly label: string }[]
  readonly chosen: Value | null
  readonly onChoose: (value: Value | null) => void
  /** How many stand beside each other on a phone. */
  readonly beside: 2 | 3
}

/** One question with large answers, one tap each; "can't tell" is an answer too. */
export function Choice<Value extends string | number>({
  legend,
  options,
  chosen,
  onChoose,
  beside,
}: Props<Value>) {
  const name = useId()
  // Nothing chosen and looked in vain are the same to the store, but not to whoever just tapped.
  const [inVain, setInVain] = useState(false)
  const choose = (value: Value | null) => {
    setInVain(value === null)
    onChoose(value)
  }
  return (
    <fieldset className={style.choice} data-beside={beside}>
      <legend>{legend}</legend>
      <div>
        {[...options, { value: null, label: 'can’t tell' }].map(({ value, label }) => (
          <label key={label}>
            <input
              type="radio"
              name={name}
              checked={chosen === value && (value !== null || inVain)}
              onChange={() => choose(value)}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
