import type { Reasoning } from './reasoning.ts'
import type { Spoken } from './statement.ts'
import { saidOf } from './storage.ts'

const proposalOf = ({ rule: { then } }: Spoken): string =>
  then.kind === 'say' && then.to !== undefined ? then.to : ''

/** The parts for which each proposal is blocked on what is recorded; a block for the whole find names none. */
function blocked(said: readonly Spoken[]): (one: Spoken) => boolean {
  const parts = new Map<string, Set<string> | 'all'>()
  for (const one of said) {
    const { components, precautionary } = one.statement
    if (one.rule.level !== 'block' || precautionary) continue
    const known = parts.get(proposalOf(one))
    if (known === 'all' || components.length === 0) parts.set(proposalOf(one), 'all')
    else parts.set(proposalOf(one), new Set([...(known ?? []), ...components]))
  }
  return (one) => {
    const known = parts.get(proposalOf(one))
    if (known === undefined || known === 'all') return known === 'all'
    const { components } = one.statement
    return components.length > 0 && components.every((part) => known.has(part))
  }
}

/**
 * What speaks against proposals. Where a proposal is blocked for a part on what is recorded, what is only feared for the
 * same part settles nothing more and falls silent; it speaks again when the block goes.
 */
export function objectionsIn(reasoning: Reasoning): readonly Spoken[] {
  const said = saidOf(reasoning, 'objections')
  if (said.length < 2) return said
  const isBlocked = blocked(said)
  return said.filter((one) => !one.statement.precautionary || !isBlocked(one))
}
