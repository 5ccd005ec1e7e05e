import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { poorGrades, type PoorGrade } from '../evidence/poor-grades.ts'
import { enough, scoreOf, type Score } from '../evidence/score.ts'
import type { Identification } from './identification.ts'
import type { World } from './ports.ts'

export interface ScoreShown {
  /** Matters that were identified, each by its latest identification. */
  readonly identified: number
  /** How many it takes before anything can be said. */
  readonly enough: number
  /** Null while there are too few. */
  readonly score: Score | null
  /** Words of the evidence base that what was found speaks against. */
  readonly poor: readonly PoorGrade[]
}

/** The latest identification of each matter on each part: who knows better enters a new one. */
function latest(all: readonly Identification[]): readonly Identification[] {
  const last = new Map<string, Identification>()
  for (const one of all) last.set(`${one.findId} ${one.given.component} ${one.given.matter}`, one)
  return [...last.values()]
}

/** How good what was thought has proved, over all identifications of a project. */
export function showScore({ store, knowledge }: World, projectId: string): Answer<ScoreShown> {
  return store.read(async (reads) => {
    if (!(await reads.projects.byId(projectId))) return refused(missing('project', projectId))
    const known = latest(await reads.identifications.ofProject(projectId)).map(
      ({ given: told, thought }) => ({
        matter: told.matter,
        truth: told.interpretation,
        rivals: thought.rivals,
        observed: thought.observed,
      }),
    )
    return given({
      identified: known.length,
      enough,
      score: scoreOf(known),
      poor: known.length < enough ? [] : poorGrades(known, knowledge),
    })
  })
}
