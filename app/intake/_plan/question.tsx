import { useEffect, useRef, useState, type RefObject, type SubmitEvent } from 'react'
import type { LookNext } from '../../../lib/engine/plan.ts'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import type { FieldName } from '../../../lib/record/fields.ts'
import { capital } from '../../../lib/wording/capital.ts'
import { LookCard } from '../../_look/look-card.tsx'
import look from '../../_look/look.module.css'
import { shownQuestion } from '../../_look/shown.ts'
import style from './plan.module.css'

interface Props {
  readonly questions: readonly LookNext[]
  readonly knowledge: Knowledge
  readonly onAnswer: (part: string | null, field: FieldName, text: string) => void
  /** Where focus goes when the last question is answered. */
  readonly after?: RefObject<HTMLElement | null>
}

/** One question at a time, and only where the answer could change the plan. "Can't tell" is always an answer. */
export function Question({ questions, knowledge, onAnswer, after }: Props) {
  const [skipped, skip] = useState<readonly string[]>([])
  const [empty, setEmpty] = useState<string | null>(null)
  const left = questions.filter(({ fact }) => !skipped.includes(fact))
  const question = left[0]
  const heading = useRef<HTMLHeadingElement>(null)
  const answered = useRef(false)
  useEffect(() => {
    // The button that was pressed is gone with its question: whoever goes by keyboard is taken on to the next.
    const lost = document.activeElement === null || document.activeElement === document.body
    if (answered.current && lost) (heading.current ?? after?.current)?.focus()
    answered.current = false
  }, [question?.fact, after])
  const shown = question === undefined ? null : shownQuestion(question, knowledge)
  if (question === undefined || shown === null) return null
  const { part, field, fact } = shown
  const onSubmit = (event: SubmitEvent<HTMLFormElement>) => {
    event.preventDefault()
    const answers = answersIn(event.currentTarget, event.nativeEvent.submitter)
    if (answers.length === 0) return setEmpty(fact)
    answered.current = true
    const text = answers.join('; ')
    const named = shown.question ?? (shown.test && `${part}/${shown.test}`)
    onAnswer(part, field, named === null ? text : `${named}:${text}`)
  }
  return (
    <section className={`${style.whole} ${look.card}`} aria-labelledby="look-next">
      <LookCard
        question={question}
        shown={shown}
        knowledge={knowledge}
        questions={left.length}
        form={{ onSubmit }}
        heading={
          <h3 id="look-next" ref={heading} tabIndex={-1}>
            {part === null ? question.asks : `${capital(part)}: ${question.asks}`}
          </h3>
        }
        other={
          <button
            className="button"
            type="button"
            onClick={() => {
              answered.current = true
              skip([...skipped, fact])
            }}
          >
            Ask me something else
          </button>
        }
      />
      <p role="status" className={empty === fact ? 'wrong' : 'visually-hidden'}>
        {empty === fact && 'Tick what you see first, or say that it is none of these.'}
      </p>
    </section>
  )
}

/** What was pressed stands for the answer; where that was not an answer by itself, what is ticked or written. */
function answersIn(form: HTMLFormElement, pressed: HTMLElement | null): readonly string[] {
  if (pressed instanceof HTMLButtonElement && pressed.name === 'answer') return [pressed.value]
  return new FormData(form)
    .getAll('answer')
    .map((one) => String(one).trim())
    .filter((one) => one !== '')
}
