'use server'

import { revalidatePath } from 'next/cache'
import { troubleWords } from '../../../lib/wording/trouble.ts'
import { personHere } from '../../_server/person.ts'
import { chooseProjectHere, projectsHere } from '../../_server/project.ts'
import { servicesHere } from '../../_server/services.ts'
import { refusal, saidOf, type TablesSaid } from './said.ts'

/** Looks a table through, or keeps it. A store may be begun with one: then its project is begun too. */
export async function sendTable(form: FormData): Promise<TablesSaid> {
  const by = await personHere()
  if (by === null) return refusal('Say who you are first: every change carries who made it.')
  const file = form.get('file')
  if (!(file instanceof File) || file.size === 0) return refusal('Choose a file first.')
  const services = await servicesHere()
  const { chosen } = await projectsHere()
  const keep = form.get('keep') === 'yes'
  let projectId = chosen?.id
  if (projectId === undefined) {
    const name = String(form.get('name') ?? '').trim()
    const begun = await services.startProject({ name }, by)
    if (!begun.ok) return refusal(troubleWords(begun.problems))
    projectId = begun.value.id
    await chooseProjectHere(projectId)
  }
  const fileName = file.name.slice(0, 200)
  const bytes = new Uint8Array(await file.arrayBuffer())
  const answer = await services.keepPlaces({ projectId, bytes, fileName, dryRun: !keep }, by)
  if (!answer.ok) return refusal(troubleWords(answer.problems))
  if (keep) revalidatePath('/', 'layout')
  return saidOf(answer.value, fileName, keep)
}
