import type { Contact, Level, Rule } from '../knowledge.ts'
import { linkCells, type Domains } from './cells.ts'
import { linkEffect, type Head } from './effects.ts'
import type { Entry } from './entries.ts'
import { fillSentence } from './sentence.ts'
import { type rule, type Written } from './shapes.ts'
import { checkId, checkSources, mergedSources, unknownId, type Shelf } from './shelf.ts'

export type WrittenRule = Entry<Written<typeof rule>>

/** The rule with its figures, sources and ids joined; null where what it does cannot be read. */
export function linkRule(
  { written, place }: WrittenRule,
  head: Head,
  siblings: ReadonlySet<string>,
  domains: Domains,
  shelf: Shelf,
): Rule | null {
  const figures = new Set<string>()
  const fill = (key: 'title' | 'text' | 'because' | 'caution' | 'retired'): string | null => {
    const text = written[key]
    return text === undefined ? null : fillSentence(text, key, place(key), shelf, figures)
  }
  const when = linkCells(written.when, (...path) => place('when', ...path), domains, shelf, figures)
  const commanded = new Set<string>()
  const then = linkEffect(written.then, head, (...path) => place('then', ...path), shelf, commanded)
  checkCommanded(written, commanded, place, shelf)
  const [title, text, because, caution, retired] = [
    fill('title'),
    fill('text'),
    fill('because'),
    fill('caution'),
    fill('retired'),
  ]
  if (head.fills !== null && text === null) shelf.report.add('text-missing', place(), { rule: written.id })
  if (written.call !== undefined) checkId('contact', written.call, place('call'), shelf)
  if (written.contested !== undefined) checkId('contested', written.contested, place('contested'), shelf)
  checkSources(written.sources, (index) => place('sources', index), shelf)
  const overrides = written.overrides ?? []
  overrides.forEach((other, index) => {
    if (other === written.id) shelf.report.add('override-self', place('overrides', index), { rule: other })
    else if (!siblings.has(other)) unknownId('rule', other, siblings, place('overrides', index), shelf.report)
  })
  const level = linkLevel(written, head, place, shelf)
  if (then === null) return null
  const named = [...new Set([...figures, ...commanded])].toSorted()
  return {
    id: written.id,
    title: title ?? '',
    when,
    then,
    overrides: overrides.toSorted(),
    strength: written.strength,
    certainty: written.certainty,
    level,
    call: (written.call as Contact | undefined) ?? null,
    order: written.order ?? 0,
    text: text ?? '',
    because: because ?? '',
    caution,
    sources: mergedSources(written.sources, named, shelf),
    figures: named,
    contested: written.contested ?? null,
    retired,
    examples: written.examples ?? [],
  }
}

/** A number from memory may hold somebody back; nobody *must* keep to it, however well the rule around it is known. */
function checkCommanded(
  written: WrittenRule['written'],
  commanded: ReadonlySet<string>,
  place: WrittenRule['place'],
  shelf: Shelf,
): void {
  if (written.strength !== 'must') return
  for (const figure of commanded) {
    if (shelf.figures.get(figure)?.known !== 'memory') continue
    shelf.report.add('memory-figure-in-must', place('strength'), { rule: written.id, figure })
  }
}

/** Which levels the rules of a decision take: bands, cautions and objections each have their own; others none. */
function levelsOf(head: Head): readonly Level[] {
  switch (head.fills) {
    case 'storage.rh':
    case 'storage.temperature':
    case 'storage.interim':
      return ['limit', 'preference']
    case 'cautions':
      return ['stop', 'warn', 'note']
    case 'objections':
      return ['block', 'warn']
    default:
      return []
  }
}

function linkLevel(
  written: WrittenRule['written'],
  head: Head,
  place: WrittenRule['place'],
  shelf: Shelf,
): Level | null {
  const wants = levelsOf(head)
  if (wants.includes('limit') && written.level === undefined)
    return written.strength === 'must' ? 'limit' : 'preference'
  const fits =
    wants.length === 0
      ? written.level === undefined
      : written.level !== undefined && wants.includes(written.level)
  if (!fits) shelf.report.add('level-form', place('level'), { wants, found: written.level ?? null })
  return written.level ?? null
}
