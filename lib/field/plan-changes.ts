import type { Band, Plan, PlanChange, Statement } from '../engine/plan.ts'

const bandOf = ({ storage }: Plan): Band | null => (storage.keep === 'wet' ? null : storage.rhPercent)

const sameBand = (a: Band | null, b: Band | null) => a?.min === b?.min && a?.max === b?.max

type Line = Pick<Statement, 'code' | 'text'>

/** Lines of which one plan has a code and the other does not; an objection counts by what it objects to. */
function newLines(
  part: PlanChange['part'],
  from: readonly Line[],
  to: readonly Line[],
): readonly PlanChange[] {
  const had = new Set(from.map(({ code }) => code))
  return to.filter(({ code }) => !had.has(code)).map(({ code, text }) => ({ part, code, text }))
}

const said = (statements: readonly Statement[]): readonly Line[] =>
  statements.flatMap((one) => [one, ...one.also])

/**
 * What another plan of the same find says that this one does not: how it is kept and how soon, and lines that were not
 * there. What merely falls silent is left out, for advice taken to be safe falls silent whenever something is settled.
 */
export function planChanges(from: Plan, to: Plan): readonly PlanChange[] {
  const changes: PlanChange[] = []
  if (from.storage.keep !== to.storage.keep) changes.push({ part: 'keep', code: to.storage.keep, text: '' })
  if (!sameBand(bandOf(from), bandOf(to)))
    changes.push({ part: 'storage', code: 'rh-percent', text: '', rhPercent: bandOf(to) })
  if (from.urgency !== to.urgency) changes.push({ part: 'urgency', code: to.urgency, text: '' })
  return [
    ...changes,
    ...newLines('cautions', said(from.cautions), said(to.cautions)),
    ...newLines('objections', from.objections, to.objections),
    ...newLines('handling', said(from.handling), said(to.handling)),
    ...newLines('packing', said(from.packing), said(to.packing)),
    ...newLines('referrals', said(from.referrals), said(to.referrals)),
  ]
}
