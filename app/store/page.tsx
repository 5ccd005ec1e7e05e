import type { Metadata } from 'next'
import Link from 'next/link'
import { countWords } from '../../lib/wording/list.ts'
import { standsWords } from '../../lib/wording/store-place.ts'
import { NoProject } from '../_finds/no-project.tsx'
import { Invented } from '../_marks/invented.tsx'
import { asked, type SearchParams } from '../_server/asked.ts'
import { projectsHere } from '../_server/project.ts'
import { orElsewhere, servicesHere } from '../_server/services.ts'
import { BandGroups } from './band-groups.tsx'
import { BoxLine } from './box-line.tsx'
import { ChooseRoom } from './choose-room.tsx'
import { Elsewhere } from './elsewhere.tsx'
import { LogNext } from './log-next.tsx'
import { Misfits } from './misfits.tsx'
import { allBoxes, countsOf, roomsSeen } from './places-of.ts'
import { Pressing } from './pressing.tsx'
import { Rooms } from './rooms-shown.tsx'
import { roundEveryDays } from './round-every.ts'
import { stopsByBox } from './stops-of.ts'
import { Stopped } from './stopped.tsx'
import { StoreLinks } from './store-links.tsx'
import { mostPressingFirst } from './wrong-of.ts'
import style from './store.module.css'

export const metadata: Metadata = { title: 'Store' }

const pressingShown = 12
const logNextShown = 5
/** Up to here all shelves stand open: a screenful or two. */
const boxesOpen = 40

export default async function Store({ searchParams }: { readonly searchParams: SearchParams }) {
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>Store</h1>
        <NoProject shows="Rooms, shelves and boxes stand here, with their humidity, their gel and what is wrong with them." />
      </>
    )
  }
  const words = await asked(searchParams)
  const services = await servicesHere()
  const store = await orElsewhere(services.showStore(chosen.id))
  const bands = await orElsewhere(services.bandsNeeded(chosen.id))
  const everyDays = roundEveryDays(services.knowledge)
  const stops = await orElsewhere(
    services.listFinds({ projectId: chosen.id, order: 'urgency', stopsOnly: true, limit: 500 }),
  )
  const rooms = roomsSeen(store, everyDays, stopsByBox(stops.finds))
  const all = allBoxes(rooms)
  const counts = countsOf(all)
  const shown = rooms.filter(({ room }) => words['room'] === undefined || room.name === words['room'])
  const here = allBoxes(shown)
  const { today } = store
  const urgent = words['order'] === 'urgent'
  return (
    <>
      <Stopped boxes={all} invented={chosen.invented} />
      <header className="head">
        <h1>Store</h1>
        <p className="lead">{`${countWords(rooms.length, 'room')}, ${standsWords(counts)}.`}</p>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
        </p>
      </header>
      <StoreLinks />
      {all.length === 0 ? (
        <p className="measure">
          No box is listed yet. <Link href="/store/tables">Bring in a table of boxes</Link>, or{' '}
          <Link href="/store/boxes/new">write down the first one</Link>.
        </p>
      ) : (
        <>
          <Pressing boxes={all} today={today} most={pressingShown} />
          {counts.unread > 0 && (
            <p>
              {`${countWords(counts.unread, 'box', 'boxes')} whose finds need a humidity ${counts.unread === 1 ? 'has' : 'have'} not been read for more than ${everyDays} days, or never. `}
              <Link href="/store/walk">Walk the shelves</Link>
            </p>
          )}
          <LogNext tells={store.logTells} boxes={all} most={logNextShown} />
          <ChooseRoom
            rooms={rooms.map(({ room }) => room.name).filter((name) => name !== '')}
            chosen={words['room']}
            order={urgent ? 'urgent' : 'shelf'}
          />
          {urgent ? (
            <section className="section" aria-labelledby="boxes">
              <h2 id="boxes">{`${countWords(here.length, 'box', 'boxes')}, most pressing first`}</h2>
              <ul className={style.boxes}>
                {mostPressingFirst(here).map(({ line, wrong }) => (
                  <BoxLine key={line.box.id} line={line} wrong={wrong} today={today} where />
                ))}
              </ul>
            </section>
          ) : (
            <Rooms rooms={shown} today={today} open={here.length <= boxesOpen} />
          )}
        </>
      )}
      <Misfits boxes={all} invented={chosen.invented} />
      <BandGroups bands={bands} />
      <Elsewhere elsewhere={store.elsewhere} unlisted={store.unlisted} />
    </>
  )
}
