import type { Metadata } from 'next'
import { notFound } from 'next/navigation'
import { momentWords } from '../../../lib/wording/day.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { whoWords } from '../../../lib/wording/marks.ts'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { Back } from '../../sources/back.tsx'

export const metadata: Metadata = { title: 'Import' }

export default async function ImportedPage({
  params,
}: {
  readonly params: Promise<{ readonly id: string }>
}) {
  const { id } = await params
  const services = await servicesHere()
  const { chosen } = await projectsHere()
  if (chosen === null) notFound()
  const batch = (await orElsewhere(services.listImports(chosen.id))).find((one) => one.id === id)
  if (batch === undefined) notFound()
  return (
    <>
      <header className="head">
        <Back to="/import" name="Imports" />
        <h1>{batch.fileName}</h1>
        <p className="soft">
          {`Imported by ${batch.by.name}, ${whoWords[batch.by.role]} (unverified), ${momentWords(batch.createdAt)}`}
        </p>
      </header>
      <ul>
        <li>{`${countWords(batch.recordsRead, 'record')} could be read; ${batch.recordsAdded} were added, ${batch.recordsAlreadyThere} were there already.`}</li>
        <li>{`${countWords(batch.problems, 'problem')} in what was read.`}</li>
        <li>
          {batch.rowsRejected === 0
            ? 'Every row could be read.'
            : `${countWords(batch.rowsRejected, 'row')} could not be read and wait to be mended.`}
        </li>
      </ul>
      {batch.rowsRejected > 0 && (
        <div className="stack">
          <p className="measure">
            Save the rows, mend what stands beside each of them, and import that file: rows that are in
            already are not added twice.
          </p>
          <div>
            <a className="button first" href={`/import/${id}/rows`} download>
              {`Save ${countWords(batch.rowsRejected, 'row')} to mend`}
            </a>
          </div>
        </div>
      )}
    </>
  )
}
