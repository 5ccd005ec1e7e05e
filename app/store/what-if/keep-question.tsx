'use client'

import { useState } from 'react'
import type { CannotKeep, KeepShown } from '../../../lib/services/show-what-if-keep.ts'
import {
  cannotKeepWords,
  keepAskedWords,
  keepCareLines,
  keepRestsLines,
  keepWords,
} from '../../../lib/wording/what-if-keep.ts'
import { useSettledText } from '../climate/use-settled-text.ts'
import { keepFields, readKeep } from './asked-keep.ts'
import { useAnswer } from './use-answer.ts'
import style from './what-if.module.css'

interface Props {
  readonly first: KeepShown | CannotKeep | null
  readonly typedFirst: Readonly<Record<'keep' | 'limit' | 'months', string>>
  readonly boxes: readonly string[]
}

/** Keep this box under so much for so long: how much dry gel. */
export function KeepQuestion({ first, typedFirst, boxes }: Props) {
  const [typed, setTyped] = useState(typedFirst)
  const known = boxes.includes(typed.keep.trim())
  const { wrong } = readKeep(typed)
  const asked = known ? typed : typedFirst
  const query = new URLSearchParams(asked).toString()
  const { answer, state } = useAnswer(`/store/what-if/keep?${query}`, first)
  const type = (name: keyof typeof typed) => (event: { readonly target: { readonly value: string } }) =>
    setTyped((before) => ({ ...before, [name]: event.target.value }))
  const headline = headlineOf(answer)
  const settled = useSettledText(headline)
  const blank = (name: 'limit' | 'months', label: string) => (
    <input
      id={`keep-${name}`}
      name={name}
      aria-label={label}
      className={style.blank}
      inputMode="decimal"
      autoComplete="off"
      maxLength={8}
      value={typed[name]}
      placeholder={keepFields[name].start}
      aria-invalid={wrong[name] === undefined ? undefined : true}
      aria-describedby={wrong[name] === undefined ? undefined : `keep-${name}-wrong`}
      onChange={type(name)}
    />
  )
  return (
    <div className="stack">
      <form
        className="stack"
        action="/store/what-if#keep"
        aria-label="How much gel"
        onSubmit={(event) => event.preventDefault()}
      >
        <p className={`${style.sentence} ${style.keep}`}>
          Keep box{' '}
          <input
            name="keep"
            aria-label="Box"
            className={`${style.blank} ${style.name}`}
            list="keep-boxes"
            autoComplete="off"
            maxLength={80}
            value={typed.keep}
            aria-invalid={typed.keep.trim() !== '' && !known ? true : undefined}
            aria-describedby={known ? undefined : 'keep-unknown'}
            onChange={type('keep')}
          />{' '}
          under {blank('limit', 'Humidity, in %')} % for {blank('months', 'How long, in months')} months: how
          much dry gel?
        </p>
        <datalist id="keep-boxes">
          {boxes.map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
        {!known && (
          <p id="keep-unknown" className={typed.keep.trim() === '' ? 'soft' : 'wrong'}>
            {typed.keep.trim() === '' ? 'Name a box.' : `No box is called “${typed.keep.trim()}”.`}
          </p>
        )}
        {(['limit', 'months'] as const).map(
          (name) =>
            wrong[name] !== undefined && (
              <p key={name} id={`keep-${name}-wrong`} className="wrong">
                {wrong[name]}
              </p>
            ),
        )}
        <noscript>
          <button className="button first">Reckon</button>
        </noscript>
      </form>
      {known && <p className="print-only">{keepAskedWords(asked)}</p>}
      <p className={style.headline} aria-hidden>
        {headline}
      </p>
      <p role="status" className="visually-hidden">
        {settled}
      </p>
      {typeof state === 'object' && <p className="wrong">{state.says}</p>}
      {answer !== null && 'gelKg' in answer && (
        <>
          {keepCareLines(answer).map((line) => (
            <p key={line} className="measure">
              {line}
            </p>
          ))}
          {keepRestsLines(answer).map((line) => (
            <p key={line} className="soft small measure">
              {line}
            </p>
          ))}
        </>
      )}
    </div>
  )
}

function headlineOf(answer: Props['first']): string {
  if (answer === null) return ''
  return 'gelKg' in answer ? keepWords(answer).join(' ') : cannotKeepWords[answer.because]
}
