import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import type { Problem } from '../record/problem.ts'
import type { RoundGiven } from '../record/store-rounds.ts'
import { readPlaces } from '../tables/place-table.ts'
import { hashed } from './diary-hash.ts'
import { roundRows } from './keep-diary-rows.ts'
import type { Actor } from './kept.ts'
import type { World } from './ports.ts'
import { stopsHeard } from './stops-heard.ts'
import type { Stop } from './stops.ts'

/** What was read of one box, and when exactly, where the device knows. */
export type RoundToKeep = RoundGiven & { readonly atMs?: number }

export interface RoundKept {
  readonly added: number
  /** Sent before, word for word. */
  readonly alreadyThere: number
  /** By place in the walk, from 1; what is unreadable was not kept and stays with the sender. */
  readonly problems: readonly Problem[]
  readonly unreadable: readonly number[]
  readonly stops: readonly Stop[]
}

/** One box read, or a walk of many: each once, however often the walk is sent. */
export async function keepRound(
  world: World,
  { projectId, rounds }: { readonly projectId: string; readonly rounds: readonly RoundToKeep[] },
  by: Actor,
): Answer<RoundKept> {
  // Read like a file, so that a phone and a table are held to the same.
  const lines = rounds
    .map(({ atMs: _moment, ...round }) => JSON.stringify({ by: by.name, ...round }))
    .join('\n')
  const read = await readPlaces(new TextEncoder().encode(lines), world.knowledge.vocabulary.textWords)
  const late = read.rounds.filter(({ given: round }) => round.on > world.today())
  if (late.length > 0) return refused({ kind: 'not-accepted', field: 'on', because: 'unknown' })
  const stops = read.heard.flatMap(({ row, hazard }) =>
    stopsHeard(`row ${row}`, [hazard], world.knowledge, world.today()).map((caution) => ({
      find: null,
      row,
      caution,
    })),
  )
  return world.store.write('keep-round', by, async (writes) => {
    if (!(await writes.projects.byId(projectId))) return refused(missing('project', projectId))
    const { entries, problems } = await roundRows(writes, projectId, read.rounds)
    const dated = entries.map((entry, at) => {
      const { contentHash: _undated, ...rest } = entry
      return hashed({ ...rest, atMs: rounds[read.rounds[at]!.row - 1]?.atMs ?? null })
    })
    const added = await writes.diary.add(projectId, dated)
    return given({
      added: added.length,
      alreadyThere: entries.length - added.length,
      problems: [...read.problems, ...problems],
      unreadable: read.unreadable.flatMap(({ rows }) => rows.map(({ row }) => row)),
      stops,
    })
  })
}
