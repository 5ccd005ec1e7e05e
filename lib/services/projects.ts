import { given, refused, type Outcome } from '../base/outcome.ts'
import type { Actor, Change, Person, Project } from './kept.ts'
import type { World } from './ports.ts'
import type { Answer, Trouble } from '../base/trouble.ts'

export function listProjects({ store }: World): Answer<readonly Project[]> {
  return store.read(async (reads) => given(await reads.projects.all()))
}

function projectName(wanted: string): Outcome<string, Trouble> {
  const name = wanted.trim()
  if (name === '') return refused({ kind: 'not-accepted', field: 'name', because: 'empty' })
  if (name.length > 120) return refused({ kind: 'not-accepted', field: 'name', because: 'too-long' })
  return given(name)
}

/** The project of that name; null where it could be begun, and is not. */
export async function findProject(
  { store }: World,
  wanted: { readonly name: string },
): Answer<Project | null> {
  const named = projectName(wanted.name)
  if (!named.ok) return named
  return store.read(async (reads) =>
    given((await reads.projects.all()).find(({ name }) => name === named.value) ?? null),
  )
}

/** The project of that name, begun where there is none. */
export async function startProject(
  { store }: World,
  wanted: { readonly name: string },
  by: Actor,
): Answer<Project> {
  const named = projectName(wanted.name)
  if (!named.ok) return named
  const name = named.value
  return store.write('start-project', by, async (writes) =>
    given(await writes.projects.add({ name, invented: false })),
  )
}

/** Those who have written here, to choose oneself from. */
export function listPeople({ store }: World): Answer<readonly Person[]> {
  return store.read(async (reads) => given(await reads.people.all()))
}

/** The newest lines of the change trail first. */
export function latestChanges({ store }: World, limit = 100): Answer<readonly Change[]> {
  return store.read(async (reads) => given(await reads.changes.latest(limit)))
}
