import { gainBits } from './gain.ts'
import { askable, isOpen } from './open-matters.ts'
import type { Raised } from './raised.ts'

/**
 * What several methods together would tell of one matter [bit], `eye` among them where somebody is to look: less than the
 * sum of what each would tell alone, as far as they tell the same.
 */
export function gainOf(raised: Raised, methods: readonly string[]): number {
  return isOpen(raised)
    ? gainBits(
        raised.joint,
        askable(raised, ({ by }) => methods.includes(by)),
      )
    : 0
}
