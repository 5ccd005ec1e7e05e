import type { ComponentProps, ReactNode } from 'react'
import type { LookNext } from '../../lib/engine/plan.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { leftWords, settleWords } from '../../lib/wording/look.ts'
import { Answers } from './answers.tsx'
import type { Shown } from './shown.ts'
import style from './look.module.css'

interface Props {
  readonly question: LookNext
  readonly shown: Shown
  readonly knowledge: Knowledge
  /** How many questions are asked now, this one among them. */
  readonly questions: number
  readonly heading: ReactNode
  /** Asks something else instead. */
  readonly other: ReactNode
  readonly form: Pick<ComponentProps<'form'>, 'action' | 'onSubmit' | 'id'>
  /** What goes with the answer. */
  readonly children?: ReactNode
}

/** One question: how to look, why, the answers as drawings, and the three answers that are always there. */
export function LookCard({ question, shown, knowledge, questions, heading, other, form, children }: Props) {
  return (
    <>
      {heading}
      {question.tell !== '' && <p className={style.how}>{question.tell}</p>}
      <p className="soft small">{[question.why, settleWords(question)].filter(Boolean).join(' ')}</p>
      <form key={question.fact} {...form} className={style.form}>
        {children}
        <Answers shown={shown} asks={question.asks} knowledge={knowledge} />
        <div className={style.always}>
          <button className="button" name="answer" value={shown.none}>
            None of these
          </button>
          <button className="button" name="answer" value="unknown">
            I can’t tell
          </button>
          {other}
        </div>
      </form>
      <p className="small soft">{leftWords(questions)}</p>
    </>
  )
}
