import { given, refused } from '../base/outcome.ts'
import type { ConditionRecord } from '../record/record.ts'
import { enterRecords } from './enter-records.ts'
import type { Actor } from './kept.ts'
import type { World } from './ports.ts'
import { missing, type Answer } from '../base/trouble.ts'

export interface AddedRecords {
  readonly finds: readonly { readonly id: string; readonly findNumber: string }[]
  readonly added: number
  /** Records that were there already, word for word. */
  readonly alreadyThere: number
}

/** Keeps what somebody recorded of one find or of a bagful; all of them or none. */
export function addRecords(
  world: World,
  { projectId, records }: { readonly projectId: string; readonly records: readonly ConditionRecord[] },
  by: Actor,
): Answer<AddedRecords> {
  return world.store.write('add-records', by, async (writes) => {
    if (!(await writes.projects.byId(projectId))) return refused(missing('project', projectId))
    const { finds, added, alreadyThere } = await enterRecords(writes, world, projectId, records)
    return given({
      finds: finds.map(({ id, findNumber }) => ({ id, findNumber })),
      added: added.length,
      alreadyThere,
    })
  })
}
