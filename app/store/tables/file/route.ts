import { storeTables } from '../../../../lib/record/store-tables.ts'
import { troubleWords } from '../../../../lib/wording/trouble.ts'
import { projectsHere } from '../../../_server/project.ts'
import { servicesHere } from '../../../_server/services.ts'

const formats = {
  csv: 'text/csv; charset=utf-8',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  json: 'application/x-ndjson; charset=utf-8',
} as const

/** The store's tables as a file that comes back as the same store: one as CSV, all of them as XLSX or JSON. */
export async function GET(request: Request) {
  const asked = new URL(request.url).searchParams
  const format = (Object.keys(formats) as (keyof typeof formats)[]).find((one) => one === asked.get('format'))
  const table = storeTables.find((one) => one === asked.get('table'))
  const { chosen } = await projectsHere()
  if (chosen === null || format === undefined || (format === 'csv' && table === undefined))
    return new Response('Say which table and which format: csv, xlsx or json.', { status: 400 })
  const services = await servicesHere()
  const answer = await services.exportStore({
    projectId: chosen.id,
    format,
    ...(table === undefined ? {} : { table }),
  })
  if (!answer.ok) return new Response(troubleWords(answer.problems), { status: 409 })
  const { fileName, content } = answer.value
  const body = typeof content === 'string' ? content : new Uint8Array(content)
  return new Response(body, {
    headers: {
      'content-type': formats[format],
      'content-disposition': `attachment; filename*=UTF-8''${encodeURIComponent(fileName)}`,
    },
  })
}
