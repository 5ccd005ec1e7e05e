import type { Base } from './base.ts'
import type { Finding } from '../knowledge/flaw.ts'

/** A figure is used somewhere or says why it is kept. */
export function unusedFigures({ knowledge, used }: Base): Finding[] {
  return Object.values(knowledge.figures)
    .filter((figure) => !used.figures.has(figure.id) && figure.kept === undefined)
    .map(({ id }) => ({
      code: 'figure-unused',
      severity: 'error',
      at: `figure ${id}`,
      about: { figure: id },
    }))
}

/** A work is referred to by some figure, rule, method or contested matter. */
export function unusedWorks({ knowledge, used }: Base): Finding[] {
  return Object.keys(knowledge.works)
    .filter((id) => !used.works.has(id))
    .map((id) => ({ code: 'work-unused', severity: 'warning', at: `work ${id}`, about: { work: id } }))
}
