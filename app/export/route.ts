import { projectsHere } from '../_server/project.ts'
import { servicesHere } from '../_server/services.ts'

const formats = {
  csv: 'text/csv; charset=utf-8',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  json: 'application/x-ndjson; charset=utf-8',
} as const

/** All records of the project as a file that comes back as the same records. */
export async function GET(request: Request) {
  const wanted = new URL(request.url).searchParams.get('format')
  const format = (Object.keys(formats) as (keyof typeof formats)[]).find((one) => one === wanted)
  const { chosen } = await projectsHere()
  if (format === undefined || chosen === null)
    return new Response('Say which format: csv, xlsx or json.', { status: 400 })
  const services = await servicesHere()
  const pieces = services.exportFile({ projectId: chosen.id, format })
  const text = new TextEncoder()
  const body = new ReadableStream<Uint8Array>({
    async pull(stream) {
      const { value: piece, done } = await pieces.next()
      if (done === true) stream.close()
      // An export that breaks off must not look whole.
      else if (!piece.ok) stream.error(new Error('The export broke off: the data could not be read.'))
      else stream.enqueue(typeof piece.value === 'string' ? text.encode(piece.value) : piece.value)
    },
  })
  const name = `${chosen.name}${chosen.invented ? ' (invented)' : ''}.${format === 'json' ? 'jsonl' : format}`
  return new Response(body, {
    headers: {
      'content-type': formats[format],
      'content-disposition': `attachment; filename*=UTF-8''${encodeURIComponent(name)}`,
    },
  })
}
