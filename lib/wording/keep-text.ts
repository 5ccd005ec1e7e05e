import type { Conflict, Plan } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { bandWords, temperatureWords } from './band.ts'
import { codeLabel } from './fact.ts'
import { keepSentence, wetOrDryWords } from './keep.ts'
import { countWords, listWords } from './list.ts'
import { lineWords, weightWords, workMarks, type Citing } from './statement.ts'

function airWords({ storage }: Plan, knowledge: Knowledge): string {
  const { min, max } = storage.temperatureC
  const around = [
    ...(min === null && max === null ? [] : [temperatureWords(storage.temperatureC)]),
    ...(storage.light === 'dark' ? ['dark'] : []),
    ...storage.air.map((code) => codeLabel(code, knowledge).toLowerCase()),
  ]
  return around.length === 0 ? '' : `${around.join('; ')}.`
}

function disagreement({ between, gapPercent }: Conflict, keep: Plan['storage']['keep']): string {
  const who = `${keep === 'wet' ? 'Once dry, ' : ''}${listWords(between)}`
  const will = keep === 'wet' ? 'will ' : ''
  return gapPercent === 0
    ? `${who} ${will}leave no humidity that a box can hold.`
    : `${who} ${will}disagree by ${gapPercent} %.`
}

/** Left as found says why, and that a humidity is for later; wet and dry need no more than the word. */
function keepingWords({ keep, basis }: Plan['storage']): string {
  if (keep === 'wet') return ''
  const said = basis.filter(({ code }) => code === keep).map(({ text }) => text)
  return keep === 'dry' || said.length === 0 ? `${wetOrDryWords(keep)}.` : said.join(' ')
}

/** Where parts disagree: what each asks for, what may be done about it, and the band to wait in. */
function conflictLines({ storage }: Plan, cite: Citing, parts: number): readonly string[] {
  if (!storage.conflict) return []
  const bands = storage.components.map(({ component, limit }) => `${component}: ${bandWords(limit)}`)
  const { interim } = storage
  return [
    disagreement(storage.conflict, storage.keep),
    ...(parts > 1 ? bands : []),
    ...(interim
      ? [
          `Until then ${bandWords(interim.rhPercent)}, looked at every ${countWords(interim.checkEveryDays, 'day')} ${weightWords(interim.says, cite)}.`,
        ]
      : []),
    ...storage.conflict.waysOut.map((way) => lineWords(way, cite, parts)),
  ]
}

/** How a find is kept, for a terminal: wet or dry, its air, who disagrees, and when somebody must act. */
export function keepLines(plan: Plan, knowledge: Knowledge, cite: Citing, parts: number): readonly string[] {
  const { storage } = plan
  const humidity = storage.components.flatMap(({ basis }) => basis)
  const stopped = plan.cautions.some(({ level }) => level === 'stop')
  const first = [
    stopped ? 'Once the stop is cleared:' : '',
    keepingWords(storage),
    keepSentence(storage),
    airWords(plan, knowledge),
    storage.precautionary ? 'To be safe, until you look.' : '',
    workMarks(storage.keep === 'wet' ? storage.basis : humidity, cite),
  ]
  return [
    first.filter(Boolean).join(' '),
    ...conflictLines(plan, cite, parts),
    ...storage.act.map(({ says }) => lineWords(says, cite, parts)),
  ]
}
