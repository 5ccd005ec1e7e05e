import type { Metadata } from 'next'
import Link from 'next/link'
import { momentWords } from '../../lib/wording/day.ts'
import { countWords } from '../../lib/wording/list.ts'
import { personHere } from '../_server/person.ts'
import { projectsHere } from '../_server/project.ts'
import { orElsewhere, servicesHere } from '../_server/services.ts'
import { ImportForm } from './import-form.tsx'

export const metadata: Metadata = { title: 'Import a file' }

export default async function ImportPage() {
  const services = await servicesHere()
  const { all, chosen } = await projectsHere()
  const person = await personHere()
  const imports = chosen === null ? [] : await orElsewhere(services.listImports(chosen.id))
  return (
    <>
      <header className="head">
        <h1>Import a file</h1>
        <p className="lead">
          CSV, XLSX or JSON, a part a row. You see first what would happen; nothing is kept until you say so,
          and no row is dropped in silence.
        </p>
      </header>
      {person === null ? (
        <p>
          <Link className="button first" href="/person?back=/import">
            Say who you are
          </Link>{' '}
          first: every record carries who wrote it.
        </p>
      ) : (
        <ImportForm
          projects={all.filter(({ invented }) => !invented).map(({ id, name }) => ({ id, name }))}
          chosen={chosen?.invented === false ? chosen.id : ''}
        />
      )}
      {imports.length > 0 && (
        <section className="section" aria-labelledby="earlier">
          <h2 id="earlier">Earlier imports</h2>
          <ul className="plain-list">
            {imports.map((batch) => (
              <li key={batch.id}>
                <Link className="tall" href={`/import/${batch.id}`}>
                  {`${batch.fileName}, ${momentWords(batch.createdAt)}: ${countWords(batch.recordsAdded, 'record')}`}
                </Link>
                {batch.rowsRejected > 0 && (
                  <strong>{`, ${countWords(batch.rowsRejected, 'row')} to mend`}</strong>
                )}
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  )
}
