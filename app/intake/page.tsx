import type { Metadata } from 'next'
import Link from 'next/link'
import { personHere } from '../_server/person.ts'
import { projectsHere } from '../_server/project.ts'
import { orElsewhere, servicesHere } from '../_server/services.ts'
import { contactsOf } from '../_server/contacts.ts'
import { Intake } from './intake.tsx'

export const metadata: Metadata = { title: 'Intake' }

export default async function IntakePage() {
  const services = await servicesHere()
  const { chosen } = await projectsHere()
  const people = chosen === null ? null : await orElsewhere(services.sitePeople(chosen.id))
  const person = await personHere()
  return (
    <>
      <header className="head wide">
        <h1>Intake</h1>
        <p className="measure soft">
          Type or paste the bag, a part a row. The plan stands beside each row as you type.{' '}
          {chosen === null ? (
            'It is kept in a project of its own.'
          ) : (
            <ProjectLine name={chosen.name} invented={chosen.invented} />
          )}
        </p>
      </header>
      <Intake
        knowledgeHash={services.knowledge.hash}
        asOf={services.today()}
        contacts={people === null ? {} : contactsOf(people)}
        project={chosen?.id ?? null}
        known={person !== null}
      />
    </>
  )
}

function ProjectLine({ name, invented }: { readonly name: string; readonly invented: boolean }) {
  return (
    <>
      Project: <Link href="/">{name}</Link>
      {invented && ' (invented)'}.
    </>
  )
}
