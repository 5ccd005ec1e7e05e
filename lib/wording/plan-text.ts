import type { Caution, LookNext, Plan, Statement } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { ConditionRecord } from '../record/record.ts'
import { longCitation } from './citation.ts'
import { codeLabel, valueLabel } from './fact.ts'
import { keepLines } from './keep-text.ts'
import { countWords, listWords } from './list.ts'
import { urgencyWords, whoWords } from './marks.ts'
import { standingLines } from './standing.ts'
import { lineWords, weightWords, type Citing } from './statement.ts'
import { wrap } from './wrap.ts'

const gutter = 12

/** `TW-0412, knife: iron (blade), wood (handle)`. */
export function findWords(record: ConditionRecord, knowledge: Knowledge): string {
  const parts = record.components.map(({ component, material }) => {
    const label = valueLabel('material', material, knowledge).toLowerCase()
    return record.components.length > 1 ? `${label} (${component})` : label
  })
  const what = record.object ?? record.object_kind
  const name = [record.site_code, record.find_number].filter(
    (part) => part !== undefined && !record.find_number.startsWith(`${part}-`),
  )
  return `${[...new Set([...name, record.find_number])].join(' ')}${what ? `, ${what}` : ''}: ${listWords(parts)}`
}

/** The mark before it says that it is a stop. */
const withoutStop = (text: string) => text.replace(/^stop[.:!]\s+/i, '')

/** One stop, as it stands before everything else. */
export function stopWords(find: string, stop: Caution): string {
  const call = stop.who === '' ? '' : ` Call: ${stop.who}.`
  return wrap('STOP  ', `${find}: ${withoutStop(stop.text)}${call}`)
}

interface Section {
  readonly name: string
  readonly lines: readonly string[]
}

function sectionText({ name, lines }: Section): string {
  return lines.map((line, at) => wrap((at === 0 ? name : '').padEnd(gutter), line)).join('\n')
}

function stepLines(plan: Plan, cite: Citing, parts: number): string {
  const lines = plan.steps.map((step) => {
    const whose =
      parts > 1 && step.components.length > 0 && step.components.length < parts
        ? `${step.components.join(', ')}: `
        : ''
    const until = step.until === null ? '' : ` Until ${step.until}.`
    const due = step.due === null || step.due === plan.asOf ? '' : `, by ${step.due}`
    const text = `${whose}${step.text}${until} — ${whoWords[step.who]}, ${step.by}${due} ${weightWords(step, cite)}`
    return wrap(`  ${String(step.order).padStart(2)}. `, text)
  })
  return lines.length === 0 ? '  Nothing to do now.' : lines.join('\n')
}

/** Handling and packing at a glance: their names in one line; `explain` gives each in full. */
const atAGlance = (statements: readonly Statement[], knowledge: Knowledge) =>
  statements.length === 0 ? [] : [`${statements.map(({ code }) => codeLabel(code, knowledge)).join('; ')}.`]

const inFull: readonly string[] = ['repack', 'ask-before-moving', 'closed-bag']

/** What is wrong with the packing as it is, in full: a name alone would not say what to change. */
const toMend = (packing: readonly Statement[]) =>
  packing.filter(({ code }) => inFull.includes(code)).flatMap((line) => [line, ...line.also])

function cautionLine(caution: Caution, cite: Citing, parts: number): string {
  const loud = caution.level === 'stop' ? 'STOP: ' : caution.level === 'warn' ? 'Warning: ' : ''
  return `${loud}${lineWords({ ...caution, text: withoutStop(caution.text) }, cite, parts)}${caution.who === '' ? '' : ` Call: ${caution.who}.`}`
}

/** A question, and whose it is where a find has several parts. */
function question({ fact, asks, tell }: LookNext, parts: number): string {
  const dot = fact.lastIndexOf('.')
  const whose = parts > 1 && dot > 0 ? `${fact.slice(0, dot)}: ` : ''
  return `${whose}${asks} ${tell}`
}

/** The plan of one find for a terminal: what to do first and in order, then what stands behind it. */
export function planText(record: ConditionRecord, plan: Plan, knowledge: Knowledge, cite: Citing): string {
  const parts = record.components.length
  const say = (statements: readonly Statement[]) => statements.map((one) => lineWords(one, cite, parts))
  const urgency = urgencyWords[plan.urgency]
  const toBeSafe = plan.urgencyBasis.length > 0 && plan.urgencyBasis.every((one) => one.precautionary)
  // First, so that the works of the steps have the first numbers.
  const steps = stepLines(plan, cite, parts)
  const sections: readonly Section[] = [
    { name: 'Careful', lines: plan.cautions.map((caution) => cautionLine(caution, cite, parts)) },
    {
      name: 'Before that',
      lines: plan.objections.map(
        (one) =>
          `${valueLabel('proposed', one.to, knowledge)}: ${one.level === 'block' ? 'not yet. ' : ''}${lineWords(one, cite, parts)}`,
      ),
    },
    { name: 'Keep', lines: keepLines(plan, knowledge, cite, parts) },
    { name: 'Handle', lines: atAGlance(plan.handling, knowledge) },
    { name: 'Pack', lines: [...atAGlance(plan.packing, knowledge), ...say(toMend(plan.packing))] },
    { name: 'Perhaps', lines: standingLines(plan.interpretations, knowledge, parts) },
    {
      name: 'Ask for',
      lines: plan.requests.map(
        ({ method, question, who }) => `${knowledge.methods[method]?.label ?? method}: ${question} [${who}]`,
      ),
    },
    {
      name: 'Look',
      lines: plan.lookNext.map((one) => question(one, parts)),
    },
    { name: 'Conservator', lines: say(plan.referrals) },
    { name: 'Keep or not', lines: say(plan.selection) },
    {
      name: 'Again on',
      lines: [
        `${plan.inspection.nextOn}, then every ${countWords(plan.inspection.everyDays, 'day')}: ${plan.inspection.look}`,
      ],
    },
    { name: 'No advice', lines: plan.notCovered.map(({ what, because }) => `${what}: ${because}`) },
  ]
  return [
    findWords(record, knowledge),
    wrap(
      `${urgency.label}. `,
      `${plan.urgencyBasis.map(({ text, because }) => text || because).join(' ') || urgency.means}${toBeSafe ? ' To be safe, until you look.' : ''}`,
    ),
    steps,
    ...sections.filter(({ lines }) => lines.length > 0).map(sectionText),
  ].join('\n')
}

/** The works that the numbers in brackets stand for. */
export function citedText(cite: Citing, knowledge: Knowledge): string {
  const lines = cite.cited().map((id, at) => {
    const work = knowledge.works[id]
    return wrap(`  [${at + 1}]`.padEnd(8), work ? longCitation(work) : id)
  })
  return ['Works', ...lines].join('\n')
}
