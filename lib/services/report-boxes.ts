import { given } from '../base/outcome.ts'
import type { Answer } from '../base/trouble.ts'
import type { World } from './ports.ts'
import { refresh } from './refresh.ts'
import type { BoxLine } from './show-store.ts'
import type { Standing } from './standing.ts'
import { storeData } from './store-data.ts'
import { reckonStore } from './store-reckoned.ts'

/** A box for those who reckon on or look from outside: everything the store page says of it. */
export interface BoxReport {
  readonly line: BoxLine
  /** Finds that may stand damper than they bear, as the box is thought to hold or was last read. */
  readonly findsAtRisk: number
}

/** The highest humidity [%] the box may hold today; null where nothing is known of it. */
function mayHold({ outlook, newest }: BoxLine): number | null {
  return outlook?.nowRhPercent.p90 ?? newest?.highRhPercent ?? null
}

function atRisk(line: BoxLine, finds: readonly Standing[]): number {
  const highest = mayHold(line)
  if (highest === null) return 0
  return finds.filter(
    ({ line: { keep, rhPercent } }) => keep !== 'wet' && rhPercent !== null && highest > rhPercent.max,
  ).length
}

/** Every box of a project, in the order of their names. */
export async function reportBoxes(world: World, projectId: string): Answer<readonly BoxReport[]> {
  const fresh = await refresh(world, projectId)
  if (!fresh.ok) return fresh
  return world.store.read(async (reads) => {
    const data = await storeData(world, reads, projectId)
    if (!data.ok) return data
    const { lines } = await reckonStore(world, data.value)
    return given(
      lines.map((line) => ({
        line,
        findsAtRisk: atRisk(line, data.value.standings.get(line.box.given.box) ?? []),
      })),
    )
  })
}
