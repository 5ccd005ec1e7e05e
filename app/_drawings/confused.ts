import type { Word } from '../../lib/knowledge/knowledge.ts'
import { hasDrawing } from './register.ts'

/** A value and what it is taken for, as keys of drawings: itself first, at most three, those that are drawn. */
export function confusedKeys(field: string, word: Pick<Word, 'id' | 'confusedWith'>): string[] {
  return [word.id, ...(word.confusedWith ?? [])]
    .map((id) => `${field}/${id}`)
    .filter(hasDrawing)
    .slice(0, 3)
}
