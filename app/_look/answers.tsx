import type { ReactNode } from 'react'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { Drawing } from '../_drawings/drawing.tsx'
import { LookAlikes, type LookAlikeWords } from '../_drawings/look-alikes.tsx'
import type { Shown, ShownAnswer } from './shown.ts'
import style from './look.module.css'

interface Props {
  readonly shown: Shown
  readonly asks: string
  readonly knowledge: Knowledge
}

/**
 * The answers of one question, side by side with their drawings. All of it is a plain form: one answer is a button that
 * sends it, several are ticked. What is easily taken for something else shows its look-alikes once it is ticked.
 */
export function Answers({ shown, asks, knowledge }: Props) {
  if (shown.takes === 'words') {
    return (
      <div className="row">
        <div className="field">
          <input name="answer" aria-label={asks} autoComplete="off" />
        </div>
        <button className="button first">Keep</button>
      </div>
    )
  }
  const drawn = shown.answers.some(({ drawing }) => drawing !== null)
  const tiles = `${style.tiles} ${drawn ? style.drawn : ''}`
  if (shown.takes === 'one') {
    return (
      <div className={tiles}>
        {shown.answers.map((answer) => (
          <button key={answer.id} className={style.tile} name="answer" value={answer.id}>
            <Picture answer={answer} />
          </button>
        ))}
      </div>
    )
  }
  return (
    <fieldset className={style.list}>
      <legend className="visually-hidden">{asks}</legend>
      <div className={tiles}>
        {shown.answers.map((answer) => (
          <Tick key={answer.id} answer={answer} field={shown.field} knowledge={knowledge} />
        ))}
      </div>
      <div className={style.done}>
        <button className="button first">That is what I see</button>
      </div>
    </fieldset>
  )
}

interface PictureProps {
  readonly answer: ShownAnswer
  /** Where it is ticked, beside its name. */
  readonly box?: ReactNode
}

function Picture({ answer: { drawing, label, tell }, box }: PictureProps) {
  return (
    <>
      {drawing !== null && (
        <span className={style.picture}>
          <Drawing of={drawing} prefix="look" />
        </span>
      )}
      <span className={style.words}>
        <span className={style.name}>
          {box}
          <strong>{label}</strong>
        </span>
        {tell !== '' && <span className={style.tell}>{tell}</span>}
      </span>
    </>
  )
}

interface TickProps {
  readonly answer: ShownAnswer
  readonly field: string
  readonly knowledge: Knowledge
}

function Tick({ answer, field, knowledge }: TickProps) {
  const words = (key: string): LookAlikeWords => {
    const { label = key, tell = '' } =
      knowledge.vocabulary.fields[field]?.values.find(({ id }) => `${field}/${id}` === key) ?? {}
    return { label, tell }
  }
  return (
    <>
      <label className={style.tile} htmlFor={`look-${field}-${answer.id}`}>
        <Picture
          answer={answer}
          box={<input id={`look-${field}-${answer.id}`} type="checkbox" name="answer" value={answer.id} />}
        />
      </label>
      {answer.alike.length > 0 && (
        <div className={style.alike}>
          <p>These are easily taken for one another. Look again:</p>
          <LookAlikes keys={answer.alike} words={words} prefix={`alike-${answer.id}`} />
        </div>
      )}
    </>
  )
}
