import type { Matter } from '../knowledge/evidence.ts'
import type { Fact, RecordFacts } from '../record/fact.ts'

const only = (fact: Fact | undefined, value: string) =>
  fact?.number === undefined && fact?.has.length === 1 && fact.has[0] === value

/**
 * The rival that the record itself names: a part of the find that this explanation would add, known by analysis. Where two
 * parts raise the same matter, another part does not say to which of them it belongs and settles neither; where the record
 * names parts of two rivals, neither is taken.
 */
export function settledRival(
  matter: Matter,
  part: number,
  raising: readonly number[],
  facts: RecordFacts,
): string | null {
  const named = matter.rivals.filter(({ settled }) => {
    const wanted = settled?.part
    if (!wanted) return false
    return facts.components.some(
      (component, at) =>
        (at === part || raising.every((one) => one === part)) &&
        only(component.facts['role'], wanted.role) &&
        only(component.facts['material'], wanted.material) &&
        only(component.facts['known_by'], 'analysis'),
    )
  })
  return named.length === 1 ? named[0]!.id : null
}
