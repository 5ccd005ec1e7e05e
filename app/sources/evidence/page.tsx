import type { Metadata } from 'next'
import Link from 'next/link'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { capital } from '../../../lib/wording/capital.ts'
import { mattersBySight, type RaisedBy } from '../../../lib/wording/evidence-index.ts'
import { explanationName } from '../../../lib/wording/interpretation.ts'
import { countWords, listWords } from '../../../lib/wording/list.ts'
import { asked, type SearchParams } from '../../_server/asked.ts'
import { knowledgeHere } from '../../_server/services.ts'
import { Back } from '../back.tsx'
import { Entries } from '../entries.tsx'
import { WordsAndNumbers } from './words-and-numbers.tsx'

export const metadata: Metadata = { title: 'What surfaces may be' }

export default async function Evidence({ searchParams }: { readonly searchParams: SearchParams }) {
  const knowledge = await knowledgeHere()
  const search = (await asked(searchParams))['q'] ?? ''
  const found = mattersBySight(knowledge, search)
  return (
    <>
      <header className="head">
        <Back to="/sources" name="Sources" />
        <h1>What surfaces may be</h1>
        <p className="lead">
          For each thing that may be seen, the explanations that compete, how common each is, and how well
          each look and each analysis fits it. A specialist can correct every word of it.
        </p>
      </header>
      <form className="row" role="search">
        <div className="field">
          <label htmlFor="q">What is seen, or what it may be</label>
          <input id="q" name="q" type="search" defaultValue={search} />
        </div>
        <button type="submit" className="button">
          Find
        </button>
      </form>
      {search !== '' && (
        <p role="status">
          {found.length === 0
            ? `Nothing here speaks of “${search}”.`
            : `${countWords(numberOf(found), 'matter')} with “${search}”.`}{' '}
          <Link href="/sources/evidence">Show all</Link>
        </p>
      )}
      {found.map(({ field, seen }) => (
        <section key={field} className="section" aria-labelledby={`by-${field}`}>
          <h2 id={`by-${field}`}>{field}</h2>
          <Entries
            entries={seen.flatMap(({ label, matters }) =>
              matters.map(
                (matter, at) =>
                  [
                    at === 0 ? label : '',
                    <MatterLine key={matter.id} id={matter.id} knowledge={knowledge} />,
                  ] as const,
              ),
            )}
          />
        </section>
      ))}
      <WordsAndNumbers />
    </>
  )
}

const numberOf = (found: readonly RaisedBy[]) =>
  new Set(found.flatMap(({ seen }) => seen.flatMap(({ matters }) => matters))).size

function MatterLine({ id, knowledge }: { readonly id: string; readonly knowledge: Knowledge }) {
  const matter = knowledge.matters[id]
  if (matter === undefined) return null
  return (
    <>
      <Link className="tall" href={`/sources/evidence/${id}`}>
        {matter.asks}
      </Link>
      <p className="small soft">
        {capital(
          listWords(
            matter.rivals.map((rival) => explanationName(rival.id, knowledge)),
            'or',
          ),
        )}
      </p>
    </>
  )
}
