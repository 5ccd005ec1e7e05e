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

/** Every answer as it stands, to read in one go and to print. */
export function AnswersTable({ answers }: { readonly answers: readonly TabledAnswer[] }) {
  const told = answers.flatMap(({ title, asked, answer }) =>
    answer === null || answer.refused !== undefined ? [] : [{ title, asked, answer }],
  )
  return (
    <section className="section" aria-labelledby="table">
      <h2 id="table">All of it as a table</h2>
      <p className="no-print">
        <PrintButton says="Print the table" />
      </p>
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
    </section>
  )
}
