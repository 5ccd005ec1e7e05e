import type { ReactNode } from 'react'
import { mendFirst } from '../../../lib/wording/climate-asked.ts'
import { Faults, type Asking } from './blank.tsx'
import type { Answered } from './answers.ts'
import type { NumberName } from './fields.ts'
import { useSettledText } from './use-settled-text.ts'
import style from './climate.module.css'

interface Props {
  readonly id: string
  readonly title: string
  /** The sentence with its blanks. */
  readonly sentence: ReactNode
  readonly names: readonly NumberName[]
  readonly asking: Asking
  readonly answer: Answered
  /** What the numbers say, for the eye. */
  readonly drawing?: ReactNode
  readonly children?: ReactNode
}

const headlineOf = (answer: Answered) =>
  answer === null ? mendFirst : answer.refused === undefined ? answer.headline : answer.refused.join(' ')

/** A question in a sentence, and its answer beside it, which follows every key. */
export function Question({ id, title, sentence, names, asking, answer, drawing, children }: Props) {
  const headline = headlineOf(answer)
  const settled = useSettledText(headline)
  return (
    <section className={`section ${style.question}`} aria-labelledby={id}>
      <div className={style.asked}>
        <h2 id={id}>{title}</h2>
        {sentence}
        <Faults names={names} asking={asking} />
      </div>
      <div className={style.answer}>
        <p className={answer?.refused === undefined ? style.headline : `${style.headline} wrong`} aria-hidden>
          {headline}
        </p>
        <p role="status" className="visually-hidden">
          {settled}
        </p>
        {answer !== null && answer.refused === undefined && (
          <>
            {drawing}
            <dl className={style.rows}>
              {answer.rows.map(({ name, text }) => (
                <div key={name}>
                  <dt>{name}</dt>
                  <dd>{text}</dd>
                </div>
              ))}
            </dl>
            {answer.lines.map((line) => (
              <p key={line} className="soft small measure">
                {line}
              </p>
            ))}
          </>
        )}
        {children}
      </div>
    </section>
  )
}
