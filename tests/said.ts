import { expect } from 'vitest'
import type { Act, Plan, Request, Statement } from '../lib/engine/plan.ts'
import type { Figure, Rule } from '../lib/knowledge/knowledge.ts'
import { knowledge } from './knowledge-at-hand.ts'

export const codes = (lines: readonly { readonly code: string }[]): readonly string[] =>
  lines.map(({ code }) => code)

/** Matches codes that say all of these, in any order and among others. */
export const saying = (...all: readonly string[]): unknown => expect.arrayContaining([...all])

/** The methods asked for, first first. */
export const methods = (plan: Plan): readonly string[] => plan.requests.map(({ method }) => method)

/** The line that says `code`; where there is none, the codes that were said instead. */
export function line<Line extends { readonly code: string }>(lines: readonly Line[], code: string): Line {
  const found = lines.find((one) => one.code === code)
  if (!found) throw new Error(`No line says ${code}; said: ${codes(lines).join(', ') || 'nothing'}`)
  return found
}

/** The request for a method; where there is none, what is asked for instead. */
export function request(plan: Plan, method: string): Request {
  const found = plan.requests.find((one) => one.method === method)
  if (!found) throw new Error(`No request for ${method}; asked for: ${methods(plan).join(', ') || 'nothing'}`)
  return found
}

export function figure(id: string): Figure {
  const found = knowledge.figures[id]
  if (!found) throw new Error(`The knowledge has no figure ${id}`)
  return found
}

/** A rule by the name a plan traces it with: `decision/rule`. */
export function rule(traced: string): Rule {
  const [decision, id] = traced.split('/')
  const found = knowledge.decisions.find((one) => one.id === decision)?.rules.find((one) => one.id === id)
  if (!found) throw new Error(`The knowledge has no rule ${traced}`)
  return found
}

/** The statements behind the humidity of one part. */
export function humidityOf(plan: Plan, component = 'body'): readonly Statement[] {
  const part = plan.storage.components.find((one) => one.component === component)
  if (!part) throw new Error(`The plan has no part ${component}`)
  return part.basis
}

/** The tiers that call for something when the box stands at `rhPercent`. */
export const firing = (plan: Plan, rhPercent: number): readonly Act[] =>
  plan.storage.act.filter(
    ({ aboveRhPercent, belowRhPercent }) =>
      (aboveRhPercent !== undefined && rhPercent > aboveRhPercent) ||
      (belowRhPercent !== undefined && rhPercent < belowRhPercent),
  )

/** Days [d] within which a box at `rhPercent` wants somebody; null where it wants nobody. */
export function daysToAct(plan: Plan, rhPercent: number): number | null {
  const days = firing(plan, rhPercent).map(({ withinDays }) => withinDays)
  return days.length > 0 ? Math.min(...days) : null
}

/** The side of a contested matter that a work stands on. */
export function side(matter: string, work: string) {
  const found = knowledge.contested[matter]?.sides.find(({ sources }) =>
    sources.some((source) => source.work === work),
  )
  if (!found) throw new Error(`No side of ${matter} stands on ${work}`)
  return found
}

/** Those of several for which a thing does not hold; none, where a check speaks of all of them. */
export const exceptions = <One>(all: readonly One[], holds: (one: One) => boolean): readonly One[] =>
  all.filter((one) => !holds(one))
