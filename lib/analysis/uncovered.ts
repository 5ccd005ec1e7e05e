import type { Finding } from '../knowledge/flaw.ts'
import { standing, type Base } from './base.ts'
import { toldBox, where, whereAll } from './box.ts'
import { dimensionsOf } from './dimension.ts'

/** For every material and every family, a decision that reads them has a rule that can speak, or says it is not covered. */
export function uncovered({ knowledge }: Base): Finding[] {
  return knowledge.decisions.flatMap((decision) => {
    const dimensions = dimensionsOf(decision, knowledge)
    const regions = [...standing(decision), ...decision.notCovered].map(({ when }) => when)
    return dimensions
      .filter(({ fact }) => fact === 'family' || fact === 'material')
      .flatMap(({ fact, atoms }) =>
        atoms
          .filter((value) => value !== 'unknown')
          .filter((value) => {
            const box = where(toldBox(dimensions), { fact, any: [value] }, dimensions)
            return box !== null && !regions.some((cells) => whereAll(box, cells, dimensions) !== null)
          })
          .map((value): Finding => ({
            code: 'uncovered',
            severity: 'error',
            at: `decision ${decision.id}`,
            about: { decision: decision.id, fact, value },
          })),
      )
  })
}
