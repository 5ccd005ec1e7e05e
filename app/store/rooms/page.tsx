import type { Metadata } from 'next'
import Link from 'next/link'
import { NoProject } from '../../_finds/no-project.tsx'
import { Invented } from '../../_marks/invented.tsx'
import { personHere } from '../../_server/person.ts'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import type { RoomGiven } from '../../../lib/record/places.ts'
import { countWords } from '../../../lib/wording/list.ts'
import type { Question } from '../_forms/ask-field.tsx'
import { AskForm } from '../_forms/ask-form.tsx'
import { Ask } from '../_forms/ask.tsx'
import { roomClimateWords } from '../../../lib/wording/store-place.ts'
import { keepRoom } from './keep-room.ts'

export const metadata: Metadata = { title: 'Rooms' }

export default async function RoomsPage() {
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>Rooms</h1>
        <NoProject shows="The rooms of the store stand here with the climate each is run at." />
      </>
    )
  }
  const services = await servicesHere()
  const person = await personHere()
  const { rooms, boxes } = await orElsewhere(services.listPlaces(chosen.id))
  const held = Map.groupBy(boxes, ({ box }) => box.given.room ?? '')
  return (
    <>
      <header className="head">
        <h1>Rooms</h1>
        <p className="lead">The driest and dampest of a year decide how long the gel in its boxes lasts.</p>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
        </p>
      </header>
      {person === null && (
        <p>
          <Link href="/person?back=/store/rooms">Say who you are</Link> to write rooms down.
        </p>
      )}
      {rooms.map(({ id, version, given }) => (
        <section key={id} className="section" aria-labelledby={`room-${id}`}>
          <h2 id={`room-${id}`}>{given.room}</h2>
          <p>{`${roomClimateWords(given)} ${countWords(held.get(given.room)?.length ?? 0, 'box', 'boxes')}.`}</p>
          {person !== null && (
            <Ask says={`Mend what is written about ${given.room}`}>
              <AskForm
                key={version}
                id={`of-${id}`}
                action={keepRoom}
                questions={climateQuestions(given)}
                hidden={{ project: chosen.id, version: String(version), room: given.room }}
                submit="Keep"
              />
            </Ask>
          )}
        </section>
      ))}
      {person !== null && (
        <section className="section" aria-labelledby="new-room">
          <h2 id="new-room">Another room</h2>
          <AskForm
            key={rooms.length}
            id="new"
            action={keepRoom}
            questions={[
              { name: 'room', label: 'What is it called?', kind: 'text', needed: true },
              ...climateQuestions({}),
            ]}
            hidden={{ project: chosen.id, version: '' }}
            submit="Keep this room"
          />
        </section>
      )}
    </>
  )
}

function climateQuestions(given: Partial<RoomGiven>): readonly Question[] {
  const text = (value: number | undefined) => (value === undefined ? '' : String(value))
  return [
    { name: 'rh_low', label: 'Driest', unit: '%', kind: 'number', value: text(given.rh_low) },
    { name: 'rh_high', label: 'Dampest', unit: '%', kind: 'number', value: text(given.rh_high) },
    { name: 't_low', label: 'Coldest', unit: '°C', kind: 'number', value: text(given.t_low) },
    { name: 't_high', label: 'Warmest', unit: '°C', kind: 'number', value: text(given.t_high) },
  ]
}
