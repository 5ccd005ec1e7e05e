/**
 * Which finds to send to which analysis, as arithmetic. Setting up an instrument costs its own hours and nobody else's, and
 * each object then takes the same time: so hours are slots, and a find that goes to two methods takes one slot of each. Of
 * each find at most one option is taken; none may take more slots of a method than there are.
 */
export interface AssemblageProblem {
  /** By method. */
  readonly slots: readonly number[]
  readonly finds: readonly (readonly Option[])[]
}

/** A set of methods for one find; the first option of every find is to ask for nothing. */
export interface Option {
  /** Slots it takes, by method. */
  readonly uses: readonly number[]
  readonly worth: number
}

/** For each find the number of its option. */
export type Choice = Int32Array

/** Options of all finds in a row: they are gone through thousands of times. */
export interface OptionTable {
  readonly methods: number
  /** Where the options of each find begin, and where those of the last end. */
  readonly from: Int32Array
  readonly worth: Float64Array
  /** By option and method, the method running fastest. */
  readonly uses: Int32Array
}

export function tableOf({ slots, finds }: AssemblageProblem): OptionTable {
  const from = new Int32Array(finds.length + 1)
  finds.forEach((options, find) => (from[find + 1] = from[find]! + options.length))
  const all = finds.flat()
  return {
    methods: slots.length,
    from,
    worth: Float64Array.from(all, ({ worth }) => worth),
    uses: Int32Array.from(all.flatMap(({ uses }) => uses)),
  }
}

export function worthOf({ from, worth }: OptionTable, choice: Choice): number {
  let sum = 0
  for (let find = 0; find < choice.length; find++) sum += worth[from[find]! + choice[find]!]!
  return sum
}

export function usedBy({ from, uses, methods }: OptionTable, choice: Choice): Int32Array {
  const used = new Int32Array(methods)
  for (let find = 0; find < choice.length; find++) {
    const at = (from[find]! + choice[find]!) * methods
    for (let method = 0; method < methods; method++) used[method]! += uses[at + method]!
  }
  return used
}
