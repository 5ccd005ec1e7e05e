import type { Metadata } from 'next'
import { notFound } from 'next/navigation'
import { certaintyWords, knownWords } from '../../../../lib/wording/marks.ts'
import { figureWords } from '../../../../lib/wording/figure.ts'
import { KnownMark } from '../../../_marks/known-mark.tsx'
import { knowledgeHere } from '../../../_server/services.ts'
import { Source } from '../../../_statement/reasons.tsx'
import { Back } from '../../back.tsx'
import { Entries } from '../../entries.tsx'
import { MatterList } from '../../matter-list.tsx'
import { UseList } from '../../use-list.tsx'
import { mattersWhere, rulesWhere } from '../../uses.ts'

interface Props {
  readonly params: Promise<{ readonly id: string }>
}

async function figureOf({ params }: Props) {
  const { id } = await params
  const knowledge = await knowledgeHere()
  return { knowledge, figure: Object.hasOwn(knowledge.figures, id) ? knowledge.figures[id] : undefined }
}

export async function generateMetadata(props: Props): Promise<Metadata> {
  return { title: (await figureOf(props)).figure?.says ?? 'Figure' }
}

export default async function FigurePage(props: Props) {
  const { knowledge, figure } = await figureOf(props)
  if (figure === undefined) notFound()
  const uses = rulesWhere(knowledge, (rule) => rule.figures.includes(figure.id))
  return (
    <>
      <header className="head">
        <Back to="/sources/figures" name="Figures" />
        <h1>{figureWords(figure, knowledge)}</h1>
        <p className="lead">{figure.says}</p>
      </header>
      <Entries
        entries={[
          ['As printed', figure.asPrinted],
          ['Valid for', figure.validFor],
          [
            'Source',
            <Source key="source" source={{ ...figure.source, known: figure.known }} knowledge={knowledge} />,
          ],
          ['Known', <KnownMark key="known" known={figure.known} />],
          ['', knownWords[figure.known].means],
          ['Certainty', certaintyWords[figure.certainty]],
          ...(figure.kept === undefined ? [] : [['Kept for later', figure.kept] as const]),
        ]}
      />
      <section className="section" aria-labelledby="uses">
        <h2 id="uses">Rules that use it</h2>
        <UseList uses={uses} />
      </section>
      <MatterList
        name="Surfaces weighed with it"
        matters={mattersWhere(knowledge, ({ figures }) => figures.includes(figure.id))}
      />
    </>
  )
}
