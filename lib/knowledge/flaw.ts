/** A flaw of the content, as data; `lib/wording/flaws.ts` has the sentences. What each kind is about stands here once. */
export interface FlawAbout {
  unreadable: { readonly says: string }
  'unknown-key': { readonly key: string; readonly near: string | null }
  'missing-key': { readonly key: string; readonly expected: string }
  'wrong-form': { readonly key: string; readonly expected: string; readonly found: string }
  'file-name': { readonly decision: string; readonly expected: string }
  'matter-file': { readonly matter: string; readonly expected: string }
  'out-of-place': { readonly folder: string }
  duplicate: { readonly kind: Kind; readonly id: string; readonly first: string }
  'unknown-id': { readonly kind: Kind; readonly id: string; readonly near: string | null }
  'unknown-value': { readonly fact: string; readonly value: string; readonly near: string | null }
  'cell-kind': { readonly fact: string; readonly wants: 'values' | 'interval' }
  'interval-ends': { readonly fact: string }
  'wrong-unit': { readonly figure: string; readonly unit: string; readonly wants: readonly string[] }
  'empty-range': { readonly from: number; readonly to: number }
  digits: { readonly key: string; readonly digits: string }
  'stray-brace': { readonly key: string; readonly found: string }
  'then-form': { readonly decision: string; readonly wants: string; readonly found: string }
  'level-form': { readonly wants: readonly string[]; readonly found: string | null }
  'known-better': {
    readonly work: string
    readonly known: string
    readonly claimed: string
  }
  'standing-place': { readonly work: string }
  'override-self': { readonly rule: string }
  cycle: { readonly ids: readonly string[] }
  'text-missing': { readonly rule: string }
  'too-many-facts': { readonly decision: string; readonly count: number; readonly most: number }
  'fact-unread': { readonly decision: string; readonly fact: string }
  'fact-undeclared': { readonly decision: string; readonly rule: string; readonly fact: string }
  'field-without-words': { readonly field: string }
  'words-without-field': { readonly field: string }
  'value-without-words': { readonly field: string; readonly value: string }
  'words-without-value': { readonly field: string; readonly value: string }
  'words-without-code': { readonly code: string }
  'without-source': { readonly rule: string }
  'memory-behind-must': { readonly rule: string }
  'memory-behind-stop': { readonly task: string }
  'memory-figure-in-must': { readonly rule: string; readonly figure: string }
  'memory-relaxes': { readonly rule: string; readonly overrides: string }
  'figure-unused': { readonly figure: string }
  'work-unused': { readonly work: string }
  'without-example': { readonly rule: string }
  'example-fails': { readonly rule: string; readonly expected: string; readonly got: string }
  'example-fact': { readonly rule: string; readonly fact: string }
  'fixed-answers': {
    readonly decision: string
    readonly wants: readonly string[]
    readonly found: readonly string[]
  }
  'answer-never-given': { readonly decision: string; readonly answer: string }
  'stop-not-silent': { readonly decision: string }
  'objection-uncalled': { readonly decision: string }
  'stop-unread': { readonly code: string }
  gap: {
    readonly decision: string
    readonly facts: readonly (readonly [string, string])[]
    readonly more: number
  }
  'gap-too-wide': { readonly decision: string; readonly cells: number }
  uncovered: { readonly decision: string; readonly fact: string; readonly value: string }
  conflict: {
    readonly decision: string
    readonly rules: readonly [string, string]
    readonly facts: readonly (readonly [string, string])[]
  }
  'never-holds': { readonly rule: string; readonly fact: string }
  'always-overridden': { readonly rule: string; readonly by: readonly string[] }
  'harm-differs': { readonly method: string; readonly harm: string; readonly key: 'sampling' | 'leave' }
  'one-of': { readonly wants: readonly string[]; readonly found: readonly string[] }
  'grade-missing': { readonly at: string; readonly rival: string }
  'prior-order': { readonly rival: string; readonly last: boolean }
  'prior-covered': { readonly rival: string; readonly at: number }
  'state-when': { readonly state: string; readonly question: string | null }
  'state-covered': { readonly state: string; readonly by: string }
  'state-unmeasured': { readonly state: string; readonly by: string; readonly wants: readonly string[] }
  'by-differs': {
    readonly group: string
    readonly by: string
    readonly question: string
    readonly of: string
  }
  'same-cause': {
    readonly group: string
    readonly as: string
    readonly wrong: 'paired' | 'one-method' | 'nothing-shared'
  }
  'standing-answer': { readonly answer: string }
  'grade-without-source': { readonly of: string }
  'memory-rules-out': { readonly state: string; readonly rival: string }
  'negative-clears': { readonly state: string; readonly rival: string; readonly grade: string }
  'evidence-unexplained': { readonly evidence: string }
  'counted-twice': {
    readonly matter: string
    readonly fact: string
    readonly first: string
    readonly second: string
  }
  'group-tells-nothing': { readonly group: string }
  'rivals-alike': { readonly matter: string; readonly rivals: readonly [string, string] }
  'matter-size': {
    readonly matter: string
    readonly part: 'rivals' | 'groups'
    readonly count: number
    readonly least: number
    readonly most: number
  }
  'question-unused': { readonly question: string }
  'answer-unread': { readonly question: string; readonly answer: string }
  'looks-differ': {
    readonly question: string
    readonly answer: string | null
    readonly missing: 'record' | 'content'
  }
  'energies-fall': { readonly element: string; readonly from: number; readonly to: number }
  'fractions-sum': { readonly matrix: string; readonly sum: number }
}

export type Kind =
  | 'work'
  | 'figure'
  | 'decision'
  | 'rule'
  | 'fact'
  | 'code'
  | 'answer'
  | 'unit'
  | 'contact'
  | 'contested'
  | 'method'
  | 'task'
  | 'isotherm'
  | 'field'
  | 'value'
  | 'hazard'
  | 'object-kind'
  | 'treatment'
  | 'matter'
  | 'rival'
  | 'group'
  | 'state'
  | 'failure'
  | 'question'
  | 'question-answer'
  | 'element'
  | 'line'
  | 'matrix'
  | 'role'
  | 'material'
  | 'observation'
  | 'test'

export type FlawCode = keyof FlawAbout
export type Severity = 'error' | 'warning'

/** Where a thing stands in the content. */
export interface Place {
  readonly file: string
  readonly line: number
}

export type Flaw = {
  readonly [Code in FlawCode]: Place & {
    readonly code: Code
    readonly severity: Severity
    readonly about: FlawAbout[Code]
  }
}[FlawCode]

/** What a proof over compiled knowledge finds: a flaw that knows what it is about, not yet where that stands. */
export type Finding = {
  readonly [Code in FlawCode]: {
    readonly code: Code
    readonly severity: Severity
    /** Key of the compiler's places: `rule storage-humidity/iron-active`. */
    readonly at: string
    readonly about: FlawAbout[Code]
  }
}[FlawCode]
