/**
 * A fact as the engine reads it. *Absent is not false*: a fact that nobody looked at is a missing key; one that somebody
 * looked at in vain holds `unknown` and may be anything; a list whose end is open (`may: 'any'`) may hold more than it says.
 */
export interface Fact {
  /** Values that hold for certain. One at most for a single-valued fact; the word `unknown` where somebody could not tell. */
  readonly has: readonly string[]
  /** Values that may hold as well; `any`: every value of the fact's domain; empty: nothing else holds. */
  readonly may: readonly string[] | 'any'
  /** For a number fact: its value in the unit its name ends in. */
  readonly number?: number
  /** Exactly one of `may` holds: a decision whose answer is not settled yet. */
  readonly one?: true
  readonly said: 'stated' | 'unknown' | 'derived'
  /** Where it came from when not the field of the same name: `object: "musket shell"`, `radiograph`. */
  readonly from?: string
}

/** Facts by id; a missing key is an absent fact. */
export type Facts = Readonly<Record<string, Fact>>

export interface RecordFacts {
  readonly find: Facts
  readonly components: readonly { readonly name: string; readonly facts: Facts }[]
}

export const stated = (...values: readonly string[]): Fact => ({ has: values, may: [], said: 'stated' })
export const couldNotTell: Fact = { has: ['unknown'], may: 'any', said: 'unknown' }
export const measured = (number: number): Fact => ({ has: [], may: [], number, said: 'stated' })
