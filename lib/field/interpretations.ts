import type { Interpretation, Leaning } from '../engine/plan.ts'
import type { Pull } from '../evidence/pulls.ts'
import type { Weighed } from '../evidence/weigh.ts'

const leaning = ({ group, says, strength, sources }: Pull): Leaning => ({
  group,
  says: says.join(', or '),
  strength,
  sources: sources.map(({ work, place, known }) => ({ work, place, known })),
})

/** What was weighed, in the form of the plan: every rival of every matter, likeliest first. */
export const interpretationsOf = (weighed: readonly Weighed[]): readonly Interpretation[] =>
  weighed.flatMap(({ matter, component, about, standing, rivals }) =>
    rivals.map((rival) => ({
      component,
      about,
      interpretation: rival.id,
      probability: rival.probability,
      range: rival.range,
      matter,
      says: rival.says,
      standing,
      for: rival.for.map(leaning),
      against: rival.against.map(leaning),
    })),
  )
