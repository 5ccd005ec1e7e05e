import type { Metadata } from 'next'
import Link from 'next/link'
import { sortKey } from '../../../lib/base/sort-key.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { salvageRules } from '../../../lib/wording/salvage.ts'
import { NoProject } from '../../_finds/no-project.tsx'
import { Invented } from '../../_marks/invented.tsx'
import { asked, type SearchParams } from '../../_server/asked.ts'
import { personHere } from '../../_server/person.ts'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { FloodForm } from './flood-form.tsx'

export const metadata: Metadata = { title: 'Water came in' }

export default async function FloodPage({ searchParams }: { readonly searchParams: SearchParams }) {
  const { room } = await asked(searchParams)
  const services = await servicesHere()
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>Water came in</h1>
        <NoProject shows="One entry records every find of a room as wet and plans it anew." />
      </>
    )
  }
  const { boxes } = await orElsewhere(services.listPlaces(chosen.id))
  const rooms = Map.groupBy(boxes, ({ box }) => box.given.room ?? '')
  const inRoom = room === undefined ? undefined : rooms.get(room)
  const person = await personHere()
  return (
    <>
      <header className="head">
        <h1>Water came in</h1>
        <p className="lead">Records the finds of a room as wet and plans each of them anew.</p>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
        </p>
      </header>
      <ol className="measure stack">
        {salvageRules.slice(0, 2).map((rule) => (
          <li key={rule}>{rule}</li>
        ))}
      </ol>
      <nav aria-label="Room" className="section">
        <h2>Which room?</h2>
        {rooms.size === 0 && <p>No box is listed yet, so no room can be named.</p>}
        <ul className="plain-list">
          {[...rooms]
            .filter(([name]) => name !== '')
            .map(([name, of]) => (
              <li key={name}>
                <Link
                  className="tall"
                  href={`/store/flood?room=${encodeURIComponent(name)}`}
                  aria-current={name === room ? 'true' : undefined}
                >
                  {`${name}: ${countWords(of.length, 'box', 'boxes')}`}
                </Link>
              </li>
            ))}
        </ul>
      </nav>
      {room !== undefined && inRoom === undefined && (
        <p className="wrong">{`No box stands in a room called ${room}.`}</p>
      )}
      {person === null && (
        <p>
          <Link href="/person?back=/store/flood">Say who you are</Link> first: every change carries who made
          it.
        </p>
      )}
      {inRoom !== undefined && room !== undefined && person !== null && (
        <FloodForm
          key={room}
          room={room}
          today={services.today()}
          boxes={inRoom
            .map(({ box, total }) => ({ box: box.given.box, shelf: box.given.shelf ?? '', finds: total }))
            .toSorted((a, b) => (sortKey(`${a.shelf} ${a.box}`) < sortKey(`${b.shelf} ${b.box}`) ? -1 : 1))}
        />
      )}
    </>
  )
}
