import { servicesHere } from '../../../../_server/services.ts'

interface Context {
  readonly params: Promise<{ readonly id: string }>
}

/** The grades of a matter as a table that a specialist corrects. */
export async function GET(_request: Request, { params }: Context) {
  const { id } = await params
  const text = (await servicesHere()).evidenceTable({ matter: id })
  if (text === null) return new Response('There is no such matter.', { status: 404 })
  return new Response(text, {
    headers: {
      'content-type': 'text/csv; charset=utf-8',
      'content-disposition': `attachment; filename="${id}.csv"`,
    },
  })
}
