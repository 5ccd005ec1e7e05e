import type { Metadata } from 'next'
import Link from 'next/link'
import { notFound } from 'next/navigation'
import type { Knowledge } from '../../../../lib/knowledge/knowledge.ts'
import { figureWords } from '../../../../lib/wording/figure.ts'
import { knowledgeHere } from '../../../_server/services.ts'
import { Back } from '../../back.tsx'
import { SourceList } from '../../source-list.tsx'
import { MatterList } from '../../matter-list.tsx'
import { UseList } from '../../use-list.tsx'
import { rulesWhere } from '../../uses.ts'

interface Props {
  readonly params: Promise<{ readonly id: string }>
}

async function matterOf({ params }: Props) {
  const { id } = await params
  const knowledge = await knowledgeHere()
  return { knowledge, matter: Object.hasOwn(knowledge.contested, id) ? knowledge.contested[id] : undefined }
}

export async function generateMetadata(props: Props): Promise<Metadata> {
  return { title: (await matterOf(props)).matter?.question ?? 'Contested' }
}

export default async function ContestedMatter(props: Props) {
  const { knowledge, matter } = await matterOf(props)
  if (matter === undefined) notFound()
  return (
    <>
      <header className="head">
        <Back to="/sources#contested" name="Contested matters" />
        <h1>{matter.question}</h1>
      </header>
      <ol className="stack measure">
        {matter.sides.map((side) => (
          <li key={side.says}>
            <p>{side.says}</p>
            {side.figures.length > 0 && (
              <p className="small">
                {side.figures.map((id, at) => (
                  <span key={id}>
                    {at > 0 && ', '}
                    <Link href={`/sources/figures/${id}`}>{figureOf(id, knowledge)}</Link>
                  </span>
                ))}
              </p>
            )}
            <SourceList sources={side.sources} knowledge={knowledge} />
          </li>
        ))}
      </ol>
      <section className="section" aria-labelledby="follows">
        <h2 id="follows">What the tool follows</h2>
        <p className="measure">
          <strong>{matter.follows}</strong> {matter.because}
        </p>
      </section>
      <section className="section" aria-labelledby="uses">
        <h2 id="uses">Rules that turn on it</h2>
        <UseList uses={rulesWhere(knowledge, ({ contested }) => contested === matter.id)} />
      </section>
      <MatterList
        name="Surfaces that turn on it"
        matters={Object.values(knowledge.matters).filter(({ contested }) => contested === matter.id)}
      />
    </>
  )
}

function figureOf(id: string, knowledge: Knowledge): string {
  const figure = knowledge.figures[id]
  return figure === undefined ? id : `${figureWords(figure, knowledge)} (${figure.says})`
}
