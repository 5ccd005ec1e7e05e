import type { Identified } from '../evidence/raised.ts'
import type { Reads } from './ports.ts'

/** What was found out of each find, oldest first: what is settled is asked for no more, on no page and in no list. */
export async function identifiedOf(
  reads: Reads,
  findIds: readonly string[],
): Promise<(findId: string) => readonly Identified[]> {
  const all = Map.groupBy(await reads.identifications.ofFinds(findIds), ({ findId }) => findId)
  return (findId) => (all.get(findId) ?? []).map((one) => one.given)
}
