import type { Metadata } from 'next'
import { knowledgeHere } from '../../_server/services.ts'
import { Back } from '../back.tsx'
import { Entries } from '../entries.tsx'
import { SourceList } from '../source-list.tsx'

export const metadata: Metadata = { title: 'Methods' }

export default async function Methods() {
  const knowledge = await knowledgeHere()
  const methods = Object.values(knowledge.methods).toSorted((a, b) => a.order - b.order)
  return (
    <>
      <header className="head">
        <Back to="/sources" name="Sources" />
        <h1>Methods</h1>
        <p className="lead">
          What each analysis can answer, what it cannot, and what it asks of the find. Looking comes before
          sampling.
        </p>
      </header>
      {methods.map((method) => (
        <section key={method.id} id={method.id} className="section" aria-labelledby={`${method.id}-name`}>
          <h2 id={`${method.id}-name`}>{method.label}</h2>
          <Entries
            entries={[
              ['Answers', method.answers],
              ['Cannot', method.cannot],
              ['Sample', method.sampling ? 'Takes one; a conservator agrees to it first.' : 'None is taken.'],
              ['Who', method.who],
              ...method.cautions.map((caution) => ['Caution', caution.text] as const),
              ['Sources', <SourceList key="sources" sources={method.sources} knowledge={knowledge} />],
            ]}
          />
        </section>
      ))}
    </>
  )
}
