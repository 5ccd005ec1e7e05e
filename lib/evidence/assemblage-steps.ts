import type { Method } from '../knowledge/knowledge.ts'
import type { Allowance } from './assemblage.ts'
import { choose, chooseAgain, type Chosen } from './assemblage-choose.ts'
import { settled, type Candidate } from './assemblage-options.ts'
import { slotsIn } from './method-hours.ts'

export type Allowed = Omit<Allowance, 'method'> & { readonly method: Method; readonly places: number }

/** A further hour of one method, or a further place, with all that came before it. */
export interface Step {
  readonly hours: number | null
  readonly places: number
  readonly chosen: Chosen
}

function stepsOf(method: number, count: number, allowed: readonly Allowed[], from: Chosen): readonly Step[] {
  const { hours, method: words } = allowed[method]!
  const steps: Step[] = []
  let chosen = from
  let slots = allowed.map(({ places }) => places)
  for (let more = 1; more <= count; more++) {
    const places = hours === null ? slots[method]! + 1 : slotsIn(hours + more, words.minutes)
    const wider = slots.with(method, places)
    if (places !== slots[method]) chosen = chooseAgain(chosen, slots, wider)
    slots = wider
    steps.push({ hours: hours === null ? null : hours + more, places, chosen })
  }
  return steps
}

export interface ChosenSteps {
  /** Those that are chosen anywhere are weighed by what truly hangs on them. */
  readonly candidates: readonly Candidate[]
  readonly chosen: Chosen
  /** By method. */
  readonly steps: readonly (readonly Step[])[]
}

/**
 * The choice, and what further hours would change of it. What hangs on an answer takes long to reckon, so a find counts by
 * the most that may hang on it until it is chosen; then it is reckoned, and the choice made again. Once all that is chosen
 * is reckoned it is the choice that would have been made had all been: no other find can be worth more than it was taken for.
 */
export function chooseSteps(
  given: readonly Candidate[],
  allowed: readonly Allowed[],
  further: number,
): ChosenSteps {
  const slots = allowed.map(({ places }) => places)
  let candidates = given
  const settleChosen = (all: readonly Chosen[]): boolean => {
    const before = candidates
    candidates = before.map((one, at) =>
      one.stakes === 'most' && all.some(({ choice }) => choice[at] !== 0) ? settled(one) : one,
    )
    return candidates.some((one, at) => one !== before[at])
  }
  for (;;) {
    const chosen = choose({ slots, finds: candidates.map(({ options }) => options) })
    if (settleChosen([chosen])) continue
    const steps = allowed.map((_, method) => stepsOf(method, further, allowed, chosen))
    if (settleChosen(steps.flatMap((some) => some.map((one) => one.chosen)))) continue
    return { candidates, chosen, steps }
  }
}
