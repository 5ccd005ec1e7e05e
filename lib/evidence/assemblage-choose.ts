import { exchange } from './assemblage-exchange.ts'
import { chooseFirst } from './assemblage-first.ts'
import { pricesOf, type Prices } from './assemblage-prices.ts'
import {
  tableOf,
  worthOf,
  type AssemblageProblem,
  type Choice,
  type OptionTable,
} from './assemblage-problem.ts'
import { searchRest } from './assemblage-proof.ts'

export interface Chosen {
  readonly choice: Choice
  readonly worth: number
  /** No choice is worth more than this; the worth itself where that is proved. */
  readonly bound: number
  readonly proved: boolean
  /** What the next choice can start from. */
  readonly table: OptionTable
  readonly prices: Prices
}

const patience = 200_000
const patienceAgain = 20_000

/** The choice worth most, as near as can be found: by price, then by exchange, then by search through what is left open. */
export function choose(problem: AssemblageProblem): Chosen {
  const table = tableOf(problem)
  const { slots } = problem
  const rough = chooseFirst(table, slots, pricesOf(table, slots, null).each)
  const prices = pricesOf(table, slots, worthOf(table, rough))
  const first = exchange(table, slots, chooseFirst(table, slots, prices.each))
  const start = worthOf(table, first) >= worthOf(table, rough) ? first : exchange(table, slots, rough)
  return finished(table, slots, prices, start, patience)
}

/** The same finds with more slots: never worth less than before. */
export function chooseAgain(
  { table, prices, choice }: Chosen,
  before: readonly number[],
  slots: readonly number[],
): Chosen {
  // The bound holds at any prices: the further slots are bought at them.
  const bound = slots.reduce(
    (sum, more, method) => sum + prices.each[method]! * (more - before[method]!),
    prices.bound,
  )
  return finished(table, slots, { each: prices.each, bound }, exchange(table, slots, choice), patienceAgain)
}

function finished(
  table: OptionTable,
  slots: readonly number[],
  prices: Prices,
  start: Choice,
  patience: number,
): Chosen {
  const { choice, proved } = searchRest(table, slots, prices, start, patience)
  const worth = worthOf(table, choice)
  return { choice, worth, bound: proved ? worth : prices.bound, proved, table, prices }
}
