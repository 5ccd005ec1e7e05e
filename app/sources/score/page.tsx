import type { Metadata } from 'next'
import Link from 'next/link'
import type { PoorGrade } from '../../../lib/evidence/poor-grades.ts'
import type { Score } from '../../../lib/evidence/score.ts'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { poorGradeMeans, poorGradeWords } from '../../../lib/wording/poor-grade.ts'
import {
  guesserWords,
  leaderWords,
  missMeans,
  missWords,
  noneOfTheseCountWords,
  reliabilityWords,
  tooFewWords,
} from '../../../lib/wording/score.ts'
import { ReliabilityChart } from '../../_charts/reliability-chart.tsx'
import { NoProject } from '../../_finds/no-project.tsx'
import { Invented } from '../../_marks/invented.tsx'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { Back } from '../back.tsx'

export const metadata: Metadata = { title: 'Keeping score' }

export default async function ScorePage() {
  const services = await servicesHere()
  const { chosen } = await projectsHere()
  if (chosen === null)
    return (
      <>
        <h1>Keeping score</h1>
        <NoProject shows="Once results have come in, it stands here how good the guesses were." />
      </>
    )
  const { identified, enough, score, poor } = await orElsewhere(services.showScore(chosen.id))
  return (
    <>
      <header className="head">
        <Back to="/sources" name="Sources" />
        <h1>Keeping score</h1>
        <p className="lead">
          When a result comes in, what was thought before it is kept. Held side by side, they tell how far the
          tool can be believed.
        </p>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
        </p>
      </header>
      {score === null ? (
        <p className="measure">{tooFewWords({ identified, enough })}</p>
      ) : (
        <>
          <SaidAndSo score={score} />
          <BesideGuesser score={score} />
          <Poor poor={poor} knowledge={services.knowledge} />
        </>
      )}
      <section className="section" aria-labelledby="all">
        <h2 id="all">What was found out</h2>
        <p className="measure">
          {`${countWords(identified, 'matter')} of this project ${identified === 1 ? 'has' : 'have'} been found out. `}
          A result is entered on the page of its find, under “A result has come in”.
        </p>
        {identified > 0 && (
          <p className="no-print">
            <a className="button" href="/sources/score/table" download>
              All of them as a table (CSV)
            </a>
          </p>
        )}
      </section>
    </>
  )
}

function SaidAndSo({ score }: { readonly score: Score }) {
  const others = noneOfTheseCountWords(score)
  return (
    <section className="section" aria-labelledby="said">
      <h2 id="said">What was said, and what came out</h2>
      <p className="measure">
        {leaderWords(score)} {others}
      </p>
      <p className="measure">{reliabilityWords(score)}</p>
      <ReliabilityChart reliability={score.reliability} />
    </section>
  )
}

function BesideGuesser({ score }: { readonly score: Score }) {
  return (
    <section className="section" aria-labelledby="guesser">
      <h2 id="guesser">Beside somebody who guesses</h2>
      <p className="measure">{guesserWords(score)}</p>
      <table className="measure">
        <caption className="visually-hidden">How far off</caption>
        <thead>
          <tr>
            <th scope="col">Who</th>
            <th scope="col" className="number">
              How far off
            </th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">The tool</th>
            <td className="number">{missWords(score.brier)}</td>
          </tr>
          <tr>
            <th scope="row">Somebody who holds all explanations for equally likely</th>
            <td className="number">{missWords(score.brierOfGuessing)}</td>
          </tr>
        </tbody>
      </table>
      <p className="small soft measure">{missMeans}</p>
    </section>
  )
}

function Poor({ poor, knowledge }: { readonly poor: readonly PoorGrade[]; readonly knowledge: Knowledge }) {
  return (
    <section className="section" aria-labelledby="poor">
      <h2 id="poor">Words that what was found speaks against</h2>
      {poor.length === 0 ? (
        <p>None so far: every word of the evidence base is borne out as far as chance lets one tell.</p>
      ) : (
        <ul className="plain-list stack measure">
          {poor.map((one) => (
            <li key={`${one.matter} ${one.group} ${one.state} ${one.rival}`}>
              <p>{poorGradeWords(one, knowledge)}</p>
              <p className="small soft">
                {poorGradeMeans(one)}{' '}
                <Link className="tall" href={`/sources/evidence/${one.matter}`}>
                  {knowledge.matters[one.matter]?.asks ?? one.matter}
                </Link>
              </p>
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
