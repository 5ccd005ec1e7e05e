import type { Fits, Group, Matter, State } from '../knowledge/evidence.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'

/** A state of a group, or what is left when none holds, with its name `MATTER/GROUP/STATE`. */
export interface NamedState {
  readonly matter: Matter
  readonly group: Group
  readonly name: string
  readonly fits: Fits
  /** Null for what is left: it says nothing of its own. */
  readonly state: State | null
}

export function eachMatter(knowledge: Knowledge): readonly Matter[] {
  return Object.values(knowledge.matters)
}

export function statesOf(matter: Matter): NamedState[] {
  return matter.groups.flatMap((group) => [
    ...group.states.map((state) => ({
      matter,
      group,
      name: `${matter.id}/${group.id}/${state.id}`,
      fits: state.fits,
      state,
    })),
    { matter, group, name: `${matter.id}/${group.id}/rest`, fits: group.rest.fits, state: null },
  ])
}

export function eachState(knowledge: Knowledge): NamedState[] {
  return eachMatter(knowledge).flatMap(statesOf)
}
