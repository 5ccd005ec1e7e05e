import { addDays, daysBetween, type IsoDate } from '../../lib/base/calendar.ts'
import type { Component, ConditionRecord } from '../../lib/record/record.ts'
import { chance, type Chance } from './chance.ts'
import { findOf, today } from './find.ts'
import { grounds, type GroundName } from './grounds.ts'
import type { Kind } from './kind.ts'
import { kinds } from './kinds.ts'
import { boxes, type Box } from './store.ts'
import { showingTruths } from './truths.ts'

/** The invented assemblage of Tollgate Wharf: finds, later looks at some of them, and the boxes they lie in. */
const findCount = 640
const watchedCount = 44

/** Later looks at the same find: some stay quiet and are watched, some move. */
function laterLooks(first: ConditionRecord, luck: Chance): readonly ConditionRecord[] {
  const { whole, happens } = luck
  const moves = happens(0.35)
  const worse: Record<string, readonly string[]> = {
    iron: ['bright-orange-spots', 'loose-flakes'],
    'copper-alloy': ['pale-green-powder'],
    lead: ['white-powder'],
  }
  let on = first.recorded_on as IsoDate
  return Array.from({ length: whole(1, 4) }).flatMap((_, at): ConditionRecord[] => {
    on = addDays(on, whole(90, 420))
    if (on > today) return []
    const components = first.components.map((part) => {
      const signs = moves && at > 0 ? worse[part.material] : undefined
      return {
        ...part,
        seen: signs
          ? [...new Set([...(part.seen ?? []), ...signs])]
          : [...(part.seen ?? []), 'no-change-seen' as const],
      } as Component
    })
    const watched = moves && at > 0 ? {} : { watched_days: daysBetween(first.recorded_on as IsoDate, on) }
    return [
      {
        ...first,
        state_now: first.state_now === 'wet' ? 'wet' : 'dry',
        recorded_on: on,
        recorded_by: 'bench',
        ...watched,
        components,
      },
    ]
  })
}

export interface Assemblage {
  readonly records: readonly ConditionRecord[]
  readonly boxes: readonly Box[]
}

/** The whole assemblage, the same for the same seed; without what some finds are in truth where that is to be drawn anew. */
export function assemblage(seed = 1234, { truths = true } = {}): Assemblage {
  const luck = chance(seed)
  const stock = boxes(luck)
  const ashore = (Object.keys(grounds) as GroundName[]).filter((name) => name !== 'dredged from the bar')
  const groundFor = (kind: Kind) =>
    luck.weighted((kind.only ?? ashore).map((name) => [grounds[name].weight, name] as const))
  const firsts = Array.from({ length: findCount }, (_, at) => {
    // Each kind once, so that every material and hazard is met; then as chance has it.
    const kind = kinds[at] ?? luck.weighted(kinds.map((one) => [one.weight, one] as const))
    return findOf(at + 1, kind, groundFor(kind), stock, luck)
  })
  const watched = firsts
    .filter((record) => (record.recorded_on as string) < '2025-12-01')
    .slice(0, watchedCount * 4)
    .filter((_, at) => at % 4 === 1)
  const later = watched.flatMap((record) => laterLooks(record, luck))
  const records = [...firsts, ...later]
  return { records: truths ? showingTruths(records) : records, boxes: stock }
}
