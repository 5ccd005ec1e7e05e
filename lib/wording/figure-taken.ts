import type { Figure, Knowledge } from '../knowledge/knowledge.ts'
import { figureWords } from './figure.ts'

/** A figure with its unit as its work prints it; where no number is printed, the one that is taken, and whose it is. */
export function figureTakenWords(figure: Figure, knowledge: Knowledge): string {
  return figure.asPrinted.startsWith('not printed')
    ? `${figureWords({ ...figure, asPrinted: String(figure.value) }, knowledge)}, ours`
    : figureWords(figure, knowledge)
}
