import type { Figure, Knowledge } from '../knowledge/knowledge.ts'

/** A figure with its unit, as its work prints it. */
export function figureWords(figure: Figure, knowledge: Knowledge): string {
  const unit = knowledge.vocabulary.units[figure.unit]
  const printed = unit?.printed ?? figure.unit
  const bare = printed === '' || figure.asPrinted.includes(printed)
  return bare ? figure.asPrinted : `${figure.asPrinted} ${printed}`
}
