/** One question of a form. */
export interface Question {
  readonly name: string
  readonly label: string
  readonly kind: 'number' | 'text' | 'date' | 'choice' | 'long'
  readonly unit?: string
  readonly hint?: string
  readonly value?: string
  readonly options?: readonly { readonly value: string; readonly label: string }[]
  /** Words offered while one types; anything else may be written too. */
  readonly offered?: readonly string[]
  readonly needed?: boolean
}

interface Props {
  readonly form: string
  readonly question: Question
  readonly value: string
  readonly wrong: string | undefined
}

/** A question with its answer, its hint and what is wrong with it. */
export function AskField({ form, question, value, wrong }: Props) {
  const { name, label, kind, unit, hint, options, offered, needed = false } = question
  const id = `${form}-${name}`
  const described = [hint === undefined ? '' : `${id}-hint`, wrong === undefined ? '' : `${id}-wrong`].filter(
    (one) => one !== '',
  )
  const common = {
    id,
    name,
    required: needed,
    'aria-invalid': wrong === undefined ? undefined : true,
    'aria-describedby': described.length === 0 ? undefined : described.join(' '),
  } as const
  return (
    <div className={kind === 'number' || kind === 'date' ? 'field short' : 'field'}>
      <label htmlFor={id}>{unit === undefined ? label : `${label} [${unit}]`}</label>
      {kind === 'choice' ? (
        <select {...common} defaultValue={value}>
          {options?.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      ) : kind === 'long' ? (
        <textarea {...common} rows={2} maxLength={2000} defaultValue={value} />
      ) : (
        <input
          {...common}
          type={kind === 'date' ? 'date' : 'text'}
          inputMode={kind === 'number' ? 'decimal' : undefined}
          maxLength={kind === 'date' ? undefined : 200}
          list={offered === undefined ? undefined : `${id}-offered`}
          autoComplete="off"
          defaultValue={value}
        />
      )}
      {offered !== undefined && (
        <datalist id={`${id}-offered`}>
          {offered.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
      )}
      {hint !== undefined && (
        <p id={`${id}-hint`} className="hint">
          {hint}
        </p>
      )}
      {wrong !== undefined && (
        <p id={`${id}-wrong`} className="wrong">
          {wrong}
        </p>
      )}
    </div>
  )
}
