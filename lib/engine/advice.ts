import { addDays, type IsoDate } from '../base/calendar.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { byWeight, foldBeyond, mergeByCode } from './fold.ts'
import { objectionsIn } from './objection.ts'
import type { Caution, Contacts, Objection, Plan, Request, Statement, Step, Storage } from './plan.ts'
import type { Reasoning } from './reasoning.ts'
import { saidOf } from './storage.ts'
import type { Spoken } from './statement.ts'

const most = { cautions: 6, handling: 10, packing: 9, requests: 5 } as const

/** Lines of handling or packing, merged by code and folded to what a person reads. */
export function linesOf(reasoning: Reasoning, part: 'handling' | 'packing'): readonly Statement[] {
  return foldBeyond(
    mergeByCode(saidOf(reasoning, part)).map(({ statement }) => statement),
    most[part],
  )
}

const loudness = { stop: 0, warn: 1, note: 2 } as const

/** Whom to call: the site's own person where one is kept, otherwise who it is in words. */
function whom(call: keyof Contacts | null, knowledge: Knowledge, contacts: Contacts): string {
  if (call === null) return ''
  const inWords = knowledge.vocabulary.contacts[call]?.label ?? call
  const person = contacts[call]
  return person ? `${inWords}: ${person.name}, ${person.reach}` : inWords
}

/** Stops first, then warnings, then notes. Stops and warnings are never folded; notes are, beyond what a person reads. */
export function cautionsOf(
  reasoning: Reasoning,
  knowledge: Knowledge,
  contacts: Contacts,
): readonly Caution[] {
  const said = saidOf(reasoning, 'cautions')
  const level = (spoken: Pick<Spoken, 'rule'>) =>
    spoken.rule.level === 'stop' || spoken.rule.level === 'warn' ? spoken.rule.level : 'note'
  const loud = said
    .filter((spoken) => level(spoken) !== 'note')
    .toSorted((a, b) => loudness[level(a)] - loudness[level(b)] || byWeight(a, b))
  const notes = mergeByCode(said.filter((spoken) => level(spoken) === 'note'))
  const lines: readonly Caution[] = [...loud, ...notes].map((line) => ({
    ...line.statement,
    level: level(line),
    who: whom(line.rule.call, knowledge, contacts),
    call: line.rule.call,
  }))
  return foldBeyond(lines, Math.max(loud.length, most.cautions)) as readonly Caution[]
}

/** What speaks against a proposed treatment; blocks before warnings, none folded. */
export function objectionsOf(reasoning: Reasoning): readonly Objection[] {
  return objectionsIn(reasoning)
    .toSorted((a, b) => Number(a.rule.level !== 'block') - Number(b.rule.level !== 'block') || byWeight(a, b))
    .flatMap(({ rule, statement }) =>
      rule.then.kind === 'say' && rule.then.to !== undefined
        ? [
            {
              ...statement,
              to: rule.then.to,
              level: rule.level === 'block' ? ('block' as const) : ('warn' as const),
            },
          ]
        : [],
    )
}

/** The first week in order. Nothing else is due while a stop stands: the rest waits for whoever clears it. */
export function stepsOf(reasoning: Reasoning, asOf: IsoDate, stopped: boolean): readonly Step[] {
  const lines = mergeByCode(saidOf(reasoning, 'steps')).toSorted(
    (a, b) => a.rule.order - b.rule.order || byWeight(a, b),
  )
  return lines.flatMap(({ rule, statement }, at) => {
    if (rule.then.kind !== 'say' || !rule.then.step) return []
    const { who, by, withinDays, until } = rule.then.step
    const waits = stopped && !rule.when.some((cell) => cell.fact === 'hazards')
    const due = waits || withinDays === null ? null : addDays(asOf, Math.ceil(withinDays))
    return [{ ...statement, order: at + 1, by: waits ? 'once the stop is cleared' : by, due, until, who }]
  })
}

/**
 * What the rules ask for, one a method: looking and imaging before sampling. None is made while a stop stands, for the find
 * must not be moved. What the evidence base would gain by them is joined on outside of the engine.
 */
export function requestsOf(reasoning: Reasoning, knowledge: Knowledge, stopped: boolean): readonly Request[] {
  if (stopped) return []
  const said = saidOf(reasoning, 'requests')
  const lines = mergeByCode(said)
  const place = (code: string) => knowledge.methods[code]?.order ?? Number.MAX_SAFE_INTEGER
  const ordered = lines.toSorted(
    (a, b) => place(a.statement.code) - place(b.statement.code) || byWeight(a, b),
  )
  const rules = new Map(said.map(({ rule, id }) => [id, rule]))
  const questions = (statement: Statement) =>
    [statement, ...statement.also].flatMap(({ rule }) => {
      const then = rules.get(rule)?.then
      return then?.kind === 'say' && then.request ? [then.request.question] : []
    })
  return foldBeyond(
    ordered.map(({ statement }) => statement),
    most.requests,
  ).map((statement, at) => {
    const method = knowledge.methods[statement.code]
    return {
      method: statement.code,
      question: [...new Set(questions(statement))].join(' '),
      rank: at + 1,
      gainBits: null,
      sampling: method?.sampling ?? false,
      who: method?.who ?? '',
      cautions: method?.cautions.map(({ text }) => text) ?? [],
      components: statement.components,
      basis: [{ ...statement, also: [] }, ...statement.also],
      means: [],
      misleads: [],
      ifConservatorAgrees: false,
    }
  })
}

/** When to look again: the shortest interval any rule asks for, never longer than a holding band is checked. */
export function inspectionOf(
  reasoning: Reasoning,
  asOf: IsoDate,
  interim: Storage['interim'],
): Plan['inspection'] {
  const said = saidOf(reasoning, 'inspection').flatMap((spoken) =>
    spoken.rule.then.kind === 'every' ? [{ ...spoken.rule.then, spoken }] : [],
  )
  const soonest = said.toSorted((a, b) => a.days - b.days || byWeight(a.spoken, b.spoken))[0]
  // Knowledge without a rule that always holds here is a fault of ours, not a gap to paper over.
  if (!soonest)
    throw new Error('No rule of an inspection decision holds: the knowledge must have one that always does.')
  const basis = said.filter(({ days }) => days === soonest.days).map(({ spoken }) => spoken.statement)
  const everyDays = Math.min(soonest.days, interim?.checkEveryDays ?? soonest.days)
  const holding = interim && everyDays < soonest.days ? [interim.says] : []
  return { everyDays, nextOn: addDays(asOf, everyDays), look: soonest.look, basis: [...holding, ...basis] }
}
