import type { Metadata } from 'next'
import Link from 'next/link'
import { notFound } from 'next/navigation'
import type { Work } from '../../../../lib/knowledge/knowledge.ts'
import { longCitation, shortCitation } from '../../../../lib/wording/citation.ts'
import { figureWords } from '../../../../lib/wording/figure.ts'
import { knownWords } from '../../../../lib/wording/marks.ts'
import { KnownMark } from '../../../_marks/known-mark.tsx'
import { knowledgeHere } from '../../../_server/services.ts'
import { Back } from '../../back.tsx'
import { Entries } from '../../entries.tsx'
import { MatterList } from '../../matter-list.tsx'
import { UseList } from '../../use-list.tsx'
import { mattersWhere, rulesWhere } from '../../uses.ts'

interface Props {
  readonly params: Promise<{ readonly id: string }>
}

async function workOf({ params }: Props) {
  const { id } = await params
  const knowledge = await knowledgeHere()
  return { knowledge, work: Object.hasOwn(knowledge.works, id) ? knowledge.works[id] : undefined }
}

export async function generateMetadata(props: Props): Promise<Metadata> {
  const { work } = await workOf(props)
  return { title: work === undefined ? 'Work' : shortCitation(work) }
}

export default async function WorkPage(props: Props) {
  const { knowledge, work } = await workOf(props)
  if (work === undefined) notFound()
  const figures = Object.values(knowledge.figures).filter(({ source }) => source.work === work.id)
  const uses = rulesWhere(knowledge, ({ sources }) => sources.some((source) => source.work === work.id))
  return (
    <>
      <header className="head">
        <Back to="/sources/works" name="Works" />
        <h1>{work.title}</h1>
        <p className="lead">{longCitation(work)}</p>
      </header>
      <Entries
        entries={[
          ['Known', <KnownMark key="known" known={work.known} />],
          ['', knownWords[work.known].means],
          ...(work.note === undefined ? [] : [['What was seen', work.note] as const]),
          ...whereToFind(work),
        ]}
      />
      {figures.length > 0 && (
        <section className="section" aria-labelledby="figures">
          <h2 id="figures">Figures from it</h2>
          <ul className="plain-list">
            {figures.map((figure) => (
              <li key={figure.id}>
                <Link className="tall" href={`/sources/figures/${figure.id}`}>
                  {`${figureWords(figure, knowledge)}: ${figure.says}`}
                </Link>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section className="section" aria-labelledby="uses">
        <h2 id="uses">Rules that rest on it</h2>
        <UseList uses={uses} />
      </section>
      <MatterList
        name="Surfaces weighed by it"
        matters={mattersWhere(knowledge, ({ sources }) => sources.some((source) => source.work === work.id))}
      />
    </>
  )
}

function whereToFind(work: Work) {
  const doi =
    work.doi === undefined
      ? []
      : [
          [
            'DOI',
            <a key="doi" href={`https://doi.org/${work.doi}`} rel="noreferrer">
              {work.doi}
            </a>,
          ] as const,
        ]
  const address =
    work.address === undefined ? [] : [['Address', <Address key="address" address={work.address} />] as const]
  return [...doi, ...address]
}

function Address({ address }: { readonly address: string }) {
  const isLink = /^https?:\/\//.test(address)
  return isLink ? (
    <a href={address} rel="noreferrer">
      {address}
    </a>
  ) : (
    <>{address}</>
  )
}
