import { useEffect, useRef, useState, type RefObject } from 'react'
import type { LookNext } from '../../../lib/engine/plan.ts'
import type { Knowledge, Word } from '../../../lib/knowledge/knowledge.ts'
import { fields, type FieldName } from '../../../lib/record/fields.ts'
import { settleWords } from '../../../lib/wording/look.ts'
import { capital } from '../../../lib/wording/capital.ts'
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
  const question = questions.find(({ fact }) => !skipped.includes(fact))
  const heading = useRef<HTMLHeadingElement>(null)
  const answered = useRef(false)
  useEffect(() => {
    // The button that was pressed is gone with its question: whoever goes by keyboard is taken on to the next.
    const lost = document.activeElement === null || document.activeElement === document.body
    if (answered.current && lost) (heading.current ?? after?.current)?.focus()
    answered.current = false
  }, [question?.fact, after])
  if (question === undefined) return null
  const { part, field } = splitFact(question.fact)
  if (field === null) return null
  const all = knowledge.vocabulary.fields[field]?.values ?? []
  // One choice of a few shows them all; of a long list, only what would change something here.
  const words = fields[field].kind === 'choice' ? all : all.filter(({ id }) => question.answers.includes(id))
  const answer = (text: string) => {
    answered.current = true
    onAnswer(part, field, text)
  }
  return (
    <section className={`${style.whole} ${style.question}`} aria-labelledby="look-next">
      <h3 id="look-next" ref={heading} tabIndex={-1}>
        {part === null ? question.asks : `${capital(part)}: ${question.asks}`}
      </h3>
      {question.tell !== '' && <p>{question.tell}</p>}
      <p className="soft small">{[question.why, settleWords(question)].filter(Boolean).join(' ')}</p>
      {words.length > 0 ? (
        <ChooseAnswer
          key={question.fact}
          words={words}
          several={fields[field].kind === 'choices'}
          onAnswer={answer}
        />
      ) : (
        <TypeAnswer key={question.fact} label={question.asks} onAnswer={answer} />
      )}
      <div className={style.answers}>
        {fields[field].kind === 'choices' && (
          <button className="button" type="button" onClick={() => answer('none')}>
            None of these
          </button>
        )}
        <button className="button" type="button" onClick={() => answer('unknown')}>
          I can’t tell
        </button>
        <button className="button" type="button" onClick={() => skip([...skipped, question.fact])}>
          Ask me something else
        </button>
      </div>
    </section>
  )
}

/** `body.core` is a fact of one part, `burial` one of the find. */
function splitFact(fact: string): { readonly part: string | null; readonly field: FieldName | null } {
  const at = fact.lastIndexOf('.')
  const field = fact.slice(at + 1)
  return {
    part: at < 0 ? null : fact.slice(0, at),
    field: Object.hasOwn(fields, field) ? (field as FieldName) : null,
  }
}

interface ChooseProps {
  readonly words: readonly Word[]
  readonly several: boolean
  readonly onAnswer: (text: string) => void
}

function ChooseAnswer({ words, several, onAnswer }: ChooseProps) {
  const [chosen, choose] = useState<readonly string[]>([])
  const toggle = (id: string) =>
    choose(chosen.includes(id) ? chosen.filter((one) => one !== id) : [...chosen, id])
  return (
    <div className={style.choices}>
      {words.map((word) => (
        <button
          key={word.id}
          className={`button ${style.choice}`}
          type="button"
          aria-pressed={several ? chosen.includes(word.id) : undefined}
          onClick={() => (several ? toggle(word.id) : onAnswer(word.id))}
        >
          <strong>{word.label}</strong> {word.tell !== '' && <span>{word.tell}</span>}
        </button>
      ))}
      {several && (
        <button
          className="button first"
          type="button"
          disabled={chosen.length === 0}
          onClick={() => onAnswer(chosen.join('; '))}
        >
          That is what I see
        </button>
      )}
    </div>
  )
}

function TypeAnswer({
  label,
  onAnswer,
}: {
  readonly label: string
  readonly onAnswer: (text: string) => void
}) {
  const [text, type] = useState('')
  return (
    <form
      className="row"
      onSubmit={(event) => {
        event.preventDefault()
        if (text.trim() !== '') onAnswer(text.trim())
      }}
    >
      <div className="field">
        <input aria-label={label} value={text} onChange={(event) => type(event.target.value)} />
      </div>
      <button className="button first">Keep</button>
    </form>
  )
}
