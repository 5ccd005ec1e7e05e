import type { Metadata } from 'next'
import Link from 'next/link'
import { countWords } from '../../../lib/wording/list.ts'
import { NoProject } from '../../_finds/no-project.tsx'
import { BoxLabelCard } from '../../_papers/box-label-card.tsx'
import paper from '../../_papers/paper.module.css'
import { PrintButton } from '../../_papers/print-button.tsx'
import { asked, type SearchParams } from '../../_server/asked.ts'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'

export const metadata: Metadata = { title: 'Box labels' }

export default async function BoxLabelsPage({ searchParams }: { readonly searchParams: SearchParams }) {
  const { room, box } = await asked(searchParams)
  const services = await servicesHere()
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>Box labels</h1>
        <NoProject shows="A label for every box of the store, with its code to be scanned on a walk." />
      </>
    )
  }
  const { rooms, labels } = await orElsewhere(
    services.boxLabels({
      projectId: chosen.id,
      ...(room === undefined ? {} : { room }),
      ...(box === undefined ? {} : { box }),
    }),
  )
  return (
    <>
      <header className="head no-print">
        <h1>Box labels</h1>
        <p className="lead">{countWords(labels.length, 'label')}, in the order the boxes stand.</p>
        <nav aria-label="Room" className="row">
          <Link href="/sheets/box-labels" aria-current={room === undefined ? 'true' : undefined}>
            All rooms
          </Link>
          {rooms.map((name) => (
            <Link
              key={name}
              href={`/sheets/box-labels?room=${encodeURIComponent(name)}`}
              aria-current={room === name ? 'true' : undefined}
            >
              {name === '' ? 'No room' : name}
            </Link>
          ))}
        </nav>
        {labels.length > 0 && <PrintButton says="Print the labels" />}
      </header>
      {labels.length === 0 && (
        <p>
          No box of that name or room is listed. Boxes are brought in on the{' '}
          <Link href="/store">Store page</Link>.
        </p>
      )}
      <ul className={paper.labels}>
        {labels.map((label) => (
          <BoxLabelCard key={label.box} label={label} invented={chosen.invented} />
        ))}
      </ul>
    </>
  )
}
