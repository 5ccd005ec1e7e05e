import type { LookNext } from '../../lib/engine/plan.ts'
import { askedOf, type AskedOf } from '../../lib/field/look-answer.ts'
import type { Knowledge, Word } from '../../lib/knowledge/knowledge.ts'
import { fields } from '../../lib/record/fields.ts'
import { confusedKeys } from '../_drawings/confused.ts'
import { hasDrawing } from '../_drawings/register.ts'

/** A question as it is put on a screen: what can be answered, and what each answer looks like. */
export interface Shown extends AskedOf {
  readonly fact: string
  readonly takes: 'one' | 'several' | 'words'
  readonly answers: readonly ShownAnswer[]
  /** What "None of these" is written as: where the list holds all there is, nobody could tell. */
  readonly none: 'none' | 'unknown'
}

export interface ShownAnswer {
  readonly id: string
  readonly label: string
  readonly tell: string
  /** Key of its drawing; null where there is none. */
  readonly drawing: string | null
  /** Keys of drawings that are taken for one another, this one first; empty where its neighbours are all in view. */
  readonly alike: readonly string[]
}

/** Words that are taken for one another stand next to each other. */
function besideLikes(words: readonly Word[]): readonly Word[] {
  const left = new Map(words.map((word) => [word.id, word]))
  const order: Word[] = []
  const take = (word: Word) => {
    if (!left.delete(word.id)) return
    order.push(word)
    for (const id of word.confusedWith ?? []) {
      const next = left.get(id)
      if (next) take(next)
    }
  }
  for (const word of words) take(word)
  return order
}

const keyOf = (of: string, id: string) => (hasDrawing(`${of}/${id}`) ? `${of}/${id}` : null)

function closerLook(question: string, { questions }: Knowledge): readonly ShownAnswer[] {
  return (questions[question]?.answers ?? []).map(({ id, label, tell }) => ({
    id,
    label,
    tell,
    drawing: keyOf(question, id),
    alike: [],
  }))
}

/** One choice of a few shows them all; of a long list, only what would change something here. */
function ofField(
  { field, test }: AskedOf,
  wanted: readonly string[],
  { vocabulary }: Knowledge,
): readonly ShownAnswer[] {
  const of = test ?? field
  const all = vocabulary.fields[of]?.values ?? []
  const kind = test === null ? fields[field].kind : 'choice'
  const words = kind === 'choice' ? all : besideLikes(all.filter(({ id }) => wanted.includes(id)))
  return words.map((word) => {
    const alike = kind === 'choices' ? confusedKeys(field, word) : []
    const { id, label, tell } = word
    return { id, label, tell, drawing: keyOf(of, id), alike: alike.length > 1 ? alike : [] }
  })
}

export function shownQuestion({ fact, answers }: LookNext, knowledge: Knowledge): Shown | null {
  const asked = askedOf(fact)
  if (asked === null) return null
  const shown =
    asked.question === null ? ofField(asked, answers, knowledge) : closerLook(asked.question, knowledge)
  const { kind } = fields[asked.field]
  const several = kind === 'choices'
  return {
    ...asked,
    fact,
    takes: shown.length === 0 ? 'words' : several ? 'several' : 'one',
    answers: shown,
    none: several || asked.question !== null ? 'none' : 'unknown',
  }
}
