import { troubleWords } from '../../../lib/wording/trouble.ts'
import { servicesHere } from '../../_server/services.ts'
import { received } from '../received.ts'
import { summaryOf } from '../summary.ts'

/** What an import of this file would do; nothing of it is kept. */
export async function POST(request: Request) {
  const file = await received(request)
  if (!file.ok) return Response.json({ says: file.says }, { status: 400 })
  const { by, projectId, fileName, bytes } = file
  const services = await servicesHere()
  const answer = await services.importFile({ projectId, fileName, bytes, dryRun: true }, by)
  if (!answer.ok) return Response.json({ says: troubleWords(answer.problems) }, { status: 409 })
  return Response.json({ summary: summaryOf(answer.value, projectId, services.knowledge) })
}
