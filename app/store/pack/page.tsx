import type { Metadata } from 'next'
import Link from 'next/link'
import { dayWords } from '../../../lib/wording/day.ts'
import { packingLines } from '../../../lib/wording/packing-plan.ts'
import { NoProject } from '../../_finds/no-project.tsx'
import { Invented } from '../../_marks/invented.tsx'
import { PrintButton } from '../../_papers/print-button.tsx'
import { asked, type SearchParams } from '../../_server/asked.ts'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { StopsToday } from '../../_start/stops-today.tsx'
import { Away, NoBox, Staying } from './left-out.tsx'
import { MovingList } from './moving-list.tsx'
import { packAsked } from './pack-asked.ts'
import { PackForm } from './pack-form.tsx'
import { ProposedBoxes } from './proposed-boxes.tsx'
import { RestsOn } from './rests-on.tsx'

export const metadata: Metadata = { title: 'Pack the store' }

export default async function PackPage({ searchParams }: { readonly searchParams: SearchParams }) {
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>Pack the store</h1>
        <NoProject shows="Which find could stand in which box, and what would have to move for it, stands here." />
      </>
    )
  }
  const words = await asked(searchParams)
  const services = await servicesHere()
  const packing = await orElsewhere(services.packStore(packAsked(chosen.id, words)))
  const { today, makes, finds, boxIds } = packing
  const stops = await orElsewhere(
    services.listFinds({ projectId: chosen.id, order: 'urgency', stopsOnly: true, limit: 500 }),
  )
  return (
    <>
      <StopsToday stops={stops.finds} total={stops.total} invented={chosen.invented} />
      <header className="head">
        <h1>Pack the store</h1>
        <p className="lead">
          Who could share which box, so that bands meet, metals keep apart, and boxes and gel are few. It is a
          proposal: nothing is moved until somebody says so, find by find.
        </p>
        <p className="soft">
          {`${chosen.name}, ${dayWords(today)}`} {chosen.invented && <Invented />}
        </p>
      </header>
      {finds.size === 0 || boxIds.size === 0 ? (
        <p className="measure">
          {finds.size === 0 ? 'No find is recorded yet. ' : 'No box is listed yet. '}
          <Link href="/import">Import a table</Link>, or{' '}
          {finds.size === 0 ? (
            <Link href="/intake">type a bag</Link>
          ) : (
            <Link href="/store/boxes/new">write down the first box</Link>
          )}
          .
        </p>
      ) : (
        <>
          <PackForm asked={packing.asked} makes={makes} />
          <section className="section" aria-labelledby="comes-to">
            <h2 id="comes-to">What it comes to</h2>
            <ul className="measure">
              {packingLines(packing).map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
            <div className="no-print">
              <PrintButton says="Print the moving list" />
            </div>
            <RestsOn knowledge={services.knowledge} />
          </section>
          <Staying packing={packing} />
          <MovingList packing={packing} />
          <NoBox packing={packing} />
          <Away packing={packing} />
          <ProposedBoxes packing={packing} />
        </>
      )}
    </>
  )
}
