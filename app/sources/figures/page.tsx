import type { Metadata } from 'next'
import Link from 'next/link'
import { Scroll } from '../../_frame/scroll.tsx'
import { certaintyWords } from '../../../lib/wording/marks.ts'
import { figureWords } from '../../../lib/wording/figure.ts'
import { KnownMark } from '../../_marks/known-mark.tsx'
import { knowledgeHere } from '../../_server/services.ts'
import { Source } from '../../_statement/reasons.tsx'
import { Back } from '../back.tsx'
import { capital } from '../../../lib/wording/capital.ts'

export const metadata: Metadata = { title: 'Figures' }

export default async function Figures() {
  const knowledge = await knowledgeHere()
  const groups = Map.groupBy(Object.values(knowledge.figures), ({ quantity }) => quantity)
  return (
    <>
      <header className="head">
        <Back to="/sources" name="Sources" />
        <h1>Figures</h1>
        <p className="lead">
          Published numbers, each with its unit, what it is valid for, its place in a work and how it is
          known.
        </p>
      </header>
      {[...groups].map(([quantity, figures]) => (
        <section key={quantity} className="section" aria-labelledby={`of-${quantity}`}>
          <h2 id={`of-${quantity}`}>{capital(quantity.replaceAll('-', ' '))}</h2>
          <Scroll name={`${quantity.replaceAll('-', ' ')}, table`}>
            <table className="broad">
              <thead>
                <tr>
                  <th scope="col">Figure</th>
                  <th scope="col">What it says</th>
                  <th scope="col">Known</th>
                  <th scope="col">Certainty</th>
                  <th scope="col">Source</th>
                </tr>
              </thead>
              <tbody>
                {figures.map((figure) => (
                  <tr key={figure.id}>
                    <th scope="row">
                      <Link href={`/sources/figures/${figure.id}`}>{figureWords(figure, knowledge)}</Link>
                    </th>
                    <td>{figure.says}</td>
                    <td>
                      <KnownMark known={figure.known} />
                    </td>
                    <td>{certaintyWords[figure.certainty]}</td>
                    <td>
                      <Source source={{ ...figure.source, known: figure.known }} knowledge={knowledge} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Scroll>
        </section>
      ))}
    </>
  )
}
