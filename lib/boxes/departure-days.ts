import type { Day } from './box.ts'
import type { Seen } from './learn-sightings.ts'

/** The latest gaps one by one, then ever more of the older together. */
const oneByOne = 14
const more = 1.3

/** A day on which a departure may have begun. */
export interface Beginning {
  /** So many sightings lie before it. */
  readonly after: number
  readonly on: Day
  /** The days it stands for. */
  readonly days: number
}

/** Days on which a departure may have begun: between sightings, all of the latest and ever fewer of the older. */
export function beginnings(seen: readonly Seen[], from: Day): readonly Beginning[] {
  const gaps = seen.map(({ on }, at) => ({ after: at, from: seen[at - 1]?.on ?? from, to: on }))
  const taken: Beginning[] = []
  let [end, step] = [gaps.length, 1]
  while (end > 0) {
    const begin = Math.max(0, end - Math.floor(step))
    const [first, last] = [gaps[begin]!, gaps[end - 1]!]
    const middle = gaps[Math.floor((begin + end - 1) / 2)]!
    taken.push({ after: middle.after, on: (middle.from + middle.to) / 2, days: last.to - first.from })
    end = begin
    if (taken.length > oneByOne) step *= more
  }
  // Before the first sighting there was nothing to depart from.
  return taken.filter(({ after, days }) => after > 0 && days > 0)
}
