import type { Metadata } from 'next'
import Link from 'next/link'
import { urgencies, urgencyWords } from '../../lib/wording/marks.ts'
import { countWords } from '../../lib/wording/list.ts'
import { FindList } from '../_finds/find-list.tsx'
import { NoProject } from '../_finds/no-project.tsx'
import { PageTurner } from '../_finds/page-turner.tsx'
import { Invented } from '../_marks/invented.tsx'
import { UrgencyMark } from '../_marks/urgency-mark.tsx'
import { asked, type SearchParams } from '../_server/asked.ts'
import { projectsHere } from '../_server/project.ts'
import { orElsewhere, servicesHere } from '../_server/services.ts'

export const metadata: Metadata = { title: 'Bench' }

/** The queue with its reasons: why this before that. */
export default async function Bench({ searchParams }: { readonly searchParams: SearchParams }) {
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>Bench</h1>
        <NoProject shows="Finds stand here the most pressing first, each with the reason." />
      </>
    )
  }
  const words = await asked(searchParams)
  const services = await servicesHere()
  const page = await orElsewhere(
    services.listFinds({ projectId: chosen.id, order: 'urgency', after: words['after'] ?? null, limit: 100 }),
  )
  const start = await orElsewhere(services.startPage(chosen.id))
  const groups = urgencies
    .map((urgency) => ({ urgency, finds: page.finds.filter(({ line }) => line.urgency === urgency) }))
    .filter(({ finds }) => finds.length > 0)
  return (
    <>
      <header className="head">
        <h1>Bench</h1>
        <p className="lead">What comes before what, and why.</p>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
          {`: ${start.byUrgency.map(({ urgency, finds }) => `${urgencyWords[urgency].label} ${finds}`).join(', ')}`}
        </p>
        <p>
          <Link href="/bench/analyses">Analyses worth asking for</Link>
        </p>
      </header>
      {groups.map(({ urgency, finds }) => (
        <section key={urgency} className="section" aria-labelledby={urgency}>
          <h2 id={urgency}>
            <UrgencyMark urgency={urgency} />
          </h2>
          <p className="soft">
            {`${urgencyWords[urgency].means} ${countWords(start.byUrgency.find((one) => one.urgency === urgency)?.finds ?? 0, 'find')} in all.`}
          </p>
          <FindList finds={finds} invented={chosen.invented} tells="reasons" urgency={false} />
        </section>
      ))}
      {groups.length === 0 && <p>No find is recorded in this project yet.</p>}
      <PageTurner path="/bench" asked={words} next={page.next} />
    </>
  )
}
