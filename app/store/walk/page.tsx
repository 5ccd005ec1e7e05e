import type { Metadata } from 'next'
import Link from 'next/link'
import { roomsOf, type WalkStop } from '../../../lib/papers/walk-list.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { NoProject } from '../../_finds/no-project.tsx'
import { Invented } from '../../_marks/invented.tsx'
import { asked, type SearchParams } from '../../_server/asked.ts'
import { personHere } from '../../_server/person.ts'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { Cautions } from '../_forms/cautions.tsx'
import { roomsSeen } from '../places-of.ts'
import { roundEveryDays } from '../round-every.ts'
import { stopsByBox } from '../stops-of.ts'
import { walkOf } from './walk-of.ts'
import { Walk } from './walk.tsx'

export const metadata: Metadata = { title: 'Walk the shelves' }

export default async function WalkPage({ searchParams }: { readonly searchParams: SearchParams }) {
  const { chosen } = await projectsHere()
  const person = await personHere()
  if (chosen === null) {
    return (
      <>
        <h1>Walk the shelves</h1>
        <NoProject shows="Boxes stand here one after the other, to be read on a walk." />
      </>
    )
  }
  const services = await servicesHere()
  const store = await orElsewhere(services.showStore(chosen.id))
  const stops = await orElsewhere(
    services.listFinds({ projectId: chosen.id, order: 'urgency', stopsOnly: true, limit: 500 }),
  )
  const rooms = roomsSeen(store, roundEveryDays(services.knowledge), stopsByBox(stops.finds))
  const all = walkOf(rooms, undefined)
  const room = (await asked(searchParams))['room']
  const walked = room === undefined ? all : walkOf(rooms, room)
  return (
    <>
      <header className="head">
        <h1>Walk the shelves</h1>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
        </p>
      </header>
      {person === null && (
        <p>
          <Link className="button first" href="/person?back=/store/walk">
            Say who you are
          </Link>{' '}
          first: every reading carries who took it.
        </p>
      )}
      {all.length === 0 ? (
        <p className="measure">
          No box is listed yet. <Link href="/store">Back to the store</Link>
        </p>
      ) : (
        <>
          <Walk key={room ?? ''} project={chosen.id} stops={walked} />
          {roomsOf(all).length > 1 && <Rooms all={all} chosen={room} />}
          <Cautions knowledge={services.knowledge} task="read-strip" />
        </>
      )}
    </>
  )
}

interface RoomsProps {
  readonly all: readonly WalkStop[]
  readonly chosen: string | undefined
}

/** Folded, for the box is what one wants to see. */
function Rooms({ all, chosen }: RoomsProps) {
  return (
    <details>
      <summary>
        {chosen === undefined
          ? `All rooms, ${countWords(all.length, 'box', 'boxes')}`
          : `Only ${nameOf(chosen)}`}
      </summary>
      <nav aria-label="Rooms of the walk">
        <ul className="plain-list row">
          <li>
            <Link
              className="button"
              href="/store/walk"
              aria-current={chosen === undefined ? 'page' : undefined}
            >
              {`All rooms, ${all.length}`}
            </Link>
          </li>
          {roomsOf(all).map(({ room, boxes }) => (
            <li key={room}>
              <Link
                className="button"
                href={`/store/walk?room=${encodeURIComponent(room)}`}
                aria-current={chosen === room ? 'page' : undefined}
              >
                {`${nameOf(room)}, ${boxes}`}
              </Link>
            </li>
          ))}
        </ul>
      </nav>
    </details>
  )
}

const nameOf = (room: string) => (room === '' ? 'no named room' : room)
