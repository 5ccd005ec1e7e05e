import type { Metadata } from 'next'
import Link from 'next/link'
import { countWords } from '../../lib/wording/list.ts'
import { NoProject } from '../_finds/no-project.tsx'
import { Invented } from '../_marks/invented.tsx'
import { projectsHere } from '../_server/project.ts'
import { orElsewhere, servicesHere } from '../_server/services.ts'
import { BandGroups } from './band-groups.tsx'
import { Misfits } from './misfits.tsx'
import { Rooms } from './rooms.tsx'
import { storeOf } from './store-of.ts'

export const metadata: Metadata = { title: 'Store' }

export default async function Store() {
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>Store</h1>
        <NoProject shows="Finds stand here by the humidity they need, with boxes, rooms and what does not fit." />
      </>
    )
  }
  const services = await servicesHere()
  const places = await orElsewhere(services.listPlaces(chosen.id))
  const bands = await orElsewhere(services.bandsNeeded(chosen.id))
  const store = storeOf(places)
  return (
    <>
      <header className="head">
        <h1>Store</h1>
        <p className="lead">What each find needs, where it stands, and what does not fit.</p>
        <p className="soft">
          {`${chosen.name}: ${countWords(store.rooms.length, 'room')}, ${countWords(places.boxes.length, 'box', 'boxes')}`}{' '}
          {chosen.invented && <Invented />}
        </p>
      </header>
      <Misfits misfits={store.misfits} invented={chosen.invented} />
      <BandGroups bands={bands} />
      <Rooms rooms={store.rooms} />
      {places.elsewhere > 0 && (
        <p>
          {`${countWords(places.elsewhere, 'find')} stand in no box that is listed here. `}
          <Link href="/finds?order=number">All finds</Link>
        </p>
      )}
    </>
  )
}
