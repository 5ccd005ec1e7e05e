import type { Metadata } from 'next'
import Link from 'next/link'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { figureTakenWords } from '../../../lib/wording/figure-taken.ts'
import { knowledgeHere } from '../../_server/services.ts'
import { Cautions } from '../_forms/cautions.tsx'
import { ClimateQuestions } from './climate-questions.tsx'
import { pageIds, type PageFigures } from './figures.ts'

export const metadata: Metadata = { title: 'Questions about humidity' }

export default async function ClimatePage() {
  const knowledge = await knowledgeHere()
  return (
    <>
      <header className="head">
        <h1>Questions about humidity</h1>
        <p className="lead no-print">Write over the numbers; the answers follow.</p>
        <p className="soft no-print">
          Nothing here is kept, and no network is needed once the page stands. For a box with its gel and its
          leak see <Link href="/store">the store</Link>.
        </p>
      </header>
      <ClimateQuestions
        figures={figuresFor(knowledge)}
        saltCautions={<Cautions knowledge={knowledge} task="calibrate-with-salts" />}
      />
    </>
  )
}

function figuresFor(knowledge: Knowledge): PageFigures {
  return Object.fromEntries(
    pageIds.flatMap((id) => {
      const figure = knowledge.figures[id]
      if (figure === undefined) return []
      const { says, value, known } = figure
      return [[id, { id, says, value, known, printed: figureTakenWords(figure, knowledge) }] as const]
    }),
  )
}
