import type { Fills } from '../knowledge/knowledge.ts'
import { componentBand, partBand, reconcile } from './band.ts'
import type { Act, Statement, Storage } from './plan.ts'
import type { Conclusion, Reasoning } from './reasoning.ts'
import { spoken, type Spoken } from './statement.ts'

/** The conclusions that fill one part of the plan, in dependency order. */
export function filling(reasoning: Reasoning, part: Fills): readonly Conclusion[] {
  return reasoning.filling.get(part)?.map((id) => reasoning.conclusions.get(id)!) ?? []
}

export const saidOf = (reasoning: Reasoning, part: Fills): readonly Spoken[] =>
  filling(reasoning, part).flatMap((conclusion) => spoken(conclusion, reasoning))

/** A value decision's answer over the find or its parts, and whether another was still possible. */
export function takenOf(reasoning: Reasoning, part: Fills) {
  const conclusion = filling(reasoning, part)[0]
  if (!conclusion) return { conclusion, taken: null, rank: 0, precautionary: false }
  const each = conclusion.find ? [conclusion.find] : conclusion.components
  const answers = conclusion.index.decision.answers
  const rank = answers.findIndex((answer) => each.some((decided) => decided.taken === answer))
  const taken = answers[rank] ?? null
  // A silent decision takes what is recorded; only a protective one takes the careful side of what is not.
  const protective = conclusion.index.decision.absent === 'protective'
  const precautionary =
    protective && each.some((decided) => decided.taken === taken && decided.possible.length > 1)
  return { conclusion, taken, rank, precautionary }
}

/** The same with the statements that give it. */
export function valueOf(reasoning: Reasoning, part: Fills) {
  const { conclusion, taken, precautionary } = takenOf(reasoning, part)
  const said = conclusion ? spoken(conclusion, reasoning) : []
  const basis = said
    .filter(({ rule }) => rule.then.kind === 'answer' && rule.then.answer === taken)
    .map(({ statement }) => statement)
  return { taken, precautionary, basis: basis as readonly Statement[] }
}

function temperature(reasoning: Reasoning): { band: Storage['temperatureC']; basis: readonly Statement[] } {
  const said = saidOf(reasoning, 'storage.temperature')
  const ends = said.flatMap(({ rule }) => (rule.then.kind === 'band' ? [rule.then] : []))
  const lows = ends.flatMap(({ from }) => from ?? [])
  const highs = ends.flatMap(({ to }) => to ?? [])
  return {
    band: {
      min: lows.length > 0 ? Math.max(...lows) : null,
      max: highs.length > 0 ? Math.min(...highs) : null,
    },
    basis: said.map(({ statement }) => statement),
  }
}

/** Whether `other` has called for at least as much, as soon, by the time `act` fires. */
function outrun(act: Act, other: Act): boolean {
  const sameSide =
    act.aboveRhPercent !== undefined
      ? (other.aboveRhPercent ?? Infinity) <= act.aboveRhPercent
      : (other.belowRhPercent ?? -Infinity) >= (act.belowRhPercent ?? 0)
  if (!sameSide || other.withinDays > act.withinDays) return false
  return other.withinDays < act.withinDays || other.says.code === act.says.code
}

/** The tiers, soonest first. A find stands in one box: a tier that a sooner one has overtaken would only contradict it. */
function acts(reasoning: Reasoning): readonly Act[] {
  const tiers = saidOf(reasoning, 'storage.act')
    .flatMap(({ rule, statement }): readonly Act[] =>
      rule.then.kind === 'say' && rule.then.act
        ? [{ ...rule.then.act, within: within(rule.then.act.withinDays), says: statement }]
        : [],
    )
    .sort(
      (a, b) =>
        a.withinDays - b.withinDays ||
        (a.aboveRhPercent ?? 0) - (b.aboveRhPercent ?? 0) ||
        (b.belowRhPercent ?? 0) - (a.belowRhPercent ?? 0) ||
        (a.says.rule < b.says.rule ? -1 : 1),
    )
  return tiers.filter((act, at) => !tiers.slice(0, at).some((sooner) => outrun(act, sooner)))
}

/** The contract's `within`, machine-readable as ISO 8601 prints a duration. */
const within = (days: number) => (days < 1 ? `PT${Math.round(days * 24)}H` : `P${days}D`)

function interim(reasoning: Reasoning): Storage['interim'] {
  const [holding] = saidOf(reasoning, 'storage.interim')
  if (!holding || holding.rule.then.kind !== 'band') return null
  const { from = 0, to = 100, checkEveryDays } = holding.rule.then
  if (checkEveryDays === undefined) return null
  return { rhPercent: { min: from, max: to }, checkEveryDays, says: holding.statement }
}

/** What every part asks of the humidity, and the band they share or the conflict between them. */
export function humidityOf(reasoning: Reasoning) {
  const humidity = filling(reasoning, 'storage.rh')
  const whole = humidity.flatMap((conclusion) => spoken(conclusion, reasoning))
  const { components } = reasoning.facts
  const said =
    components.length === 1
      ? [whole]
      : components.map((_, part) => humidity.flatMap((conclusion) => spoken(conclusion, reasoning, part)))
  const parts = components.map(({ name }, part) => partBand(name, said[part]!))
  return { whole, parts, ...reconcile(parts) }
}

/** The contract's word for how it is kept; nothing decided is left as it was found. */
export function keepOf(reasoning: Reasoning): Storage['keep'] {
  const { taken } = takenOf(reasoning, 'storage.keep')
  return taken === 'wet' || taken === 'dry' ? taken : 'as-found'
}

/**
 * How the find is kept: humidity, temperature, light, air, and what to do when the box leaves its band. While a stop stands
 * nobody goes to its box.
 */
export function storageOf(reasoning: Reasoning, stopped: boolean): Storage {
  const { whole, parts, band, conflict } = humidityOf(reasoning)
  const kept = keepOf(reasoning)
  const keep = valueOf(reasoning, 'storage.keep')
  const light = valueOf(reasoning, 'storage.light')
  const air = saidOf(reasoning, 'storage.air')
  const { band: temperatureC, basis: temperatureBasis } = temperature(reasoning)
  // No humidity is asked of what is kept in water; the parts keep theirs for when it is dry.
  const humidityBasis = kept === 'wet' ? [] : whole.map(({ statement }) => statement)
  return {
    rhPercent: kept === 'wet' ? null : band,
    interim: conflict && kept !== 'wet' ? interim(reasoning) : null,
    act: stopped ? [] : acts(reasoning),
    light: light.taken === 'dark' ? 'dark' : 'ordinary',
    air: [...new Set(air.map(({ statement }) => statement.code))],
    decidedBy: conflict ? 'conservator' : 'rule',
    precautionary: keep.precautionary || humidityBasis.some((statement) => statement.precautionary),
    temperatureC,
    conflict: conflict
      ? { ...conflict, waysOut: saidOf(reasoning, 'storage.ways-out').map(({ statement }) => statement) }
      : null,
    keep: kept,
    components: parts.map(componentBand),
    basis: [
      ...humidityBasis,
      ...keep.basis,
      ...temperatureBasis,
      ...light.basis,
      ...air.map(({ statement }) => statement),
    ],
  }
}
