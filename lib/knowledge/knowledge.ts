import type { Element, Matrix, Matter, Question } from './evidence.ts'

/**
 * The compiled knowledge: what content/*.yaml says, checked and linked, as plain data that any runtime can load.
 * `lib/knowledge/compile` makes it; nothing else does. Sentences arrive here with their figures already filled in.
 */
export type Known = 'read' | 'second-hand' | 'memory' | 'common-practice'
export type Certainty = 'established' | 'supported' | 'contested' | 'opinion'
export type Strength = 'must' | 'should' | 'consider'

/** A publication, or the two standing entries `common-practice` and `house-rule` (ours, and said so). */
export interface Work {
  readonly id: string
  readonly authors: readonly string[]
  readonly year: number | null
  readonly title: string
  readonly in?: string
  readonly doi?: string
  readonly address?: string
  readonly known: Known
  readonly note?: string
}

export interface SourceRef {
  readonly work: string
  readonly place: string | null
  readonly known: Known
  readonly says: 'supports' | 'against'
}

/** A published number that never travels alone. */
export interface Figure {
  readonly id: string
  readonly says: string
  readonly quantity: string
  readonly value: number
  readonly asPrinted: string
  readonly unit: string
  readonly validFor: string
  readonly source: { readonly work: string; readonly place: string | null }
  readonly known: Known
  readonly certainty: Certainty
  /** Why it is here though no rule uses it yet. */
  readonly kept?: string
}

/** One condition: a fact is in a set, outside a set, or in an interval. Cells of a rule are joined by *and*. */
export type Cell =
  | { readonly fact: string; readonly any: readonly string[] }
  | { readonly fact: string; readonly none: readonly string[] }
  | { readonly fact: string; readonly interval: Interval }

/** Half-open unless said: `from` ≤ x < `below`; `above` < x ≤ `to`. Ends name figures. */
export interface Interval {
  readonly from?: number
  readonly above?: number
  readonly to?: number
  readonly below?: number
  readonly figures: readonly string[]
}

export type Who = 'assistant' | 'conservator' | 'store-manager'

/** Whom a caution, request or referral sends you to; the site keeps names and numbers for these. */
export type Contact =
  | 'conservator'
  | 'site-manager'
  | 'police'
  | 'radiation-adviser'
  | 'asbestos-assessor'
  | 'coroner'
  | 'finds-officer'
  | 'store'
  | 'safety-adviser'
  | 'first-aider'
  | 'specialist'
  | 'laboratory'

export type Effect =
  | { readonly kind: 'answer'; readonly answer: string }
  | { readonly kind: 'band'; readonly from?: number; readonly to?: number; readonly checkEveryDays?: number }
  | { readonly kind: 'every'; readonly days: number; readonly look: string }
  | {
      readonly kind: 'say'
      readonly code: string
      readonly to?: string
      readonly step?: StepEffect
      readonly request?: RequestEffect
      readonly act?: ActEffect
    }

export interface StepEffect {
  readonly who: Who
  /** By when, in words: "today", "within 3 days". */
  readonly by: string
  /** Days [d] from the day of planning; null where no day can be named. */
  readonly withinDays: number | null
  /** What ends it: "it stops losing mass". */
  readonly until: string | null
}

export interface RequestEffect {
  readonly method: string
  readonly question: string
}

export interface ActEffect {
  readonly aboveRhPercent?: number
  readonly belowRhPercent?: number
  readonly withinDays: number
}

/** stop and warn are never folded; block and warn are for objections; limit and preference for bands. */
export type Level = 'stop' | 'warn' | 'note' | 'block' | 'limit' | 'preference'

export interface Rule {
  readonly id: string
  readonly title: string
  readonly when: readonly Cell[]
  readonly then: Effect
  /** Rules of the same decision that fall silent where this one holds. */
  readonly overrides: readonly string[]
  readonly strength: Strength
  readonly certainty: Certainty
  readonly level: Level | null
  readonly call: Contact | null
  /** Layout only: lower stands first among equals. */
  readonly order: number
  /** What to do, as the plan prints it. Empty for rules of an intermediate decision. */
  readonly text: string
  readonly because: string
  readonly caution: string | null
  readonly sources: readonly SourceRef[]
  readonly figures: readonly string[]
  readonly contested: string | null
  readonly retired: string | null
  readonly examples: readonly Example[]
}

export interface Example {
  readonly given: Readonly<Record<string, string | number | readonly string[]>>
  readonly gives: unknown
}

/** Which part of the plan a decision fills; null for one that only serves others. */
export type Fills =
  | 'storage.rh'
  | 'storage.keep'
  | 'storage.temperature'
  | 'storage.light'
  | 'storage.air'
  | 'storage.act'
  | 'storage.interim'
  | 'storage.ways-out'
  | 'handling'
  | 'packing'
  | 'steps'
  | 'urgency'
  | 'inspection'
  | 'cautions'
  | 'objections'
  | 'requests'
  | 'referrals'
  | 'selection'

export interface NotCovered {
  readonly when: readonly Cell[]
  readonly what: string
  readonly because: string
  /** Knowingly silent, since another part of the plan speaks or nothing more need be said: for review and proofs, never in a plan. */
  readonly quiet?: true
}

export interface Decision {
  readonly id: string
  readonly asks: string
  readonly each: 'component' | 'find'
  /** unique: one answer; strictest: the first of `answers` that holds (bands: the narrowest); collect: all that hold. */
  readonly policy: 'unique' | 'strictest' | 'collect'
  readonly fills: Fills | null
  /** For a value decision, strictest first; for a collecting one, the codes it may say. */
  readonly answers: readonly string[]
  /**
   * protective: a rule that cannot be told to hold or not is taken to hold, and the plan says so.
   * silent: only what is recorded (or already decided) speaks.
   */
  readonly absent: 'protective' | 'silent'
  /** Facts that must be recorded before a protective rule speaks at all (an objection needs a proposal). */
  readonly calledForBy: readonly string[]
  readonly facts: readonly string[]
  readonly rules: readonly Rule[]
  readonly notCovered: readonly NotCovered[]
}

export interface Unit {
  readonly id: string
  readonly label: string
  /** As it stands after a number; empty where nothing does. */
  readonly printed: string
  /** After a single one, where that differs. */
  readonly one?: string
}

/** Words for one id: a field of the record, a value of it, a code or a unit. */
export interface Word {
  readonly id: string
  readonly label: string
  readonly means: string
  /** How to tell it, in plain words; for fields: how to look. */
  readonly tell: string
  /** Look-alikes it is confused with (ids of the same field). */
  readonly confusedWith?: readonly string[]
}

export interface FieldWords extends Word {
  /** The question *Look next* asks. */
  readonly asks: string
  /** Asked by *Look next* at all (a person can look and answer). */
  readonly lookable: boolean
  /** Seldom answered but in one way, or not by looking alone: asked after the others, so that nobody is nagged about grenades. */
  readonly seldom?: boolean
  /** Why the answer matters, in one sentence; printed with the question. */
  readonly why?: string
  readonly values: readonly Word[]
  /** Column headings that mean this field beside its id and label. */
  readonly alsoCalled: readonly string[]
}

/** A word in free text that must not be overlooked: "grenade" → ammunition-like; "padlock" → object kind. */
export interface TextWord {
  /** Matched as whole words, case and accents folded. */
  readonly words: readonly string[]
  readonly not: readonly string[]
  readonly hazard?: string
  readonly objectKind?: string
}

/** What a method does to the object, least first. */
export type Harm = 'none' | 'touches' | 'loose-powder' | 'micro-sample' | 'cut'

/** Minutes [min] that a method takes; the figures say how they are known. */
export interface MethodMinutes {
  /** Once a session: a plate laid out, an instrument warmed up. */
  readonly setUp: number
  /** For each object after that. */
  readonly each: number
  readonly figures: readonly string[]
  /** As the weaker of the two figures is known. */
  readonly known: Known
}

export interface Method {
  readonly id: string
  readonly label: string
  readonly answers: string
  readonly cannot: string
  /** Dating comes before whatever would spoil it; looking and imaging before analysis. */
  readonly kind: 'dating' | 'looking' | 'imaging' | 'analysis'
  readonly sampling: boolean
  readonly harm: Harm
  /** Needs the owner's written leave. */
  readonly leave: boolean
  readonly minutes: MethodMinutes
  readonly who: string
  readonly order: number
  readonly cautions: readonly {
    readonly code: string
    readonly text: string
    readonly sources: readonly SourceRef[]
  }[]
  readonly sources: readonly SourceRef[]
}

/** Something a person does in the store, and what to beware of at it. */
export interface Task {
  readonly id: string
  readonly label: string
  readonly cautions: readonly TaskCaution[]
}

export interface TaskCaution {
  readonly code: string
  readonly text: string
  readonly level: 'stop' | 'warn' | 'note'
  readonly sources: readonly SourceRef[]
  /** Where sources disagree: an id of the contested matters. */
  readonly contested: string | null
}

/** One branch of a sorption isotherm as somebody measured it. */
export interface MeasuredIsotherm {
  readonly id: string
  readonly label: string
  readonly branch: 'adsorption' | 'desorption'
  readonly temperatureC: number
  /** Vapour pressure [Pa] and water [g per kg of dry gel], both rising. */
  readonly points: readonly (readonly [pressurePa: number, waterGPerKg: number])[]
  readonly source: { readonly work: string; readonly place: string | null }
  readonly known: Known
  readonly note: string
}

export interface Contested {
  readonly id: string
  readonly question: string
  readonly sides: readonly {
    readonly says: string
    readonly figures: readonly string[]
    readonly sources: readonly SourceRef[]
  }[]
  readonly follows: string
  readonly because: string
}

export interface Vocabulary {
  readonly fields: Readonly<Record<string, FieldWords>>
  readonly codes: Readonly<Record<string, Word>>
  readonly units: Readonly<Record<string, Unit>>
  readonly textWords: readonly TextWord[]
  readonly contacts: Readonly<Record<string, Word>>
}

export interface Knowledge {
  /** `sha256…` of the canonical content; stored with every plan. */
  readonly hash: string
  readonly works: Readonly<Record<string, Work>>
  readonly figures: Readonly<Record<string, Figure>>
  /** In dependency order: each reads only record facts and decisions before it. */
  readonly decisions: readonly Decision[]
  readonly methods: Readonly<Record<string, Method>>
  readonly contested: Readonly<Record<string, Contested>>
  readonly tasks: Readonly<Record<string, Task>>
  readonly isotherms: Readonly<Record<string, MeasuredIsotherm>>
  readonly vocabulary: Vocabulary
  readonly matters: Readonly<Record<string, Matter>>
  readonly questions: Readonly<Record<string, Question>>
  readonly elements: Readonly<Record<string, Element>>
  readonly matrices: Readonly<Record<string, Matrix>>
}
