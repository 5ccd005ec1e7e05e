import { troubleWords } from '../../../../lib/wording/trouble.ts'
import { servicesHere } from '../../../_server/services.ts'

const types = { csv: 'text/csv; charset=utf-8', jsonl: 'application/x-ndjson; charset=utf-8' } as const

/** The rows that could not be read, as a file to mend. */
export async function GET(
  _request: Request,
  { params }: { readonly params: Promise<{ readonly id: string }> },
) {
  const services = await servicesHere()
  const answer = await services.rejectedRows((await params).id)
  if (!answer.ok)
    return new Response(troubleWords(answer.problems), {
      status: answer.problems.kind === 'missing' ? 404 : 503,
    })
  const { text, extension, fileName } = answer.value
  return new Response(text, {
    headers: {
      'content-type': types[extension],
      'content-disposition': `attachment; filename*=UTF-8''${encodeURIComponent(fileName)}`,
    },
  })
}
