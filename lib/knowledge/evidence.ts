import type { Cell, SourceRef } from './knowledge.ts'

/**
 * The evidence base as plain data: what may be seen, the rival explanations of it, and how well each thing that can be
 * looked at or measured fits each of them. Words, not numbers: `lib/evidence/grades.ts` alone turns words into numbers.
 */

/** How often a thing is so where an explanation is the true one. */
export type Grade = 'typical' | 'frequent' | 'occasional' | 'rare' | 'excluded'

/** How common an explanation is before anybody has looked closer. */
export type Odds = 'usual' | 'common' | 'uncommon' | 'seldom' | 'exceptional'

/** Something a person can be asked to look at, or a laboratory to report, with the answers it can have. */
export interface Question {
  readonly id: string
  /** In plain words, to somebody who holds the find. */
  readonly asks: string
  /** How to look. */
  readonly tell: string
  /** Why the answer matters, in one sentence. */
  readonly why: string
  /** `eye`: whoever holds the find, with a lens at most; otherwise the method that answers it. */
  readonly by: string
  /** Beside them `none` (none of these) and `unknown` (cannot tell) are always answers. */
  readonly answers: readonly { readonly id: string; readonly label: string; readonly tell: string }[]
}

/** One thing to explain: the observations that raise it, and the explanations that compete. */
export interface Matter {
  readonly id: string
  readonly asks: string
  /** Observations that raise it, the one that names it first. */
  readonly about: readonly { readonly field: 'evidence' | 'seen'; readonly value: string }[]
  /** Further conditions; it is not raised where one of them is surely not so. */
  readonly where: readonly Cell[]
  readonly rivals: readonly Rival[]
  readonly groups: readonly Group[]
  readonly contested: string | null
}

export interface Rival {
  /** The code of the interpretation. */
  readonly id: string
  /** What it is and why it looks like this, in one plain sentence. */
  readonly says: string
  /** The first whose cells all hold counts; the last has none. */
  readonly priors: readonly Prior[]
  /** What a record would state if this were settled; null where it would state nothing that it does not state now. */
  readonly settled: Settled | null
}

export interface Prior {
  readonly when: readonly Cell[]
  readonly odds: Odds
  readonly because: string
  readonly sources: readonly SourceRef[]
  readonly figures: readonly string[]
}

/** A part to add, and observations and tests to add to the part itself. */
export interface Settled {
  readonly part: { readonly role: string; readonly material: string } | null
  readonly seen: readonly string[]
  readonly tests: readonly string[]
}

/**
 * Features with one cause: exactly one state holds, the first whose cells hold, so that nothing counts twice. Not looked
 * at, or looked at in vain, changes nothing.
 */
export interface Group {
  readonly id: string
  /** In a line, for tables: "How the skin ends". */
  readonly label: string
  /** The method that answers it; `eye`: whoever holds the find; `record`: stands in the record anyway. */
  readonly by: string
  /** The question whose answers its states are; null where it is read from other facts. */
  readonly question: string | null
  /** The group of this matter that another method measures the same thing for: states of one id tell the same once. */
  readonly sameCauseAs: string | null
  readonly states: readonly State[]
  /** It was looked at or measured, and no state holds. */
  readonly rest: { readonly says: string; readonly fits: Fits }
  readonly failures: readonly Failure[]
}

/** A grade for each rival of the matter. */
export type Fits = Readonly<Record<string, Grade>>

export interface State {
  readonly id: string
  /** As a clause: "it ends in a sharp edge". */
  readonly says: string
  readonly when: readonly Cell[]
  readonly fits: Fits
  readonly sources: readonly SourceRef[]
  readonly figures: readonly string[]
}

/** A way for a method to go wrong: it then shows `as` whatever the truth. */
export interface Failure {
  readonly id: string
  readonly says: string
  /** Only where these may hold. */
  readonly when: readonly Cell[]
  /** The rivals it befalls; null: any. */
  readonly of: readonly string[] | null
  /** The state it shows then, or `rest`. */
  readonly as: string
  readonly how: { readonly grade: Grade } | { readonly depth: Depth }
  readonly sources: readonly SourceRef[]
  readonly figures: readonly string[]
}

/** The line must come out through a crust of a thickness nobody knows better than between two figures [µm]. */
export interface Depth {
  /** As `Ag Ka1`. */
  readonly line: string
  /** A matrix of content/elements: `malachite`. */
  readonly through: string
  readonly crustUm: readonly [from: number, to: number]
}

/** One element's published X-ray data. */
export interface Element {
  /** The symbol in lower case: `cu`. */
  readonly id: string
  readonly symbol: string
  readonly label: string
  readonly densityGPerCm3: number
  /** Emission lines [keV] by name: `Ka1`, `Kb1`, `La1`, `Lb1`, `Ma`. */
  readonly linesKev: Readonly<Record<string, number>>
  /** Absorption edges [keV] by name: `K`, `L3`. */
  readonly edgesKev: Readonly<Record<string, number>>
  /** Energy [keV] and mass attenuation coefficient [cm²/g], rising in energy; an edge stands twice, below and above. */
  readonly attenuation: readonly (readonly [energyKev: number, cm2PerG: number])[]
  readonly sources: readonly SourceRef[]
}

/** A substance by mass fractions of elements. */
export interface Matrix {
  readonly id: string
  readonly label: string
  readonly densityGPerCm3: number
  /** Symbols and mass fractions; they sum to one. */
  readonly parts: readonly (readonly [symbol: string, massFraction: number])[]
  readonly sources: readonly SourceRef[]
}
