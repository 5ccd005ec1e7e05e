import type { UsedFact } from '../engine/plan.ts'
import { isLookedFact, lookedFact } from '../knowledge/domains.ts'
import type { Question } from '../knowledge/evidence.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { listWords } from './list.ts'

/** The word for a field, a decision's answer, a code: its label, or the id itself where there is none. */
export function fieldLabel(field: string, knowledge: Knowledge): string {
  return knowledge.vocabulary.fields[field]?.label ?? questionOf(field, knowledge)?.asks ?? plain(field)
}

export function valueLabel(field: string, value: string, knowledge: Knowledge): string {
  if (value === 'unknown') return 'could not be told'
  if (value === 'none' && !knowledge.vocabulary.fields[field]?.values.some(({ id }) => id === 'none'))
    return 'none seen'
  const answers = knowledge.vocabulary.fields[field]?.values ?? questionOf(field, knowledge)?.answers ?? []
  const words = answers.find((word) => word.id === value)
  return words?.label ?? knowledge.vocabulary.codes[value]?.label ?? plain(value)
}

/** The question whose answer a fact holds. */
function questionOf(fact: string, knowledge: Knowledge): Question | undefined {
  return isLookedFact(fact) ? knowledge.questions[fact.slice(lookedFact('').length)] : undefined
}

export function codeLabel(code: string, knowledge: Knowledge): string {
  return knowledge.vocabulary.codes[code]?.label ?? plain(code)
}

/** What a rule rested on: the fact, whose it is, what it said. */
export function factWords(used: UsedFact, knowledge: Knowledge): string {
  const decision = knowledge.decisions.find(({ id }) => id === used.fact)
  const name = decision ? plain(decision.id) : fieldLabel(used.fact, knowledge)
  const whose = used.component === null ? name : `${name} of ${used.component}`
  if (used.said === 'absent') return `${whose}: nobody has looked yet`
  if (used.said === 'unknown') return `${whose}: looked at, could not be told`
  const values =
    used.value === ''
      ? ['none']
      : used.value.split('; ').map((value) => valueLabel(used.fact, value, knowledge))
  return used.said === 'derived'
    ? `${whose}: ${listWords(values, 'or')} (worked out)`
    : `${whose}: ${listWords(values)}`
}

/** The observation that would settle a precautionary line: its question, as *Look next* asks it. */
export function lookWords(used: UsedFact, knowledge: Knowledge): string | null {
  if (used.said !== 'absent' && used.said !== 'unknown') return null
  const field = knowledge.vocabulary.fields[used.fact]
  if (!field) return null
  const asks = field.asks === '' ? field.label : field.asks
  return used.component === null ? asks : `${used.component}: ${asks}`
}

function plain(id: string): string {
  return id.replaceAll(/[-_]/g, ' ')
}
