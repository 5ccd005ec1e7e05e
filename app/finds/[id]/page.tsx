import type { Metadata } from 'next'
import Link from 'next/link'
import { notFound } from 'next/navigation'
import { dayWords } from '../../../lib/wording/day.ts'
import { listWords } from '../../../lib/wording/list.ts'
import { valueLabel } from '../../../lib/wording/fact.ts'
import { Invented } from '../../_marks/invented.tsx'
import { UrgencyMark } from '../../_marks/urgency-mark.tsx'
import { asked, type SearchParams } from '../../_server/asked.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { Stop } from '../../_statement/stop.tsx'
import { History } from './history.tsx'
import { FoundOut } from './identify/found.tsx'
import { PlanBody } from './plan-body.tsx'
import { PrintButton } from '../../_papers/print-button.tsx'
import style from './find.module.css'

interface Props {
  readonly params: Promise<{ readonly id: string }>
  readonly searchParams: SearchParams
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const services = await servicesHere()
  const shown = await services.showFind({ findId: (await params).id })
  return { title: shown.ok ? shown.value.find.findNumber : 'Find' }
}

export default async function FindPage({ params, searchParams }: Props) {
  const services = await servicesHere()
  const { id } = await params
  const { project, find, history, identifications, now, knowledgeChanged } = await orElsewhere(
    services.showFind({ findId: id }),
  )
  const wanted = (await asked(searchParams))['record']
  const entry = wanted === undefined ? history[0] : history.find(({ kept }) => kept.id === wanted)
  if (entry === undefined) notFound()
  const issued = wanted === undefined ? undefined : entry.plans[0]
  if (wanted !== undefined && issued === undefined) notFound()
  const plan = issued?.plan ?? now
  const { record } = entry.kept
  const { knowledge } = services
  const stops = plan.cautions.filter(({ level }) => level === 'stop')
  return (
    <>
      {stops.map((caution) => (
        <Stop key={caution.rule} caution={caution} knowledge={knowledge} />
      ))}
      <header className={style.head}>
        <div className="head">
          <h1>
            {find.findNumber}
            {record.object !== undefined && <span className={style.object}>{record.object}</span>}
          </h1>
          <p className="soft">
            {[
              find.siteCode === '' ? '' : `Site ${find.siteCode}`,
              record.context === undefined ? '' : `context ${record.context}`,
              record.box === undefined ? '' : `box ${record.box}`,
              listWords([
                ...new Set(
                  record.components.map(({ material }) => valueLabel('material', material, knowledge)),
                ),
              ]),
            ]
              .filter((text) => text !== '')
              .join(', ')}{' '}
            {project.invented && <Invented />}
          </p>
        </div>
        <UrgencyMark urgency={plan.urgency} large />
      </header>
      {issued === undefined ? (
        <p className="small soft">
          {`Planned for ${dayWords(plan.asOf)} from the record of ${record.recorded_on === undefined ? 'an unknown day' : dayWords(record.recorded_on)}.`}
          {knowledgeChanged &&
            ' The rules have changed since a plan was last issued; this is the plan by the rules of today.'}
        </p>
      ) : (
        <p className={style.past}>
          {`This is the plan as it was issued for ${dayWords(plan.asOf)}, by the rules of that day. `}
          <Link href={`/finds/${id}`}>See the plan of today</Link>
        </p>
      )}
      <div className="row no-print">
        <PrintButton says="Print this plan" />
        <Link className="button" href={`/sheets/bag?finds=${id}`}>
          Bag sheet and label
        </Link>
        <Link className="button" href={`/sheets/hand-over?finds=${id}`}>
          Hand-over sheet
        </Link>
        <Link className="button" href={`/finds/${id}/identify`}>
          A result has come in
        </Link>
      </div>
      <PlanBody
        plan={plan}
        record={record}
        knowledge={knowledge}
        tellsChanges={issued === undefined}
        at={issued === undefined ? `/finds/${id}` : null}
      />
      <FoundOut
        identifications={identifications}
        severalParts={record.components.length > 1}
        invented={project.invented}
        knowledge={knowledge}
      />
      <History id={id} history={history} knowledge={knowledge} />
    </>
  )
}
