import type { Metadata } from 'next'
import Link from 'next/link'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { figureWords } from '../../../lib/wording/figure.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { NoProject } from '../../_finds/no-project.tsx'
import { Invented } from '../../_marks/invented.tsx'
import { PrintButton } from '../../_papers/print-button.tsx'
import { asked, type SearchParams } from '../../_server/asked.ts'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { Cautions } from '../_forms/cautions.tsx'
import { films, readChange, typedOf } from './asked-change.ts'
import { keepFields, readKeep } from './asked-keep.ts'
import { ChoosePlace } from './choose-place.tsx'
import { KeepQuestion } from './keep-question.tsx'
import { Questions } from './questions.tsx'

export const metadata: Metadata = { title: 'What if' }

export default async function WhatIfPage({ searchParams }: { readonly searchParams: SearchParams }) {
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>What if</h1>
        <NoProject shows="What a drier room, tighter boxes or more gel would save in renewals and kilograms stands here." />
      </>
    )
  }
  const words = await asked(searchParams)
  const services = await servicesHere()
  const { box, room } = words
  const typed = typedOf(words)
  const place = box === undefined ? { room } : { box }
  const answer = await services.showWhatIf({
    projectId: chosen.id,
    ...place,
    change: readChange(typed).change,
  })
  const missed = !answer.ok && answer.problems.kind === 'missing' && (box ?? room) !== undefined
  const shown = missed
    ? await orElsewhere(services.showWhatIf({ projectId: chosen.id, change: readChange(typed).change }))
    : await orElsewhere(Promise.resolve(answer))
  const keep = {
    keep: words['keep'] ?? shown.box?.name ?? '',
    limit: words['limit'] ?? '',
    months: words['months'] ?? '',
  }
  const kept = readKeep(keep)
  const keepFirst =
    kept.box === null || !shown.boxes.includes(kept.box)
      ? null
      : await orElsewhere(
          services.showKeep({
            projectId: chosen.id,
            box: kept.box,
            limitRhPercent: kept.limitRhPercent,
            days: kept.days,
          }),
        )
  const { knowledge } = services
  return (
    <>
      <header className="head">
        <h1>What if</h1>
        <p className="lead">What a drier room, tighter boxes or more gel would save in a year.</p>
        <p className="soft">
          {shown.box === null
            ? `${shown.asked.room ?? 'The whole store'}: ${countWords(shown.counted, 'box', 'boxes')} reckoned. `
            : `Box ${shown.box.name}${shown.box.room === '' ? '' : `, ${shown.box.room}`}. `}
          {chosen.name} {chosen.invented && <Invented />}
        </p>
      </header>
      {missed && (
        <p className="wrong">
          {box === undefined ? `No room is called “${room}”.` : `No box is called “${box}”.`} This is the
          whole store.
        </p>
      )}
      {shown.boxes.length === 0 ? (
        <p className="measure">
          No box is listed yet. <Link href="/import">Import a table of boxes</Link>, or{' '}
          <Link href="/store/boxes/new">write down the first one</Link>.
        </p>
      ) : (
        <>
          <ChoosePlace shown={shown} />
          <Questions
            key={`${shown.asked.box} ${shown.asked.room}`}
            first={shown}
            typedFirst={typed}
            films={filmsOf(knowledge)}
          />
          <section className="section" aria-labelledby="keep">
            <h2 id="keep">How much gel?</h2>
            <KeepQuestion
              key={keep.keep}
              first={keepFirst}
              typedFirst={{
                ...keep,
                limit: keep.limit || keepFields.limit.start,
                months: keep.months || keepFields.months.start,
              }}
              boxes={shown.boxes}
            />
            <Cautions knowledge={knowledge} task="renew-gel" />
          </section>
          <div className="no-print">
            <PrintButton says="Print" />
          </div>
        </>
      )}
    </>
  )
}

const filmsOf = (knowledge: Knowledge) =>
  films.flatMap((id) => {
    const figure = knowledge.figures[id]
    if (figure === undefined) return []
    return [{ id, says: `${nameOf(id)}, ${figureWords(figure, knowledge)}`, known: figure.known }]
  })

const names: Readonly<Record<(typeof films)[number], string>> = {
  'film-low-density-polyethylene': 'ordinary polyethylene',
  'film-high-density-polyethylene': 'stiff polyethylene',
  'film-fluoropolymer': 'clear fluoropolymer barrier film',
}

const nameOf = (id: (typeof films)[number]) => names[id]
