import { gradeMeans, gradeOrder, oddsMeans, oddsOrder } from '../../../lib/wording/evidence-table.ts'
import { Scroll } from '../../_frame/scroll.tsx'

/** How the words of the evidence base become numbers: the one place, and what nobody may read out of them. */
export function WordsAndNumbers() {
  return (
    <section className="section" aria-labelledby="words">
      <h2 id="words">How words become numbers</h2>
      <p className="measure">
        Nobody has counted how often tinning thins out at its edge. So the tables hold words, and each word is
        taken for a band of numbers. An explanation is weighed with the middles of the bands and again with
        many other numbers within them; the bracket under a bar shows how far the answers lie apart. What two
        careful people might call by the same word is our judgement, and so is every band.
      </p>
      <WordTable
        name="How often a thing is so where an explanation is the true one"
        rows={gradeOrder.map((grade) => [grade, gradeMeans(grade)])}
      />
      <p className="measure small soft">
        The words of one explanation over all that a look may show are scaled, so that together they make one.
      </p>
      <WordTable
        name="How common an explanation is before anybody has looked closer"
        rows={oddsOrder.map((odds) => [odds, oddsMeans(odds)])}
      />
      <p className="measure small soft">
        These are scaled over the explanations that compete. Things with one cause stand in one table and
        count once. What nobody looked at changes nothing, and neither does what could not be told.
      </p>
    </section>
  )
}

interface Props {
  readonly name: string
  readonly rows: readonly (readonly [string, string])[]
}

function WordTable({ name, rows }: Props) {
  return (
    <Scroll name={`${name}, table`}>
      <table className="measure">
        <caption>{name}</caption>
        <thead>
          <tr>
            <th scope="col">Word</th>
            <th scope="col">Taken for</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([word, means]) => (
            <tr key={word}>
              <th scope="row">{word}</th>
              <td>{means}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  )
}
