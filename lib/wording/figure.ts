import type { Figure, Knowledge } from '../knowledge/knowledge.ts'

/** A work often prints a figure with its unit, in its own manner: "3 h", "800 C", "two weeks". */
const withOwnUnit = /\d[^]*[\p{L}%°]|^\D+ \D+$/u

/** A figure with its unit, as its work prints it. */
export function figureWords(figure: Figure, knowledge: Knowledge): string {
  const unit = knowledge.vocabulary.units[figure.unit]
  const printed = unit?.printed ?? figure.unit
  if (printed === '' || withOwnUnit.test(figure.asPrinted)) return figure.asPrinted
  return `${figure.asPrinted} ${figure.asPrinted === '1' ? (unit?.one ?? printed) : printed}`
}
