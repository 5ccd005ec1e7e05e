import type { Grade } from '../knowledge/evidence.ts'
import type { EvidenceBase } from './base.ts'
import { restId, tablesFor } from './mappings.ts'
import { shareRange } from './score.ts'

/** What had been seen of a matter whose explanation is known by now. */
export interface Known {
  readonly matter: string
  readonly truth: string
  readonly observed: readonly { readonly group: string; readonly state: string }[]
}

/** A word of the evidence base that what was found later speaks against. */
export interface PoorGrade {
  readonly matter: string
  readonly group: string
  readonly state: string
  readonly rival: string
  readonly grade: Grade
  /** What the word stands for here, over all plausible mappings. */
  readonly means: readonly [low: number, high: number]
  /** Finds of that explanation of which the group was looked at, and how many of them showed the state. */
  readonly looked: number
  readonly showed: number
  readonly range: readonly [low: number, high: number]
}

/** Finds from which on a word can be called poor. A house rule. */
const aFew = 5

/**
 * Words that do not fit what was found: where the share that showed a state lies, by chance too, outside of all that the
 * word can mean. A failing method is not held against the word: only what was seen and what it turned out to be counts.
 */
export function poorGrades(known: readonly Known[], base: EvidenceBase): readonly PoorGrade[] {
  const found: PoorGrade[] = []
  for (const [id, cases] of Map.groupBy(known, ({ matter }) => matter)) {
    const matter = base.matters[id]
    if (!matter) continue
    const tables = tablesFor(matter, base)
    const wide = tables.rivals.length
    for (const { group, states, shares } of tables.groups) {
      for (const [rival, name] of tables.rivals.entries()) {
        const looked = cases.flatMap(({ truth, observed }) =>
          truth === name ? observed.filter((one) => one.group === group.id) : [],
        )
        if (looked.length < aFew) continue
        for (const [state, { id: shown }] of states.entries()) {
          const means = extent(shares, state * wide + rival, states.length * wide)
          const showed = looked.filter((one) => one.state === shown).length
          const range = shareRange(showed, looked.length)
          if (range[0] <= means[1] && range[1] >= means[0]) continue
          const grade = (shown === restId ? group.rest : group.states[state]!).fits[name]!
          found.push({
            matter: id,
            group: group.id,
            state: shown,
            rival: name,
            grade,
            means,
            looked: looked.length,
            showed,
            range,
          })
        }
      }
    }
  }
  return found
}

/** Lowest and highest of every so manieth number. */
function extent(numbers: Float64Array, from: number, step: number): readonly [low: number, high: number] {
  let low = Infinity
  let high = -Infinity
  for (let at = from; at < numbers.length; at += step) {
    low = Math.min(low, numbers[at]!)
    high = Math.max(high, numbers[at]!)
  }
  return [low, high]
}
