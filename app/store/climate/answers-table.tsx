import { useState } from 'react'
import { mindName, type ToldRow } from '../../../lib/wording/humidity-parts.ts'
import { Scroll } from '../../_frame/scroll.tsx'
import { PrintButton } from '../../_papers/print-button.tsx'
import type { Answered } from './answers.ts'
import style from './climate.module.css'

export interface TabledAnswer {
  readonly title: string
  /** The question as it stands, numbers filled in. */
  readonly asked: string
  readonly answer: Answered
  /** What stands beside the answer on the screen. */
  readonly more?: readonly ToldRow[]
}

interface Tabled {
  readonly title: string
  readonly asked: string
  readonly headline: string
  readonly rows: readonly ToldRow[]
}

/** Questions without an answer are left out. */
function tabled({ title, asked, answer, more = [] }: TabledAnswer): readonly Tabled[] {
  if (answer === null || answer.refused !== undefined) return []
  const mind = answer.lines.map((text) => ({ name: mindName, text }))
  return [{ title, asked, headline: answer.headline, rows: [...answer.rows, ...more, ...mind] }]
}

/** Every answer as it stands, to read in one go; folded on the screen, and what is printed of the page. */
export function AnswersTable({ answers }: { readonly answers: readonly TabledAnswer[] }) {
  const [open, setOpen] = useState(false)
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
            {answers.flatMap(tabled).map(({ title, asked, headline, rows }) => (
              <tbody key={title}>
                <tr>
                  <th colSpan={2} scope="rowgroup">
                    {asked}
                  </th>
                </tr>
                <tr>
                  <th scope="row">In short</th>
                  <td>
                    <strong>{headline}</strong>
                  </td>
                </tr>
                {rows.map(({ name, text }) => (
                  <tr key={`${name} ${text}`}>
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
