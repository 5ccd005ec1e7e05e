import type { Grade, State } from '../knowledge/evidence.ts'
import type { Finding } from '../knowledge/flaw.ts'
import type { Base } from './base.ts'
import { eachState, type NamedState } from './evidence-parts.ts'

/** Explanations under which the object is being lost: nobody may be told too soon that it is none of these. */
const dangerous = ['active-chloride-corrosion'] as const

const openGrades: readonly Grade[] = ['occasional', 'frequent', 'typical']

const readsNegative = (state: State): boolean =>
  state.when.some((cell) => cell.fact === 'silver_nitrate' && 'any' in cell && cell.any.includes('negative'))

/** What a test shows that did not find what it looked for. */
function isNegative({ group, state }: NamedState): boolean {
  if (state !== null) return readsNegative(state)
  if (group.by === 'xrd' || group.by === 'raman') return true
  return group.by === 'chloride-test' && !group.states.some(readsNegative)
}

/** A negative diffraction, Raman or silver nitrate test never clears an object of active corrosion. */
export function negativeClears({ knowledge }: Base): Finding[] {
  return eachState(knowledge)
    .filter(isNegative)
    .flatMap(({ name, fits }) =>
      dangerous
        .filter((rival) => fits[rival] !== undefined && !openGrades.includes(fits[rival]))
        .map((rival): Finding => ({
          code: 'negative-clears',
          severity: 'error',
          at: `state ${name}`,
          about: { state: name, rival, grade: fits[rival]! },
        })),
    )
}
