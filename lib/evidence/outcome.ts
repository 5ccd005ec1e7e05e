import type { GroupTable } from './mappings.ts'
import { allHold, type Lookup } from './read-cells.ts'

/**
 * Which states of a group the record still leaves possible, in their order. One: it was observed. All: nobody looked, or
 * looked in vain, and it changes nothing. Some: what is recorded excludes the others and no more; the evidence then is
 * that one of these holds, so a state that nobody has looked for is never held against the state recorded after it.
 * `rest` is left once every state is surely not so.
 */
export function possibleStates({ states }: GroupTable, lookup: Lookup): readonly number[] {
  const possible: number[] = []
  const rest = states.length - 1
  for (let state = 0; state < rest; state++) {
    const holds = allHold(states[state]!.when, lookup)
    if (holds === 'no') continue
    possible.push(state)
    if (holds === 'yes') return possible
  }
  possible.push(rest)
  return possible
}

/** Whether somebody looked and could not tell: it is not asked again. */
export function inVain({ states }: GroupTable, lookup: Lookup): boolean {
  return states.some(({ when }) => when.some(({ fact }) => lookup(fact)?.has.includes('unknown') === true))
}
