import type { IsoDate } from '../base/calendar.ts'
import type { Certainty, Contact, Known, Strength, Who } from '../knowledge/knowledge.ts'

/** The plan of the contract, key for key; what we add beside it is marked *ours*. */
export interface Statement {
  readonly code: string
  readonly text: string
  readonly strength: Strength
  readonly certainty: Certainty
  readonly rule: string
  readonly sources: readonly { readonly work: string; readonly place: string | null; readonly known: Known }[]
  /** Ours: why, in one or two sentences. */
  readonly because: string
  readonly caution?: string
  /** Ours: the components that called for it; empty when the whole find did. */
  readonly components: readonly string[]
  /** Ours: the facts the rule used, as the engine read them. */
  readonly facts: readonly UsedFact[]
  /** Ours: true where an absent fact was taken on its protective side. */
  readonly precautionary: boolean
  readonly figures: readonly string[]
  readonly contested?: string
  readonly also: readonly Statement[]
}

export interface UsedFact {
  readonly fact: string
  readonly component: string | null
  readonly said: 'stated' | 'unknown' | 'absent' | 'derived'
  readonly value: string
}

export interface Step extends Statement {
  readonly order: number
  readonly by: string
  readonly due: IsoDate | null
  readonly until: string | null
  readonly who: Who
}

export interface Caution extends Statement {
  readonly level: 'stop' | 'warn' | 'note'
  /** Whom to call, in words, with the site's own name and number where it is kept. */
  readonly who: string
  readonly call: Contact | null
}

export interface Objection extends Statement {
  readonly to: string
  readonly level: 'block' | 'warn'
}

export interface Band {
  readonly min: number
  readonly max: number
}

/** Ours: one component's limits and preferences before they are reconciled; what the humidity ruler draws. */
export interface ComponentBand {
  readonly component: string
  readonly limit: Band
  readonly preference: Band | null
  readonly basis: readonly Statement[]
}

export interface Act {
  readonly aboveRhPercent?: number
  readonly belowRhPercent?: number
  /** In words, from the rule: "today", "within 7 days". */
  readonly within: string
  readonly withinDays: number
  readonly says: Statement
}

export interface Conflict {
  readonly between: readonly string[]
  readonly gapPercent: number
  readonly waysOut: readonly Statement[]
}

export interface Storage {
  readonly rhPercent: Band | null
  readonly interim: {
    readonly rhPercent: Band
    readonly checkEveryDays: number
    readonly says: Statement
  } | null
  readonly act: readonly Act[]
  readonly light: 'dark' | 'ordinary'
  readonly air: readonly string[]
  readonly decidedBy: 'rule' | 'conservator'
  readonly precautionary: boolean
  readonly temperatureC: { readonly min: number | null; readonly max: number | null }
  readonly conflict: Conflict | null
  readonly keep: 'dry' | 'wet' | 'as-found'
  readonly components: readonly ComponentBand[]
  readonly basis: readonly Statement[]
}

export type Urgency = 'now' | 'hours' | 'days' | 'weeks' | 'planned' | 'routine'

/** One explanation of something seen; those of one matter on one component sum to one. */
export interface Interpretation {
  readonly component: string
  /** The observation it explains. */
  readonly about: string
  readonly interpretation: string
  readonly probability: number
  /** From the tenth to the ninetieth percentile over all plausible numbers for the words of the evidence base. */
  readonly range: readonly [low: number, high: number]
  /** Ours: the matter of the evidence base, and what the explanation says. */
  readonly matter: string
  readonly says: string
  /** Ours: how far the matter is decided, with all its explanations in view. */
  readonly standing: Standing
  readonly for: readonly Leaning[]
  readonly against: readonly Leaning[]
}

/** `settled`: somebody decided it, or hardly anything else is left; `open`: cannot be told apart yet. */
export type Standing = 'settled' | 'probable' | 'likelier' | 'open'

/** What was seen or measured and speaks for an explanation, or against it. */
export interface Leaning {
  readonly group: string
  readonly says: string
  readonly strength: 'strong' | 'clear' | 'slight'
  readonly sources: Statement['sources']
}

export interface Request {
  readonly method: string
  readonly question: string
  readonly rank: number
  /** Bits that it is expected to settle, over all matters of its components; null where no matter hangs on it. */
  readonly gainBits: number | null
  readonly sampling: boolean
  readonly who: string
  readonly cautions: readonly string[]
  readonly components: readonly string[]
  readonly basis: readonly Statement[]
  /** Ours: what each answer would mean, and what would change in the plan; empty where no matter hangs on it. */
  readonly means: readonly Meaning[]
  /** Ours: how it can mislead here. */
  readonly misleads: readonly { readonly says: string; readonly sources: Statement['sources'] }[]
  /** Ours: a sample that would tell much more than any look: first, but only if a conservator agrees. */
  readonly ifConservatorAgrees: boolean
}

/** One answer of an analysis: what it would say, which explanation would then lead, and what the plan would do about it. */
export interface Meaning {
  readonly component: string
  readonly matter: string
  /** The group of the matter that it would be an answer in. */
  readonly group: string
  readonly outcome: string
  readonly chance: number
  readonly interpretation: string
  readonly probability: number
  /** How far the matter would then be decided. */
  readonly standing: Standing
  readonly changes: readonly PlanChange[]
}

/** One thing that a plan would say and does not say now. */
export interface PlanChange {
  readonly part:
    | 'keep'
    | 'storage'
    | 'urgency'
    | 'cautions'
    | 'objections'
    | 'handling'
    | 'packing'
    | 'referrals'
  readonly code: string
  readonly text: string
  /** For `storage`: the band it would be kept at; null where there would be none. */
  readonly rhPercent?: Band | null
}

export interface LookNext {
  readonly fact: string
  readonly why: string
  readonly wouldSettle: readonly string[]
  /** Ours: the question in plain words, how to look, and the answers that would change something here. */
  readonly asks: string
  readonly tell: string
  readonly answers: readonly string[]
}

export interface Plan {
  readonly find: string
  readonly knowledge: string
  readonly asOf: IsoDate
  readonly urgency: Urgency
  readonly urgencyBasis: readonly Statement[]
  readonly storage: Storage
  readonly steps: readonly Step[]
  readonly inspection: {
    readonly everyDays: number
    readonly nextOn: IsoDate
    readonly look: string
    readonly basis: readonly Statement[]
  }
  readonly handling: readonly Statement[]
  readonly packing: readonly Statement[]
  readonly cautions: readonly Caution[]
  readonly objections: readonly Objection[]
  readonly interpretations: readonly Interpretation[]
  readonly requests: readonly Request[]
  readonly lookNext: readonly LookNext[]
  readonly referrals: readonly Statement[]
  /** Ours: what selection and discard must wait for. */
  readonly selection: readonly Statement[]
  readonly notCovered: readonly { readonly what: string; readonly because: string }[]
}

/** A site's own people, printed with every "who to call". */
export type Contacts = Partial<Readonly<Record<Contact, { readonly name: string; readonly reach: string }>>>
