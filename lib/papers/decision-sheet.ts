import type { Cell, Decision, Knowledge, Rule } from '../knowledge/knowledge.ts'
import { shortCitation } from '../wording/citation.ts'
import { codeLabel, fieldLabel } from '../wording/fact.ts'
import { certaintyWords, knownWords, strengthWords } from '../wording/marks.ts'
import { absentWords, cellWords, effectWords, policyWords } from '../wording/rule.ts'

/** A decision as a conservator reviews it: every rule in words, ready to be read, marked and initialled. */
export interface DecisionSheet {
  readonly decision: string
  readonly asks: string
  /** How it decides, in sentences. */
  readonly manner: readonly string[]
  /** Strictest first; empty for a decision that collects or gives a number. */
  readonly answers: readonly string[]
  readonly rules: readonly SheetRule[]
  readonly notCovered: readonly {
    readonly when: string
    readonly what: string
    readonly because: string
    /** Knowingly silent: no plan says it. */
    readonly quiet: boolean
  }[]
  readonly contested: readonly {
    readonly question: string
    readonly follows: string
    readonly because: string
  }[]
  readonly knowledge: string
}

export interface SheetRule {
  readonly rule: string
  readonly title: string
  readonly when: string
  readonly gives: string
  readonly level: string | null
  readonly strength: string
  readonly certainty: string
  readonly advice: string
  readonly because: string
  readonly caution: string | null
  readonly call: string | null
  readonly silences: readonly string[]
  readonly sources: readonly {
    readonly work: string
    readonly place: string | null
    readonly known: string
    readonly against: boolean
  }[]
  readonly contested: string | null
  readonly retired: string | null
}

export function decisionSheet(decision: Decision, knowledge: Knowledge): DecisionSheet {
  const each = `Asked of each ${decision.each === 'component' ? 'part' : 'find'}.`
  const disputed = new Set(decision.rules.flatMap(({ contested }) => contested ?? []))
  return {
    decision: decision.id,
    asks: decision.asks,
    manner: [each, policyWords[decision.policy], absentWords[decision.absent]],
    answers:
      decision.policy === 'collect' ? [] : decision.answers.map((answer) => codeLabel(answer, knowledge)),
    rules: decision.rules.map((rule) => sheetRule(rule, decision, knowledge)),
    notCovered: decision.notCovered.map(({ when, what, because, quiet = false }) => ({
      when: cellsWords(when, knowledge),
      what,
      because,
      quiet,
    })),
    contested: [...disputed].toSorted().flatMap((id) => {
      const matter = knowledge.contested[id]
      return matter === undefined
        ? []
        : [{ question: matter.question, follows: matter.follows, because: matter.because }]
    }),
    knowledge: knowledge.hash,
  }
}

function sheetRule(rule: Rule, decision: Decision, knowledge: Knowledge): SheetRule {
  const { call, contested } = rule
  return {
    rule: rule.id,
    title: rule.title,
    when: cellsWords(rule.when, knowledge),
    gives: effectWords(rule.then, decision, knowledge),
    level: rule.level,
    strength: strengthWords[rule.strength],
    certainty: certaintyWords[rule.certainty],
    advice: rule.text,
    because: rule.because,
    caution: rule.caution,
    call: call === null ? null : (knowledge.vocabulary.contacts[call]?.label ?? call),
    silences: rule.overrides.map((id) => decision.rules.find((other) => other.id === id)?.title ?? id),
    sources: rule.sources.map(({ work, place, known, says }) => ({
      work: citationOf(work, knowledge),
      place,
      known: knownWords[known].label,
      against: says === 'against',
    })),
    contested: contested === null ? null : (knowledge.contested[contested]?.question ?? contested),
    retired: rule.retired,
  }
}

function citationOf(id: string, knowledge: Knowledge): string {
  const work = knowledge.works[id]
  return work === undefined ? id : shortCitation(work)
}

function cellsWords(cells: readonly Cell[], knowledge: Knowledge): string {
  if (cells.length === 0) return 'always'
  return cells.map((cell) => `${fieldLabel(cell.fact, knowledge)}: ${cellWords(cell, knowledge)}`).join('; ')
}
