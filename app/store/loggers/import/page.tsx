import type { Metadata } from 'next'
import Link from 'next/link'
import { NoProject } from '../../../_finds/no-project.tsx'
import { personHere } from '../../../_server/person.ts'
import { projectsHere } from '../../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../../_server/services.ts'
import { allBoxesOf } from '../../places-of.ts'
import { ImportLogs } from './import-logs.tsx'

export const metadata: Metadata = { title: 'Bring in logger files' }

export default async function ImportLogsPage() {
  const { chosen } = await projectsHere()
  const person = await personHere()
  return (
    <>
      <header className="head">
        <h1>Bring in logger files</h1>
        <p className="lead">
          You see first what each file would bring and on which box it lands. The file itself is kept as it
          came; the same file again changes nothing.
        </p>
      </header>
      {chosen === null ? (
        <NoProject shows="Readings belong to the loggers and boxes of a project." />
      ) : person === null ? (
        <p>
          <Link className="button first" href="/person?back=/store/loggers/import">
            Say who you are
          </Link>{' '}
          first: every file carries who brought it.
        </p>
      ) : (
        <Files projectId={chosen.id} />
      )}
    </>
  )
}

async function Files({ projectId }: { readonly projectId: string }) {
  const services = await servicesHere()
  const store = await orElsewhere(services.showStore(projectId))
  const zone = store.setting.timeZone ?? 'UTC'
  return (
    <ImportLogs
      project={projectId}
      known={{
        zone,
        zones: [...new Set([zone, 'UTC', '+00:00', ...Intl.supportedValuesOf('timeZone')])],
        serials: store.loggers.map(({ logger }) => logger.given.serial),
        boxes: allBoxesOf(store).map(({ box }) => box.given.box),
      }}
    />
  )
}
