import type { Metadata } from 'next'
import Link from 'next/link'
import { dayWords } from '../../../lib/wording/day.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { salvageOrderSays, salvageRules } from '../../../lib/wording/salvage.ts'
import { NoProject } from '../../_finds/no-project.tsx'
import { Invented } from '../../_marks/invented.tsx'
import { PrintButton } from '../../_papers/print-button.tsx'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { SalvageCalls } from './salvage-calls.tsx'
import { SalvageTable } from './salvage-table.tsx'

export const metadata: Metadata = { title: 'Salvage list' }

export default async function SalvagePage() {
  const services = await servicesHere()
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>Salvage list</h1>
        <NoProject shows="What is carried out of each room first, kept on paper beside the door." />
      </>
    )
  }
  const { rooms, elsewhere, contacts } = await orElsewhere(services.listSalvage(chosen.id))
  return (
    <>
      <header className="head">
        <h1>Salvage list</h1>
        <p className="lead">
          What is carried out first when water or fire comes. Keep it on paper, by the door.
        </p>
        <p>
          {`${chosen.name}, as the boxes stood on ${dayWords(services.today())}. Print it again when boxes have moved.`}{' '}
          {chosen.invented && <Invented />}
        </p>
        {rooms.length > 0 && (
          <div className="no-print">
            <PrintButton says="Print" />
          </div>
        )}
      </header>
      <ol className="measure stack">
        {salvageRules.map((rule) => (
          <li key={rule}>{rule}</li>
        ))}
      </ol>
      <SalvageCalls contacts={contacts} words={services.knowledge.vocabulary.contacts} />
      {rooms.length === 0 && (
        <p>
          No box with finds is listed yet. Bring a table of boxes in on the{' '}
          <Link href="/store">Store page</Link>.
        </p>
      )}
      {rooms.map((room) => (
        <SalvageTable key={room.room} room={room} />
      ))}
      {rooms.length > 0 && <p className="small soft">{salvageOrderSays}</p>}
      {elsewhere > 0 && (
        <p className="wrong">
          {`${countWords(elsewhere, 'find')} stand in no box that is listed here: this paper cannot say where they are.`}
        </p>
      )}
    </>
  )
}
