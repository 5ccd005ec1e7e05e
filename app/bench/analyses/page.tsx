import type { Metadata } from 'next'
import Link from 'next/link'
import { NoProject } from '../../_finds/no-project.tsx'
import { Invented } from '../../_marks/invented.tsx'
import { asked, type SearchParams } from '../../_server/asked.ts'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { Chosen } from './chosen.tsx'
import { HoursForm, methodsAsked } from './hours-form.tsx'

export const metadata: Metadata = { title: 'Analyses worth asking for' }

/** Given the hours there are: which finds to send to which method, and what another hour would buy. */
export default async function AnalysesPage({ searchParams }: { readonly searchParams: SearchParams }) {
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>Analyses worth asking for</h1>
        <NoProject shows="Which finds to send to which analysis stands here, for the hours that there are." />
      </>
    )
  }
  const words = await asked(searchParams)
  const services = await servicesHere()
  const { knowledge } = services
  const sampling = words['samples'] === 'agreed'
  const shown = await orElsewhere(
    services.planAnalyses({
      projectId: chosen.id,
      hours: methodsAsked(knowledge).map(({ id }) => [id, words[id] ?? '']),
      sampling,
    }),
  )
  return (
    <>
      <header className="head">
        <h1>Analyses worth asking for</h1>
        <p className="lead">Which finds to send where, so that the hours there are settle most.</p>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
        </p>
        <p className="no-print">
          <Link href="/bench">The bench</Link>
        </p>
      </header>
      <HoursForm knowledge={knowledge} typed={words} sampling={sampling} flaws={shown.flaws} />
      <Chosen shown={shown} knowledge={knowledge} />
    </>
  )
}
