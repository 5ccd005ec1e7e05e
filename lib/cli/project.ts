import type { Outcome } from '../base/outcome.ts'
import type { Trouble } from '../base/trouble.ts'
import type { Actor, Project } from '../services/kept.ts'
import type { Services } from '../start.ts'
import { troubleWords } from '../wording/trouble.ts'
import { Hindered, WrongCall } from './command.ts'

export function orHindered<Value>(outcome: Outcome<Value, Trouble>): Value {
  if (outcome.ok) return outcome.value
  const { problems } = outcome
  throw new Hindered(
    problems.kind === 'unavailable'
      ? `${troubleWords(problems)} (${problems.because})`
      : troubleWords(problems),
  )
}

/** The project of that name, begun where `by` is given and there is none; without a name the only one there is. */
export async function projectNamed(
  services: Services,
  name: string | null,
  by: Actor | null,
): Promise<Project> {
  const all = orHindered(await services.listProjects())
  if (name === null) {
    const [only, ...more] = all
    if (only && more.length === 0) return only
    if (only || by === null) {
      const names = all.map((one) => `"${one.name}"`).join(', ')
      throw new WrongCall(only ? `Say which project: --project ${names}.` : 'There is no project yet.')
    }
    return orHindered(await services.startProject({ name: 'First project' }, by))
  }
  const known = all.find((one) => one.name === name)
  if (known) return known
  if (by === null) throw new WrongCall(`There is no project "${name}".`)
  return orHindered(await services.startProject({ name }, by))
}
