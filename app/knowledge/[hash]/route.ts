import { knowledgeHere } from '../../_server/services.ts'

/** The compiled knowledge under its own version: what an address holds never changes, so it may be kept for ever. */
export async function GET(
  _request: Request,
  { params }: { readonly params: Promise<{ readonly hash: string }> },
) {
  const knowledge = await knowledgeHere()
  const { hash } = await params
  if (hash !== knowledge.hash)
    return new Response('No such version of the knowledge is here.', { status: 404 })
  return Response.json(knowledge, { headers: { 'cache-control': 'public, max-age=31536000, immutable' } })
}
