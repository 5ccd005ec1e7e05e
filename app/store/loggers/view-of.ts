import 'server-only'
import type { ChartGround, ChartView, Span } from '../../../lib/papers/store-chart.ts'
import { chartViewOf } from '../../../lib/papers/store-view.ts'
import type { Answer } from '../../../lib/base/trouble.ts'
import { servicesHere } from '../../_server/services.ts'

export interface ViewAsked {
  readonly loggerId: string
  readonly channel: string | null
  readonly zone: string
  readonly ground: ChartGround
  /** An end left out: from the first reading, to the last. */
  readonly span: Partial<Span>
}

export interface ViewFound {
  readonly view: ChartView
  /** From the first reading to the last. */
  readonly whole: Span
}

/** Readings ready to draw; null where there are none. */
export async function viewOf({ loggerId, channel, zone, ground, span }: ViewAsked): Answer<ViewFound | null> {
  const services = await servicesHere()
  const answer = await services.logView({
    loggerId,
    ...(channel === null ? {} : { channel }),
    ...span,
    ...(ground.limitRhPercent === null ? {} : { aboveRhPercent: ground.limitRhPercent }),
  })
  if (!answer.ok) return answer
  const { fromMs, toMs, firstMs, lastMs, buckets, above, gaps } = answer.value
  if (firstMs === null || lastMs === null) return { ok: true, value: null }
  const view = chartViewOf({ fromMs, toMs, zone, buckets, above, gaps, ground })
  return { ok: true, value: { view, whole: { fromMs: firstMs, toMs: lastMs } } }
}

/** Where another stretch of the same is fetched. */
export function viewAddress({ loggerId, channel, zone, ground }: Omit<ViewAsked, 'span'>): string {
  const { limitRhPercent, floorRhPercent } = ground
  const query = new URLSearchParams({ zone })
  if (channel !== null) query.set('channel', channel)
  if (limitRhPercent !== null) query.set('limit', String(limitRhPercent))
  if (floorRhPercent !== null) query.set('floor', String(floorRhPercent))
  return `/store/loggers/${loggerId}/view?${query.toString()}`
}
