import { troubleWords } from '../../../../lib/wording/trouble.ts'
import { projectsHere } from '../../../_server/project.ts'
import { servicesHere } from '../../../_server/services.ts'

const tables = ['boxes', 'renewals', 'events', 'movements'] as const

const kinds = {
  csv: 'text/csv; charset=utf-8',
  json: 'application/json; charset=utf-8',
} as const

/** The year as data: all of it as JSON, or one table as CSV. */
export async function GET(request: Request) {
  const words = new URL(request.url).searchParams
  const format = words.get('format') === 'json' ? 'json' : words.get('format') === 'csv' ? 'csv' : null
  const table = tables.find((one) => one === (words.get('table') ?? 'boxes'))
  const year = Number(words.get('year'))
  const { chosen } = await projectsHere()
  if (chosen === null || format === null || table === undefined || !/^\d{4}$/.test(words.get('year') ?? ''))
    return new Response(
      'Say which year, and which format: csv (with table: boxes, renewals, events or movements) or json.',
      {
        status: 400,
      },
    )
  const services = await servicesHere()
  const asked = { projectId: chosen.id, year }
  const file = await services.reportYearFile(
    format === 'json' ? { ...asked, format } : { ...asked, format, table },
  )
  if (!file.ok) return new Response(troubleWords(file.problems), { status: 409 })
  const what = format === 'json' ? String(year) : `${year} ${table}`
  const name = `${chosen.name} store ${what}${chosen.invented ? ' (invented)' : ''}.${format}`
  return new Response(file.value, {
    headers: {
      'content-type': kinds[format],
      'content-disposition': `attachment; filename*=UTF-8''${encodeURIComponent(name)}`,
    },
  })
}
