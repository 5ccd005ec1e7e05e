import { decisionDomain, recordDomains } from '../domains.ts'
import type { Place } from '../flaw.ts'
import type { Decision } from '../knowledge.ts'
import { linkCells, type Domains } from './cells.ts'
import type { ContentDocument } from './document.ts'
import type { Head } from './effects.ts'
import { shaped, shapedEach, type Entry, type Report } from './entries.ts'
import { linkRule, type WrittenRule } from './rules.ts'
import { fillSentence } from './sentence.ts'
import * as shapes from './shapes.ts'
import { checkId, unknownId, type Shelf } from './shelf.ts'

/** A decision as written: its head and those of its rules that can be read. */
export interface WrittenDecision {
  readonly head: Entry<shapes.Written<typeof shapes.decision>>
  readonly rules: readonly WrittenRule[]
  readonly notCovered: readonly Entry<shapes.Written<typeof shapes.notCovered>>[]
}

export function readDecision(document: ContentDocument, report: Report): WrittenDecision | null {
  const head = shaped(document, [], document.data, shapes.decision, report)
  if (head === null) return null
  const expected = /([^/]+)\.yaml$/.exec(document.file)?.[1] ?? ''
  if (expected !== head.written.decision) {
    report.add('file-name', head.place('decision'), { decision: head.written.decision, expected })
  }
  const rules = shapedEach(document, ['rules'], head.written.rules, shapes.rule, report)
  const seen = new Map<string, Place>()
  for (const rule of rules) {
    const first = seen.get(rule.written.id)
    if (first === undefined) seen.set(rule.written.id, rule.place('id'))
    else
      report.add('duplicate', rule.place('id'), {
        kind: 'rule',
        id: rule.written.id,
        first: `${first.file}:${first.line}`,
      })
  }
  const gaps = head.written['not-covered'] ?? []
  const notCovered = shapedEach(document, ['not-covered'], gaps, shapes.notCovered, report)
  return { head, rules, notCovered }
}

export function headOf({ head, rules }: WrittenDecision): Head {
  const { written } = head
  const codes = rules.flatMap((rule) => rule.written.then.say ?? [])
  return {
    id: written.decision,
    each: written.each,
    policy: written.policy,
    fills: written.fills ?? null,
    answers: written.policy === 'collect' ? [...new Set(codes)].toSorted() : (written.answers ?? []),
  }
}

export function domainsOf(heads: readonly Head[]): Domains {
  const answered = heads.flatMap((head) => {
    const domain = decisionDomain(head)
    return domain === null ? [] : [[head.id, domain] as const]
  })
  return new Map([...Object.entries(recordDomains), ...answered])
}

export function linkDecision(decision: WrittenDecision, domains: Domains, shelf: Shelf): Decision {
  const { written, place } = decision.head
  const head = headOf(decision)
  const siblings = new Set(decision.rules.map((rule) => rule.written.id))
  checkFacts(written.facts, 'facts', decision, domains, shelf)
  checkFacts(written['called-for-by'] ?? [], 'called-for-by', decision, domains, shelf)
  written.answers?.forEach((answer, index) => checkId('code', answer, place('answers', index), shelf))
  const sentence = (text: string, key: string): string =>
    fillSentence(text, key, place(key), shelf, new Set())
  return {
    ...head,
    asks: sentence(written.asks, 'asks'),
    absent: written.absent,
    calledForBy: (written['called-for-by'] ?? []).toSorted(),
    facts: [...new Set(written.facts)].toSorted(),
    rules: decision.rules
      .flatMap((rule) => linkRule(rule, head, siblings, domains, shelf) ?? [])
      .toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    notCovered: decision.notCovered.map((entry) => ({
      when: linkCells(
        entry.written.when,
        (...path) => entry.place('when', ...path),
        domains,
        shelf,
        new Set(),
      ),
      what: fillSentence(entry.written.what, 'what', entry.place('what'), shelf, new Set()),
      because: fillSentence(entry.written.because, 'because', entry.place('because'), shelf, new Set()),
      ...(entry.written.quiet ? { quiet: true as const } : {}),
    })),
  }
}

function checkFacts(
  facts: readonly string[],
  key: 'facts' | 'called-for-by',
  { head }: WrittenDecision,
  domains: Domains,
  shelf: Shelf,
): void {
  facts.forEach((fact, index) => {
    if (!domains.has(fact)) unknownId('fact', fact, domains.keys(), head.place(key, index), shelf.report)
  })
}
