import type { Metadata } from 'next'
import Link from 'next/link'
import { longCitation } from '../../../lib/wording/citation.ts'
import { KnownMark } from '../../_marks/known-mark.tsx'
import { knowledgeHere } from '../../_server/services.ts'
import { Back } from '../back.tsx'

export const metadata: Metadata = { title: 'Works' }

export default async function Works() {
  const knowledge = await knowledgeHere()
  const works = Object.values(knowledge.works).toSorted((a, b) =>
    longCitation(a).localeCompare(longCitation(b), 'en'),
  )
  return (
    <>
      <header className="head">
        <Back to="/sources" name="Sources" />
        <h1>Works</h1>
        <p className="lead">
          What was read, what was quoted by others, and what is remembered and waits to be looked up.
        </p>
      </header>
      <ul className="plain-list stack measure">
        {works.map((work) => (
          <li key={work.id}>
            <Link href={`/sources/works/${work.id}`}>{longCitation(work)}</Link>{' '}
            <span className="soft small">
              <KnownMark known={work.known} />
            </span>
          </li>
        ))}
      </ul>
    </>
  )
}
