import { given } from '../base/outcome.ts'
import { bringUpToDate } from './enter-records.ts'
import type { Actor } from './kept.ts'
import type { World } from './ports.ts'
import type { Answer } from '../base/trouble.ts'

const findsAtOnce = 500

/** In the trail as what it is: the tool counting days, nobody deciding anything. */
const itself: Actor = { name: 'Quietmetal', role: 'assistant', device: 'this tool' }

/**
 * Lists show each find as of today: a day later, or with new knowledge, finds are planned again before they are listed.
 * Records and issued plans stay as they are.
 */
export async function refresh(world: World, projectId: string): Answer<null> {
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
