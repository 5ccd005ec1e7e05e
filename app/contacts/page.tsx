import type { Metadata } from 'next'
import Link from 'next/link'
import type { Contact } from '../../lib/knowledge/knowledge.ts'
import { Invented } from '../_marks/invented.tsx'
import { NoProject } from '../_finds/no-project.tsx'
import { personHere } from '../_server/person.ts'
import { projectsHere } from '../_server/project.ts'
import { orElsewhere, servicesHere } from '../_server/services.ts'
import { ContactsForm } from './contacts-form.tsx'

export const metadata: Metadata = { title: 'Who to call' }

export default async function ContactsPage() {
  const services = await servicesHere()
  const { chosen } = await projectsHere()
  const person = await personHere()
  if (chosen === null) {
    return (
      <>
        <h1>Who to call</h1>
        <NoProject shows="The people of each site stand here; they are printed wherever a plan says to call somebody." />
      </>
    )
  }
  const { sites, contacts } = await orElsewhere(services.sitePeople(chosen.id))
  const words = services.knowledge.vocabulary.contacts
  const kinds = Object.keys(words) as Contact[]
  return (
    <>
      <header className="head">
        <h1>Who to call</h1>
        <p className="lead">Names and numbers of each site, printed wherever a plan says to call somebody.</p>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
        </p>
      </header>
      {person === null && (
        <p>
          <Link href="/person?back=/contacts">Say who you are</Link> first: every change carries who made it.
        </p>
      )}
      {sites.length === 0 && <p>A site is listed here as soon as a find of it is kept.</p>}
      {sites.map((site) => (
        <section key={site.id} className="section" aria-labelledby={`site-${site.id}`}>
          <h2 id={`site-${site.id}`}>
            {site.code === '' ? 'Finds without a site code' : `Site ${site.code}`}
          </h2>
          <ContactsForm
            siteId={site.id}
            lines={kinds.map((kind) => {
              const kept = contacts.find((one) => one.siteId === site.id && one.kind === kind)
              return {
                kind,
                label: words[kind]?.label ?? kind,
                means: words[kind]?.means ?? '',
                name: kept?.name ?? '',
                reach: kept?.reach ?? '',
                version: kept?.version ?? null,
              }
            })}
          />
        </section>
      ))}
    </>
  )
}
