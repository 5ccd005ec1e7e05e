import type { Finding } from '../knowledge/flaw.ts'
import type { Known, SourceRef } from '../knowledge/knowledge.ts'
import type { Base } from './base.ts'
import { eachMatter, eachState } from './evidence-parts.ts'

const supports = (sources: readonly SourceRef[]): readonly Known[] =>
  sources.filter(({ says }) => says === 'supports').map(({ known }) => known)

/** Everything the evidence base grades has a source that supports it: odds, states, and ways to go wrong. */
export function gradesWithoutSource({ knowledge }: Base): Finding[] {
  const found = (at: string, of: string): Finding => ({
    code: 'grade-without-source',
    severity: 'error',
    at,
    about: { of },
  })
  const odds = eachMatter(knowledge).flatMap(({ id, rivals }) =>
    rivals
      .filter(({ priors }) => priors.some(({ sources }) => supports(sources).length === 0))
      .map((rival) => found(`rival ${id}/${rival.id}`, `${id}/${rival.id}`)),
  )
  const states = eachState(knowledge)
    .filter(({ state }) => state !== null && supports(state.sources).length === 0)
    .map(({ name }) => found(`state ${name}`, name))
  const failures = eachMatter(knowledge).flatMap(({ id, groups }) =>
    groups.flatMap((group) =>
      group.failures
        .filter(({ sources }) => supports(sources).length === 0)
        .map((failure) =>
          found(`failure ${id}/${group.id}/${failure.id}`, `${id}/${group.id}/${failure.id}`),
        ),
    ),
  )
  return [...odds, ...states, ...failures]
}

/** What is only remembered rules nothing out: a state that memory alone backs excludes no explanation. */
export function memoryRulesOut({ knowledge }: Base): Finding[] {
  return eachState(knowledge).flatMap(({ name, state, fits }) => {
    const known = supports(state?.sources ?? [])
    if (known.length === 0 || known.some((one) => one !== 'memory')) return []
    return Object.keys(fits)
      .filter((rival) => fits[rival] === 'excluded')
      .map((rival): Finding => ({
        code: 'memory-rules-out',
        severity: 'error',
        at: `state ${name}`,
        about: { state: name, rival },
      }))
  })
}
