import type { Knowledge } from '../knowledge/knowledge.ts'

export type Figures = Pick<Knowledge, 'figures'>

/** A figure that this tool is built with; that it should be missing is a fault of ours. */
export function figureValue({ figures }: Figures, id: string): number {
  const figure = figures[id]
  if (figure === undefined) throw new Error(`The knowledge has no figure ${id}.`)
  return figure.value
}
