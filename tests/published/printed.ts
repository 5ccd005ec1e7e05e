import { expect, test } from 'vitest'
import { knowns } from '../../lib/knowledge/known.ts'
import type { Known } from '../../lib/knowledge/knowledge.ts'
import { knowledge } from '../knowledge-at-hand.ts'

/** A number or a line of advice that stands printed elsewhere and that a plan must keep to. */
export interface Printed {
  /** The list of check values and the number in it: corrosion, practice, open texts. */
  readonly check: string
  readonly work: string
  /** Where in the work, spelled as the knowledge spells it; null where no place was noted. */
  readonly place: string | null
  /** How the print is known to us. Common practice has no source, and says so. */
  readonly known: Known
  /** How far from the print, and why as far as that. */
  readonly tolerance: string
  readonly says: string
}

interface Source {
  readonly work: string
  readonly place: string | null
  readonly known: Known
}

/** What was compared, with what it rests on: a line of a plan, a rule, a figure, a method, a side of a contested matter. */
export type Backing =
  | { readonly sources: readonly Source[]; readonly also?: readonly Backing[] }
  | { readonly source: Omit<Source, 'known'>; readonly known: Known }

const sourcesOf = (backing: Backing): readonly Source[] =>
  'sources' in backing
    ? [...backing.sources, ...(backing.also ?? []).flatMap(sourcesOf)]
    : [{ ...backing.source, known: backing.known }]

/** Why the claim of a check does not stand on what it compared; null where it does. */
export function unfounded(
  claim: Omit<Printed, 'check' | 'says' | 'tolerance'>,
  compared: readonly Backing[],
): string | null {
  const work = knowledge.works[claim.work]
  if (!work) return `the knowledge has no work ${claim.work}`
  const cited = compared
    .flatMap(sourcesOf)
    .filter((source) => source.work === claim.work && source.place === claim.place)
  if (cited.length === 0) return `nothing compared rests on ${claim.work}, ${claim.place ?? 'no place'}`
  const rank = (known: Known) => knowns.indexOf(known)
  const best = Math.max(rank(work.known), Math.min(...cited.map(({ known }) => rank(known))))
  if (rank(claim.known) < best)
    return `${claim.known} is better than the knowledge, which has it as ${knowns[best]}`
  return null
}

export const checks: Printed[] = []

const sourceLine = ({ work, place }: Printed) =>
  work === 'common-practice' ? 'common practice, no source' : `${work}, ${place ?? 'no place noted'}`

/** Registers a test that compares with the print and then asks whether what it compared rests on that print at all. */
export function printed(claim: Printed, compare: () => Backing | readonly Backing[]): void {
  checks.push(claim)
  test(`${claim.check}: ${claim.says} [${sourceLine(claim)}; ${claim.known}; ${claim.tolerance}]`, () => {
    const compared = [compare()].flat()
    expect(unfounded(claim, compared)).toBeNull()
  })
}
