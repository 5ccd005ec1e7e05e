import type { Fact } from '../record/fact.ts'
import type { Cell, Interval } from './knowledge.ts'

export function within(number: number, interval: Interval): boolean {
  return (
    (interval.from === undefined || number >= interval.from) &&
    (interval.above === undefined || number > interval.above) &&
    (interval.to === undefined || number <= interval.to) &&
    (interval.below === undefined || number < interval.below)
  )
}

/** Whether one cell holds for one fact: yes, no, or cannot tell. The engine's masks say the same for all rules at once. */
export function cellHolds(cell: Cell, fact: Fact | undefined): 'yes' | 'no' | 'open' {
  if (fact === undefined) return 'open'
  const may = fact.may === 'any' ? null : fact.may
  if ('interval' in cell) {
    if (fact.number === undefined) return 'open'
    return within(fact.number, cell.interval) ? 'yes' : 'no'
  }
  const set = 'any' in cell ? cell.any : cell.none
  const inside = fact.has.some((value) => set.includes(value))
  const surelyInside =
    inside || (fact.one === true && may !== null && may.every((value) => set.includes(value)))
  const perhapsInside = inside || may === null || may.some((value) => set.includes(value))
  const [sure, perhaps] = 'any' in cell ? [surelyInside, perhapsInside] : [!perhapsInside, !surelyInside]
  return sure ? 'yes' : perhaps ? 'open' : 'no'
}
