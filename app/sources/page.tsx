import type { Metadata } from 'next'
import Link from 'next/link'
import { Scroll } from '../_frame/scroll.tsx'
import { countWords } from '../../lib/wording/list.ts'
import { knownWords } from '../../lib/wording/marks.ts'
import { KnownMark } from '../_marks/known-mark.tsx'
import { knowledgeHere } from '../_server/services.ts'
import { countsByKnown, knowns } from '../../lib/knowledge/known.ts'

export const metadata: Metadata = { title: 'Sources' }

export default async function Sources() {
  const knowledge = await knowledgeHere()
  const works = Object.values(knowledge.works)
  const figures = Object.values(knowledge.figures)
  const rules = knowledge.decisions.reduce((sum, { rules }) => sum + rules.length, 0)
  return (
    <>
      <header className="head">
        <h1>Sources</h1>
        <p className="lead">
          Every rule, figure and work behind the advice, how each is known, and what is contested. Nothing
          here is hidden from a plan, and nothing in a plan comes from anywhere else.
        </p>
        <p>
          {`${countWords(knowledge.decisions.length, 'decision')} with ${countWords(rules, 'rule')}, `}
          <Link href="/sources/figures">{countWords(figures.length, 'figure')}</Link>
          {', '}
          <Link href="/sources/works">{countWords(works.length, 'work')}</Link>
          {', '}
          <Link href="/sources/methods">{countWords(Object.keys(knowledge.methods).length, 'method')}</Link>
          {'; '}
          <Link href="/sources/words">the words of the record and how to tell them</Link>.
        </p>
      </header>

      <section className="section" aria-labelledby="known">
        <h2 id="known">How a thing is known</h2>
        <Scroll name="How a thing is known, table">
          <table>
            <thead>
              <tr>
                <th scope="col">Mark</th>
                <th scope="col">What it means</th>
                <th scope="col" className="number">
                  Figures
                </th>
                <th scope="col" className="number">
                  Works
                </th>
              </tr>
            </thead>
            <tbody>
              {knowns.map((known) => (
                <tr key={known}>
                  <th scope="row">
                    <KnownMark known={known} />
                  </th>
                  <td>{knownWords[known].means}</td>
                  <td className="number">{countsByKnown(figures)[known]}</td>
                  <td className="number">{countsByKnown(works)[known]}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroll>
      </section>

      <section className="section" aria-labelledby="contested">
        <h2 id="contested">Contested matters</h2>
        <p className="measure">
          Where published work disagrees, both sides stand here, with the one the tool follows and why.
        </p>
        <ul className="plain-list">
          {Object.values(knowledge.contested).map((matter) => (
            <li key={matter.id}>
              <Link className="tall" href={`/sources/contested/${matter.id}`}>
                {matter.question}
              </Link>
            </li>
          ))}
        </ul>
      </section>

      <section className="section" aria-labelledby="evidence">
        <h2 id="evidence">What surfaces may be</h2>
        <p className="measure">
          What lies under the green or the rust is weighed from what is seen: the explanations that compete,
          and how well each look and each analysis fits them, as tables that a specialist can correct.
        </p>
        <p>
          <Link className="tall" href="/sources/evidence">
            {countWords(Object.keys(knowledge.matters).length, 'matter')}
          </Link>
          {', and '}
          <Link className="tall" href="/sources/score">
            how good the guesses were
          </Link>
          {' once results came in'}
        </p>
      </section>

      <section className="section" aria-labelledby="decisions">
        <h2 id="decisions">Decisions</h2>
        <Scroll name="Decisions, table">
          <table>
            <thead>
              <tr>
                <th scope="col">Question</th>
                <th scope="col">Asked of each</th>
                <th scope="col" className="number">
                  Rules
                </th>
                <th scope="col" className="number">
                  Not covered
                </th>
              </tr>
            </thead>
            <tbody>
              {knowledge.decisions.map((decision) => (
                <tr key={decision.id}>
                  <th scope="row">
                    <Link className="tall" href={`/sources/decisions/${decision.id}`}>
                      {decision.asks}
                    </Link>
                  </th>
                  <td>{decision.each === 'component' ? 'part' : 'find'}</td>
                  <td className="number">{decision.rules.length}</td>
                  <td className="number">{decision.notCovered.length}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroll>
      </section>
      <p className="soft small">
        Version of the knowledge: <code>{knowledge.hash}</code>. A plan keeps the version it was made with.
      </p>
    </>
  )
}
