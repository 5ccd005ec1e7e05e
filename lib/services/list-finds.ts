import { given, refused } from '../base/outcome.ts'
import { placeOf, type BandCount, type FindQuery, type Place } from './find-query.ts'
import type { World } from './ports.ts'
import { refresh } from './refresh.ts'
import type { Standing } from './standing.ts'
import type { Answer } from '../base/trouble.ts'

export interface FindPage {
  readonly finds: readonly Standing[]
  /** All that match, on whatever page. */
  readonly total: number
  /** Give this as `after` for the next page; null on the last. */
  readonly next: string | null
}

export type FindsWanted = Omit<FindQuery, 'after' | 'limit'> & {
  readonly after?: string | null
  readonly limit?: number
}

const mostOnAPage = 500

/** An address on the page that only we read; one that was tampered with simply is no place. */
function toText(place: Place): string {
  return Buffer.from(JSON.stringify([place.urgency, place.dueOn, place.sortKey, place.findId])).toString(
    'base64url',
  )
}

function fromText(text: string): Place | null {
  try {
    const parts: unknown = JSON.parse(Buffer.from(text, 'base64url').toString())
    if (!Array.isArray(parts)) return null
    const [urgency, dueOn, sortKey, findId] = parts as readonly unknown[]
    if (typeof urgency !== 'number' || typeof dueOn !== 'string') return null
    return typeof sortKey === 'string' && typeof findId === 'string'
      ? { urgency, dueOn, sortKey, findId }
      : null
  } catch {
    return null
  }
}

/** Finds by urgency or number, narrowed as asked, a page at a time. */
export async function listFinds(
  world: World,
  { after, limit = 50, ...query }: FindsWanted,
): Answer<FindPage> {
  const place = after === undefined || after === null ? null : fromText(after)
  if (after && place === null) return refused({ kind: 'not-accepted', field: 'after', because: 'unknown' })
  const fresh = await refresh(world, query.projectId)
  if (!fresh.ok) return fresh
  const size = Math.min(Math.max(1, limit), mostOnAPage)
  return world.store.read(async (reads) => {
    const asked: FindQuery = { ...query, ...(place ? { after: place } : {}), limit: size + 1 }
    const finds = await reads.standings.list(asked)
    const page = finds.slice(0, size)
    return given({
      finds: page,
      total: await reads.standings.count(asked),
      next: finds.length > size ? toText(placeOf(page.at(-1)!)) : null,
    })
  })
}

/** The bands a project's finds need, the most pressing group first: what could stand together. */
export async function bandsNeeded(world: World, projectId: string): Answer<readonly BandCount[]> {
  const fresh = await refresh(world, projectId)
  if (!fresh.ok) return fresh
  return world.store.read(async (reads) => given(await reads.standings.byBand(projectId)))
}
