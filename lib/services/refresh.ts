import { given } from '../base/outcome.ts'
import { bringUpToDate } from './enter-records.ts'
import type { Actor } from './kept.ts'
import type { Store, World } from './ports.ts'
import type { Answer } from '../base/trouble.ts'

const findsAtOnce = 200

/** In the trail as what it is: the tool counting days, nobody deciding anything. */
const itself: Actor = { name: 'Quietmetal', role: 'assistant', device: 'this tool' }

/**
 * Lists show each find as of today: a day later, or with new knowledge, finds are planned again before they are listed.
 * Records and issued plans stay as they are.
 */
export function refresh(world: World, projectId: string): Answer<null> {
  const own = underway.get(world.store) ?? new Map<string, Answer<null>>()
  underway.set(world.store, own)
  // Several pages asked for at once wait for the same work instead of each doing it.
  const running = own.get(projectId) ?? refreshAll(world, projectId).finally(() => own.delete(projectId))
  own.set(projectId, running)
  return running
}

const underway = new WeakMap<Store, Map<string, Answer<null>>>()

async function refreshAll(world: World, projectId: string): Answer<null> {
  for (;;) {
    const late = await world.store.read(async (reads) =>
      given(await reads.standings.outOfDate(projectId, world.today(), world.knowledge.hash, findsAtOnce)),
    )
    if (!late.ok) return late
    if (late.value.length === 0) return given(null)
    const done = await world.store.write('plan-for-today', itself, async (writes) => {
      await bringUpToDate(writes, world, late.value)
      return given(null)
    })
    if (!done.ok) return done
  }
}
