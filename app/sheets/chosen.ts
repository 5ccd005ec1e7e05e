import type { Planned } from '../../lib/field/bag.ts'
import type { Project } from '../../lib/services/kept.ts'
import { projectsHere } from '../_server/project.ts'
import { orElsewhere, servicesHere } from '../_server/services.ts'

export interface Chosen {
  readonly project: Project | null
  readonly bag: readonly Planned[]
  /** All that match; more than one sheet holds are left out and said so. */
  readonly total: number
}

const onASheet = 200

/** The finds a sheet is for: those named in the address, or those that a search finds; none without either. */
export async function chosenFinds(words: Readonly<Record<string, string>>): Promise<Chosen> {
  const services = await servicesHere()
  const { chosen } = await projectsHere()
  if (chosen === null) return { project: null, bag: [], total: 0 }
  const named = (words['finds'] ?? '').split(',').filter((id) => id !== '')
  const { ids, total } =
    named.length > 0 ? { ids: named.slice(0, onASheet), total: named.length } : await search(chosen, words)
  if (ids.length === 0) return { project: chosen, bag: [], total: 0 }
  const planned = await orElsewhere(services.planFinds(ids))
  // Finds named in the address may belong to another project than the one chosen on this device.
  const other = planned.find(({ find }) => find.projectId !== chosen.id)?.find.projectId
  const { all } = await projectsHere()
  return {
    project: all.find(({ id }) => id === other) ?? chosen,
    bag: planned.map(({ newest, plan }) => ({ record: newest.record, plan })),
    total,
  }
}

async function search(project: Project, words: Readonly<Record<string, string>>) {
  if (words['q'] === undefined && words['box'] === undefined) return { ids: [], total: 0 }
  const services = await servicesHere()
  const page = await orElsewhere(
    services.listFinds({
      projectId: project.id,
      order: 'number',
      ...(words['q'] === undefined ? {} : { search: words['q'] }),
      ...(words['box'] === undefined ? {} : { boxes: [words['box']] }),
      limit: onASheet,
    }),
  )
  return { ids: page.finds.map(({ findId }) => findId), total: page.total }
}
