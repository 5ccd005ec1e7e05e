import { projectsHere } from '../../../_server/project.ts'
import { servicesHere } from '../../../_server/services.ts'

/** What was found out, as a table that comes back as the same. */
export async function GET() {
  const { chosen } = await projectsHere()
  if (chosen === null) return new Response('There is no project yet.', { status: 404 })
  const services = await servicesHere()
  const table = await services.exportIdentifications(chosen.id)
  if (!table.ok) return new Response('The data could not be read.', { status: 500 })
  const { fileName, content } = table.value
  const name = chosen.invented ? fileName.replace(' - ', ' (invented) - ') : fileName
  return new Response(content, {
    headers: {
      'content-type': 'text/csv; charset=utf-8',
      'content-disposition': `attachment; filename*=UTF-8''${encodeURIComponent(name)}`,
    },
  })
}
