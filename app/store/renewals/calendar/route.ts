import { troubleWords } from '../../../../lib/wording/trouble.ts'
import { projectsHere } from '../../../_server/project.ts'
import { servicesHere } from '../../../_server/services.ts'

const says = (text: string, status: number) =>
  new Response(text, { status, headers: { 'Content-Type': 'text/plain; charset=utf-8' } })

/** The renewals of a year as an iCalendar file. */
export async function GET() {
  const { chosen } = await projectsHere()
  if (chosen === null) return says('There is no project yet.', 404)
  const services = await servicesHere()
  const calendar = await services.renewalCalendar({ projectId: chosen.id, madeAtMs: Date.now() })
  if (!calendar.ok) return says(troubleWords(calendar.problems), 409)
  if (calendar.value === null) return says('No gel falls due within a year, so there is no calendar.', 404)
  return new Response(calendar.value.text, {
    headers: {
      'Content-Type': 'text/calendar; charset=utf-8',
      'Content-Disposition': `attachment; filename="${calendar.value.fileName}"`,
      'Cache-Control': 'no-store',
    },
  })
}
