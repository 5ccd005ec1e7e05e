import type { Place } from '../flaw.ts'
import type { Decision, Effect } from '../knowledge.ts'
import { proposed } from '../../record/ids.ts'
import { valueOf } from './cells.ts'
import type { Path } from './document.ts'
import { nearest } from './nearest.ts'
import { fillSentence } from './sentence.ts'
import type { rule, Written } from './shapes.ts'
import { checkId, unknownId, type Shelf } from './shelf.ts'
import { engineUnits } from './units.ts'

export type WrittenThen = Written<typeof rule>['then']
export type Head = Pick<Decision, 'id' | 'each' | 'policy' | 'fills' | 'answers'>

interface Form {
  readonly shown: string
  readonly needs: readonly (keyof WrittenThen)[]
  readonly allows: readonly (keyof WrittenThen)[]
}

/** Which form of `then` the rules of this decision take. */
export function formOf(head: Head): Form {
  switch (head.fills) {
    case 'storage.rh':
    case 'storage.interim':
      return { shown: '{ rh: { from, to } }', needs: ['rh'], allows: ['check-every-days'] }
    case 'storage.temperature':
      return { shown: '{ temperature: { from, to } }', needs: ['temperature'], allows: [] }
    case 'inspection':
      return { shown: '{ every-days: FIGURE, look: … }', needs: ['every-days', 'look'], allows: [] }
    case 'objections':
      return { shown: '{ say: CODE, to: PROPOSAL }', needs: ['say', 'to'], allows: [] }
    case 'steps':
      return { shown: '{ say: CODE, step: { who, by } }', needs: ['say', 'step'], allows: [] }
    case 'requests':
      return { shown: '{ say: METHOD, request: { question } }', needs: ['say', 'request'], allows: [] }
    case 'storage.act':
      return { shown: '{ say: CODE, act: { above, within-days } }', needs: ['say', 'act'], allows: [] }
    default:
      return head.policy === 'collect'
        ? { shown: '{ say: CODE }', needs: ['say'], allows: [] }
        : { shown: '{ answer: … }', needs: ['answer'], allows: [] }
  }
}

/** What the rule does, its figures as numbers; null (and a flaw) where `then` has not the form of its decision. */
export function linkEffect(
  then: WrittenThen,
  head: Head,
  place: (...path: Path) => Place,
  shelf: Shelf,
  named: Set<string>,
): Effect | null {
  const form = formOf(head)
  const keys = Object.keys(then) as (keyof WrittenThen)[]
  const fits =
    form.needs.every((key) => keys.includes(key)) &&
    keys.every((key) => [...form.needs, ...form.allows].includes(key))
  if (!fits) {
    shelf.report.add('then-form', place(), {
      decision: head.id,
      wants: form.shown,
      found: `{ ${keys.join(', ')} }`,
    })
    return null
  }
  const number = (id: string, wants: readonly string[], ...path: Path): number | null =>
    valueOf(id, wants, place(...path), shelf, named)
  const sentence = (text: string, ...path: Path): string =>
    fillSentence(text, path.join('.'), place(...path), shelf, named)

  if (then.answer !== undefined) {
    if (!head.answers.includes(then.answer))
      unknownId('answer', then.answer, head.answers, place('answer'), shelf.report)
    return { kind: 'answer', answer: then.answer }
  }
  if (then.rh !== undefined || then.temperature !== undefined) return band(then, place, shelf, number)
  if (then['every-days'] !== undefined) {
    const days = number(then['every-days'], engineUnits.days, 'every-days')
    return days === null ? null : { kind: 'every', days, look: sentence(then.look!, 'look') }
  }
  checkId(head.fills === 'requests' ? 'method' : 'code', then.say!, place('say'), shelf)
  if (then.to !== undefined && !(proposed as readonly string[]).includes(then.to)) {
    shelf.report.add('unknown-id', place('to'), {
      kind: 'treatment',
      id: then.to,
      near: nearest(then.to, proposed),
    })
  }
  return said(then, place, shelf, number, sentence)
}

type Number = (id: string, wants: readonly string[], ...path: Path) => number | null

function band(
  then: WrittenThen,
  place: (...path: Path) => Place,
  shelf: Shelf,
  number: Number,
): Effect | null {
  const key = then.rh === undefined ? 'temperature' : 'rh'
  const wants = key === 'rh' ? engineUnits.relativeHumidity : engineUnits.temperature
  const ends = then[key]!
  const from = ends.from === undefined ? null : number(ends.from, wants, key, 'from')
  const to = ends.to === undefined ? null : number(ends.to, wants, key, 'to')
  if (ends.from === undefined && ends.to === undefined)
    shelf.report.add('interval-ends', place(key), { fact: key })
  if (from !== null && to !== null && from > to) shelf.report.add('empty-range', place(key), { from, to })
  const every = then['check-every-days']
  const days = every === undefined ? null : number(every, engineUnits.days, 'check-every-days')
  return {
    kind: 'band',
    ...(from === null ? {} : { from }),
    ...(to === null ? {} : { to }),
    ...(days === null ? {} : { checkEveryDays: days }),
  }
}

function said(
  then: WrittenThen,
  place: (...path: Path) => Place,
  shelf: Shelf,
  number: Number,
  sentence: (text: string, ...path: Path) => string,
): Effect {
  const { step, request, act } = then
  if (act !== undefined && (act.above === undefined) === (act.below === undefined)) {
    shelf.report.add('interval-ends', place('act'), { fact: 'act' })
  }
  const within = act === undefined ? null : number(act['within-days'], engineUnits.days, 'act', 'within-days')
  const end = (key: 'above' | 'below'): number | null =>
    act?.[key] === undefined ? null : number(act[key], engineUnits.relativeHumidity, 'act', key)
  const [above, below] = [end('above'), end('below')]
  const stepDays =
    step?.['within-days'] === undefined
      ? null
      : number(step['within-days'], engineUnits.days, 'step', 'within-days')
  return {
    kind: 'say',
    code: then.say!,
    ...(then.to === undefined ? {} : { to: then.to }),
    ...(step === undefined
      ? {}
      : {
          step: {
            who: step.who,
            by: sentence(step.by, 'step', 'by'),
            withinDays: stepDays,
            until: step.until === undefined ? null : sentence(step.until, 'step', 'until'),
          },
        }),
    ...(request === undefined
      ? {}
      : { request: { method: then.say!, question: sentence(request.question, 'request', 'question') } }),
    ...(within === null
      ? {}
      : {
          act: {
            ...(above === null ? {} : { aboveRhPercent: above }),
            ...(below === null ? {} : { belowRhPercent: below }),
            withinDays: within,
          },
        }),
  }
}
