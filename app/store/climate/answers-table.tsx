import { useState } from 'react'
import { PrintButton } from '../../_papers/print-button.tsx'
import { Scroll } from '../../_frame/scroll.tsx'
import type { Answered } from './answers.ts'
import style from './climate.module.css'

export interface TabledAnswer {
  readonly title: string
  /** The question as it stands, numbers filled in. */
  readonly asked: string
  readonly answer: Answered
}

/** Every answer as it stands, to read in one go; folded on the screen, and what is printed of the page. */
export function AnswersTable({ answers }: { readonly answers: readonly TabledAnswer[] }) {
  const [open, setOpen] = useState(false)
  const told = answers.flatMap(({ title, asked, answer }) =>
    answer === null || answer.refused !== undefined ? [] : [{ title, asked, answer }],
  )
  return (
    <section className="section" aria-labelledby="table">
      <h2 id="table">All of it as a table</h2>
      <p className="row no-print">
        <button
          type="button"
          className="button"
          aria-expanded={open}
          aria-controls="all-answers"
          onClick={() => setOpen(!open)}
        >
          {open ? 'Fold the table' : 'Show the table'}
        </button>
        <PrintButton says="Print the table" />
      </p>
      <div id="all-answers" className={open ? undefined : 'print-only'}>
        <Scroll name="All answers">
          <table className={style.all}>
            <thead>
              <tr>
                <th scope="col">About</th>
                <th scope="col">Answer</th>
              </tr>
            </thead>
            {told.map(({ title, asked, answer }) => (
              <tbody key={title}>
                <tr>
                  <th colSpan={2} scope="rowgroup">
                    {asked}
                  </th>
                </tr>
                <tr>
                  <th scope="row">In short</th>
                  <td>
                    <strong>{answer.headline}</strong>
                  </td>
                </tr>
                {answer.rows.map(({ name, text }) => (
                  <tr key={name}>
                    <th scope="row">{name}</th>
                    <td>{text}</td>
                  </tr>
                ))}
              </tbody>
            ))}
          </table>
        </Scroll>
      </div>
    </section>
  )
}
