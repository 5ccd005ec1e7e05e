import 'server-only'
import { cookies } from 'next/headers'
import type { Project } from '../../lib/services/kept.ts'
import { orElsewhere, servicesHere } from './services.ts'

const projectCookie = 'quietmetal-project'

export interface ProjectsHere {
  readonly all: readonly Project[]
  /** The one chosen on this device; the newest where none was; null where there is none at all. */
  readonly chosen: Project | null
}

export async function projectsHere(): Promise<ProjectsHere> {
  const services = await servicesHere()
  const all = await orElsewhere(services.listProjects())
  const wanted = (await cookies()).get(projectCookie)?.value
  const newest = all.toSorted((a, b) => b.createdAt - a.createdAt)[0]
  return { all, chosen: all.find(({ id }) => id === wanted) ?? newest ?? null }
}

/** From now on this device shows that project. */
export async function chooseProjectHere(project: string): Promise<void> {
  const year = 365 * 24 * 60 * 60
  ;(await cookies()).set(projectCookie, project, { path: '/', maxAge: year, sameSite: 'lax', httpOnly: true })
}
