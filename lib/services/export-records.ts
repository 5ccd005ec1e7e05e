import { given, type Outcome } from '../base/outcome.ts'
import type { Find, KeptRecord } from './kept.ts'
import type { World } from './ports.ts'
import type { Trouble } from '../base/trouble.ts'

const findsAtOnce = 500

export interface Exported {
  readonly find: Find
  /** Oldest first. */
  readonly records: readonly KeptRecord[]
}

/**
 * Every find of a project with all its dated records, in the order of the numbers, a slice at a time so that a store of
 * any size leaves in flat memory. A slice that cannot be read ends the export with its trouble.
 */
export async function* exportRecords(
  world: World,
  projectId: string,
): AsyncGenerator<Outcome<readonly Exported[], Trouble>> {
  let after: Find | null = null
  for (;;) {
    const place: Find | null = after
    const slice: Outcome<readonly Exported[], Trouble> = await world.store.read(async (reads) => {
      const finds = await reads.finds.page(projectId, place, findsAtOnce)
      const records = Map.groupBy(
        await reads.records.ofFinds(finds.map(({ id }) => id)),
        ({ findId }) => findId,
      )
      return given(finds.map((find) => ({ find, records: records.get(find.id) ?? [] })))
    })
    if (slice.ok && slice.value.length === 0) return
    yield slice
    if (!slice.ok) return
    after = slice.value.at(-1)!.find
  }
}
