import { canonical } from '../base/canonical.ts'
import type { Finding } from '../knowledge/flaw.ts'
import type { Decision, Effect, Example, Rule } from '../knowledge/knowledge.ts'
import { eachRule, type Base } from './base.ts'

/** Decides one decision on the facts of an example; the engine does it, and the check is handed in where both are known. */
export type Decide = (
  decision: Decision,
  given: Example['given'],
) => {
  /** Ids of the rules that hold on what is given and are not overridden. */
  readonly holding: readonly string[]
  readonly answer: string | null
}

/** Every rule has an example, and in it the rule holds and gives what the example says. */
export function examplesHold(decide: Decide): (base: Base) => Finding[] {
  return ({ knowledge }) =>
    eachRule(knowledge).flatMap(({ decision, rule, name }): Finding[] => {
      const at = `rule ${name}`
      if (rule.examples.length === 0)
        return [{ code: 'without-example', severity: 'error', at, about: { rule: name } }]
      return rule.examples.flatMap((example): Finding[] => {
        const stray = Object.keys(example.given).filter((fact) => !decision.facts.includes(fact))
        if (stray.length > 0)
          return stray.map((fact) => ({
            code: 'example-fact',
            severity: 'error',
            at,
            about: { rule: name, fact },
          }))
        const got = outcome(decision, rule, example, decide)
        if (got === null) return []
        return [
          {
            code: 'example-fails',
            severity: 'error',
            at,
            about: { rule: name, expected: canonical(example.gives), got },
          },
        ]
      })
    })
}

/** What came instead of what the example says, or null where it holds. */
function outcome(decision: Decision, rule: Rule, { given, gives }: Example, decide: Decide): string | null {
  const { holding, answer } = decide(decision, given)
  if (!holding.includes(rule.id)) return holding.length === 0 ? 'nothing' : `what ${holding.join(', ')} gives`
  const written = asWritten(rule.then, decision)
  if (!agrees(gives, written)) return canonical(written)
  return rule.then.kind === 'answer' && answer !== rule.then.answer ? canonical({ answer }) : null
}

/** The example names at least what the effect is known by, and nothing that the effect does not print. */
function agrees(gives: unknown, written: Readonly<Record<string, unknown>>): boolean {
  if (gives === null || typeof gives !== 'object' || Array.isArray(gives)) return false
  const named = Object.entries(gives)
  const first = Object.keys(written)[0]
  return (
    named.some(([key]) => key === first) &&
    named.every(([key, value]) => canonical(value) === canonical(written[key]))
  )
}

/** The effect in the form of `then`, figures as numbers; what it is known by stands first. */
function asWritten(effect: Effect, decision: Decision): Readonly<Record<string, unknown>> {
  switch (effect.kind) {
    case 'answer':
      return { answer: effect.answer }
    case 'band': {
      const { kind: _kind, checkEveryDays, ...ends } = effect
      const of = decision.fills === 'storage.temperature' ? 'temperature' : 'rh'
      return { [of]: ends, ...(checkEveryDays === undefined ? {} : { 'check-every-days': checkEveryDays }) }
    }
    case 'every':
      return { 'every-days': effect.days, look: effect.look }
    case 'say':
      return {
        say: effect.code,
        ...(effect.to === undefined ? {} : { to: effect.to }),
        ...(effect.request === undefined ? {} : { request: { question: effect.request.question } }),
        ...(effect.act === undefined ? {} : { act: actAsWritten(effect.act) }),
        ...(effect.step === undefined ? {} : { step: stepAsWritten(effect.step) }),
      }
  }
}

type Said = Extract<Effect, { kind: 'say' }>

function actAsWritten({ aboveRhPercent, belowRhPercent, withinDays }: NonNullable<Said['act']>): object {
  return {
    ...(aboveRhPercent === undefined ? {} : { above: aboveRhPercent }),
    ...(belowRhPercent === undefined ? {} : { below: belowRhPercent }),
    'within-days': withinDays,
  }
}

function stepAsWritten({ who, by, withinDays, until }: NonNullable<Said['step']>): object {
  return {
    who,
    by,
    ...(withinDays === null ? {} : { 'within-days': withinDays }),
    ...(until === null ? {} : { until }),
  }
}
