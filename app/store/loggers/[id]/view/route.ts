import { troubleWords } from '../../../../../lib/wording/trouble.ts'
import type { ViewAnswer } from '../../../../_charts/use-logger-view.ts'
import { viewOf } from '../../view-of.ts'

const answer = (said: ViewAnswer, status = 200) => Response.json(said, { status })

/** One stretch of a logger's readings, ready to draw. */
export async function GET(
  request: Request,
  { params }: { readonly params: Promise<{ readonly id: string }> },
) {
  const query = new URL(request.url).searchParams
  const [fromMs, toMs] = [numberOf(query, 'from'), numberOf(query, 'to')]
  if (fromMs === null || toMs === null || fromMs >= toMs)
    return answer({ says: 'No stretch of time was named.' }, 400)
  const zone = query.get('zone') ?? 'UTC'
  if (!isZone(zone)) return answer({ says: 'This clock is not known here.' }, 400)
  const found = await viewOf({
    loggerId: (await params).id,
    channel: query.get('channel'),
    zone,
    ground: {
      band: null,
      limitRhPercent: numberOf(query, 'limit'),
      floorRhPercent: numberOf(query, 'floor'),
    },
    span: { fromMs, toMs },
  })
  if (!found.ok) return answer({ says: troubleWords(found.problems) }, 404)
  return found.value === null
    ? answer({ says: 'Nothing was read by this sensor.' }, 404)
    : answer({ view: found.value.view })
}

function numberOf(query: URLSearchParams, name: string): number | null {
  const text = query.get(name) ?? ''
  const value = Number(text)
  return text === '' || !Number.isFinite(value) ? null : value
}

function isZone(zone: string): boolean {
  try {
    return new Intl.DateTimeFormat('en-GB', { timeZone: zone }).resolvedOptions().timeZone !== ''
  } catch {
    return false
  }
}
