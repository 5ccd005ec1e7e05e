import { dials, type DialName } from './asked-change.ts'
import style from './what-if.module.css'

interface Props {
  readonly name: DialName
  /** The question, and the sentence its number stands in. */
  readonly asks: string
  readonly before: string
  readonly after: string
  readonly typed: string
  readonly value: number
  readonly wrong: string | undefined
  /** What it comes to. */
  readonly means: string
  /** The slider moves once the page is alive; without, only the number is there. */
  readonly live: boolean
  readonly onType: (text: string) => void
}

/** One thing to try: a question with a number in it, to be typed or slid. */
export function Dial({ name, asks, before, after, typed, value, wrong, means, live, onType }: Props) {
  const { from, to, step } = dials[name]
  const described = wrong === undefined ? `${name}-means` : `${name}-wrong`
  return (
    <div className={style.dial}>
      <h2>
        <label htmlFor={name}>{asks}</label>
      </h2>
      <p className={style.sentence}>
        {before}{' '}
        <input
          id={name}
          name={name}
          className={style.blank}
          inputMode={from < 0 ? 'text' : 'decimal'}
          autoComplete="off"
          maxLength={12}
          placeholder={String(dials[name].asIs)}
          value={typed}
          aria-invalid={wrong === undefined ? undefined : true}
          aria-describedby={described}
          onChange={(event) => onType(event.target.value)}
        />{' '}
        {after}
      </p>
      <input
        type="range"
        className={style.slider}
        hidden={!live}
        min={from}
        max={to}
        step={step}
        value={value}
        aria-label={`${asks} Slider`}
        aria-valuetext={means}
        onChange={(event) => onType(event.target.value)}
      />
      <p id={`${name}-means`} className="soft small">
        {means}
      </p>
      {wrong !== undefined && (
        <p id={`${name}-wrong`} className="wrong">
          {wrong}
        </p>
      )}
    </div>
  )
}
