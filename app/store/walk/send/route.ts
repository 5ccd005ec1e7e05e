import { revalidatePath } from 'next/cache'
import { isoDate } from '../../../../lib/base/calendar.ts'
import type { WalkEntry } from '../../../../lib/papers/walk-list.ts'
import type { RoundToKeep } from '../../../../lib/services/keep-round.ts'
import { troubleWords } from '../../../../lib/wording/trouble.ts'
import { personHere, type Person } from '../../../_server/person.ts'
import { servicesHere } from '../../../_server/services.ts'
import { readSent } from '../read-sent.ts'
import type { SendAnswer } from '../use-entries.ts'

const answer = (said: SendAnswer, status = 200) => Response.json(said, { status })

/** Takes what was written on a walk; what was sent before is there already, and is told as taken. */
export async function POST(request: Request) {
  if (request.headers.get('sec-fetch-site') === 'cross-site')
    return answer({ ok: false, says: 'A walk is taken from this tool’s own pages only.' }, 400)
  const by = await personHere()
  if (by === null)
    return answer(
      { ok: false, says: 'Say who you are first: every reading carries who took it. Nothing is lost.' },
      403,
    )
  const sent = readSent(await request.json().catch(() => null))
  if (sent === null)
    return answer(
      {
        ok: false,
        says: 'The walk could not be taken over. Reload the page; nothing is lost on this device.',
      },
      400,
    )
  const { project, entries } = sent
  const dated = entries.flatMap((entry) => {
    const on = isoDate(entry.on)
    return on === null ? [] : [{ entry, on }]
  })
  const looked = dated.filter(
    ({ entry: { seen } }) => seen.strip !== null || seen.gelColour !== null || seen.lid !== null,
  )
  const services = await servicesHere()
  const rounds = await services.keepRound({ projectId: project, rounds: looked.map(roundOf) }, by)
  if (!rounds.ok) return answer({ ok: false, says: troubleWords(rounds.problems) }, 409)
  const left = new Set(rounds.value.unreadable.map((place) => looked[place - 1]?.entry.id))
  for (const { entry, on } of dated.filter(({ entry: { seen } }) => seen.waterChanged)) {
    if (!(await changed(project, entry, on, by))) left.add(entry.id)
  }
  revalidatePath('/store', 'layout')
  return answer({ ok: true, ids: entries.filter(({ id }) => !left.has(id)).map(({ id }) => id) })
}

function roundOf({
  entry: { box, atMs, seen },
  on,
}: {
  readonly entry: WalkEntry
  readonly on: RoundToKeep['on']
}): RoundToKeep {
  return {
    box,
    on,
    atMs,
    ...(seen.strip === null ? {} : { strip_low: seen.strip[0], strip_high: seen.strip[1] }),
    ...(seen.gelColour === null ? {} : { gel_colour: seen.gelColour }),
    ...(seen.lid === null ? {} : { lid: seen.lid }),
  }
}

async function changed(
  projectId: string,
  { box, atMs }: WalkEntry,
  on: RoundToKeep['on'],
  by: Person,
): Promise<boolean> {
  const services = await servicesHere()
  return (await services.changeWater({ projectId, box, on, atMs }, by)).ok
}
